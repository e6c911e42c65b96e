import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('an address that is none', () => {
  it.each(['/nonsense', '/trial/', '/trial/fen/nosuchplace'])(
    '%s says what was found and leads to the shelf',
    async (path) => {
      const { page } = await bench.open(path);
      expect(await page.locator('h1').textContent()).toBe('There is no place at this address.');
      expect(await page.locator('main').textContent()).toContain(`Found ${path}`);
      await page.getByRole('link', { name: 'Go to the shelf' }).click();
      await page.getByRole('heading', { name: 'One cable, six fields' }).waitFor();
    },
  );

  it('names a trial that is not on the shelf', async () => {
    const { page } = await bench.open('/trial/nosuch/inside');
    await page.getByRole('heading', { name: 'No trial called “nosuch” is on this shelf.' }).waitFor();
    await page.getByRole('link', { name: 'Back to the shelf' }).click();
    await page.getByRole('heading', { name: 'One cable, six fields' }).waitFor();
  });

  it('shows a name made of markup as text', async () => {
    const { page } = await bench.open(`/trial/${encodeURIComponent('<img src=x onerror=alert(1)>')}/inside`);
    await page.getByRole('heading', { name: /No trial called “<img/ }).waitFor();
    expect(await page.locator('main img').count()).toBe(0);
  });
});
