import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { storedBodies, valueInHand, waitForDone } from './support/atBench.ts';
import { type Bench, startBench } from './support/bench.ts';
import { plannedTrial } from './support/benchTrial.ts';

let bench: Bench;
const DEMO = '/trial/fenwater-2-awg/history';

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('the history of a trial', () => {
  it('tells who said what, when, on which device and why, the latest first', async () => {
    await bench.store.append('h1', plannedTrial('h1', ['KR']));
    const { page, troubles } = await bench.open('/trial/h1/bench');
    await page.getByText('This bench').click();
    await page.getByLabel('Who records', { exact: true }).fill('R. Tester');
    await page.locator('#bench-value').focus();
    await page.keyboard.type(await valueInHand(page));
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await page.keyboard.press('s');
    await page.getByRole('dialog').getByLabel('digits swapped').check();
    await page.getByRole('dialog').getByRole('button', { name: 'Strike out' }).click();
    await waitForDone(page, 0);
    await storedBodies(bench.store, 'h1', 'strike', 1);
    await page.getByRole('link', { name: 'History' }).click();
    const lines = page.locator('.journal tbody tr');
    await lines.first().waitFor();
    const struck = (await lines.nth(0).textContent()) ?? '';
    expect(struck).toMatch(/Struck out/);
    expect(struck).toContain('1.02 mΩ, KR, whole length, resistance');
    expect(struck).toContain('“digits swapped”');
    expect(struck).toContain('R. Tester');
    expect(struck).toMatch(/browser [0-9a-f]{4}/);
    expect(await lines.nth(1).textContent()).toMatch(/Reading 1.02 mΩ/);
    expect(await page.locator('.corrections').textContent()).toContain('was struck out. Reason given: digits swapped');
    expect(troubles).toEqual([]);
  });

  it('strikes out a reading of long ago', async () => {
    await bench.store.append('h2', plannedTrial('h2', ['KR']));
    const { page } = await bench.open('/trial/h2/bench');
    await page.locator('#bench-value').focus();
    await page.keyboard.type(await valueInHand(page));
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await page.getByRole('link', { name: 'History' }).click();
    await page.getByRole('button', { name: /^Strike out: / }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Strike out' }).click();
    await dialog.getByText('Found no reason').waitFor();
    await dialog.getByLabel('wrong unit').check();
    await dialog.getByRole('button', { name: 'Strike out' }).click();
    expect(await storedBodies(bench.store, 'h2', 'strike', 1)).toMatchObject([{ why: 'wrong unit' }]);
    await page.getByRole('button', { name: /^Strike out: / }).waitFor({ state: 'detached' });
  });

  it('tells the life of a reading that was replaced', async () => {
    const { page } = await bench.open(DEMO);
    await page.getByText('Every reading’s life').click();
    const first = page.locator('.lives > ul > li').first();
    await first.waitFor();
    const life = (await first.textContent()) ?? '';
    expect(life).toContain('read as 87.45 g');
    expect(life).toContain('replaced by 78.45 g');
    expect(life).toContain('first two digits swapped when typing');
  });

  it('looks back to a moment, read-only, with a banner, and comes back to now', async () => {
    const { page } = await bench.open(DEMO);
    const slider = page.getByLabel('After so many entries');
    await slider.waitFor();
    await page
      .getByRole('link', { name: /^Look back to/ })
      .nth(60)
      .click();
    await page.locator('.banner', { hasText: 'As it stood on' }).waitFor();
    expect(await page.locator('.banner').textContent()).toContain('60 entries came later');
    await page.locator('.faces li').first().waitFor();
    expect(await page.getByRole('button', { name: /zip/i }).count()).toBe(0);
    expect(await page.locator('.journal').count()).toBe(0);
    await page.reload();
    await page.locator('.banner', { hasText: '60 entries came later' }).waitFor();
    await slider.focus();
    await page.keyboard.press('ArrowLeft');
    await page.locator('.banner', { hasText: '61 entries came later' }).waitFor();
    await page.getByRole('button', { name: 'Back to now' }).click();
    await page.locator('.journal').waitFor();
    expect(new URL(page.url()).hash).toBe('');
  });

  it('shows at an early moment what was not known yet', async () => {
    await bench.store.append('h2', plannedTrial('h2', ['KR']));
    const { page } = await bench.open('/trial/h2/history');
    await page.getByLabel('After so many entries').fill('0');
    await page.locator('.banner').waitFor();
    await page.getByText('No cable has been described yet.').waitFor();
  });

  it('names no cable while the trial is blind', async () => {
    const entries = plannedTrial('h3', ['KR', 'VN']);
    await bench.store.append('h3', entries);
    const last = entries.at(-1)!;
    await bench.store.append('h3', [
      { ...last, id: '01900000-0000-7000-9000-000000000001', kind: 'blinding', body: { act: 'blind', how: 'sleeve' } },
    ]);
    const { page } = await bench.open('/trial/h3/history');
    await page.locator('.journal').waitFor();
    expect(await page.locator('#page').innerHTML()).not.toMatch(/Maker|cable-\d/);
    expect(await page.locator('.journal').textContent()).toContain('KR, piece to take apart');
  });
});
