import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('the dialog that puts a trial away', () => {
  it('asks for the reason before it is pressed, and stands to the left like every dialog', async () => {
    const { page } = await bench.open('/');
    await page
      .getByRole('button', { name: /^Put away: / })
      .first()
      .click();
    const dialog = page.locator('dialog[open]');
    expect(await dialog.textContent()).toContain('It needs a reason');
    await dialog.getByRole('button', { name: 'Put away' }).click();
    const trouble = dialog.getByRole('alert');
    await trouble.waitFor();
    for (const part of [dialog.locator('h2'), dialog.locator('.note').first(), trouble])
      expect(await part.evaluate((one) => getComputedStyle(one).textAlign)).toBe('start');
    const wide = async (of: typeof trouble) => (await of.boundingBox())!.width;
    expect(await wide(trouble)).toBeCloseTo(await wide(dialog.getByLabel('Why, in your words')), 0);
  });

  it('leaves the list of what is put away in columns under those above', async () => {
    const other = `other-${Date.now()}`;
    await bench.store.append(other, [
      {
        id: '01900000-0000-7000-8000-000000000001',
        trial: other,
        kind: 'trial',
        at: '2026-10-03T09:00:00Z',
        by: '',
        device: '',
        body: { trial: other, title: 'Short' },
      },
    ]);
    const { page } = await bench.open('/', { width: 1440 });
    await page.getByRole('button', { name: 'Put away: Short' }).click();
    await page.getByLabel('given up').check();
    await page.locator('dialog[open]').getByRole('button', { name: 'Put away' }).click();
    await page.getByText('Put away: 1').click();
    const edges = async (table: number) =>
      page
        .locator('.trials')
        .nth(table)
        .locator('thead th, thead td')
        .evaluateAll((cells) => cells.map((cell) => Math.round(cell.getBoundingClientRect().right)));
    expect(await edges(1)).toEqual(await edges(0));
  });
});
