import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';
import { waitForFindings } from './support/findings.ts';
import { trialOfNames } from './support/trialOfNames.ts';

let bench: Bench;

const NAMES = [
  '<script>globalThis.owned = true</script>',
  '<img src=x onerror="globalThis.owned = true">',
  'סלילים וכבלים',
  '👩‍🔧🔌 電池ケーブル',
  'W'.repeat(200),
  `"quoted" & 'torn' ]]> -->`,
];

beforeAll(async () => {
  bench = await startBench({ demo: false });
  const entries = trialOfNames('<b>bold</b> trial/..%2F#?', NAMES);
  await bench.store.append(entries[0]!.trial, entries);
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('names that people never should have given', () => {
  it.each([1440, 390])('are shown as text, whole, at %i px', async (width) => {
    const { page, troubles } = await bench.open('/', { width });
    await page.getByRole('link', { name: '<b>bold</b>' }).click();
    await waitForFindings(page);
    const shown = await page.locator('.faces .face-name').allInnerTexts();
    expect(shown.map((text) => text.trim())).toEqual(NAMES);
    expect(await page.evaluate(() => 'owned' in globalThis)).toBe(false);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(troubles).toEqual([]);
    await page.reload();
    await waitForFindings(page);
    expect(await page.locator('.faces .face-name').count()).toBe(NAMES.length);
  });

  it('do not reach past their own column', async () => {
    const { page } = await bench.open('/');
    await page.getByRole('link', { name: '<b>bold</b>' }).click();
    await waitForFindings(page);
    const cut = await page.evaluate(
      () =>
        [...document.querySelectorAll('.name')].filter((name) => {
          const parent = name.closest('th, li, p, td')!;
          return name.getBoundingClientRect().right > parent.getBoundingClientRect().right + 1;
        }).length,
    );
    expect(cut).toBe(0);
  });
});
