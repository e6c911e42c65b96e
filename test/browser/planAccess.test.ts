import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { waitForAllThere } from './support/atBench.ts';
import { waitForOutlook } from './support/atPlan.ts';
import { breachesLightAndDark } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { openAllFolds } from './support/openAllFolds.ts';
import { overAt } from './support/overAt.ts';
import { trialOfNames } from './support/trialOfNames.ts';

let bench: Bench;
const PLAN = '/trial/fenwater-2-awg/plan';
const RUDE = '<b>bold</b> trial/..%2F#?';
const NAMES = [
  '<script>globalThis.owned = true</script>',
  '<img src=x onerror="globalThis.owned = true">',
  'סלילים וכבלים',
  '👩‍🔧🔌 電池ケーブル',
  'W'.repeat(200),
];

beforeAll(async () => {
  bench = await startBench();
  await bench.store.append(RUDE, trialOfNames(RUDE, NAMES));
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const LOOKS = [{ width: 1440 }, { width: 390 }];

/** Waits for the plan to be worked out, then opens its folds and all that is asked of the first cable. */
async function openPlanWhole(page: Page): Promise<void> {
  await waitForOutlook(page);
  await openAllFolds(page);
  await page
    .getByRole('button', { name: /^More of/ })
    .first()
    .click();
}

describe.each(LOOKS)('at $width px, light and dark,', (look) => {
  it('the plan breaks no rule of WCAG 2.2 AA, with a row, a refusal, a dialog and all folds open', async () => {
    const { page, troubles } = await bench.open(PLAN, look);
    await waitForOutlook(page);
    await waitForAllThere(page);
    await openAllFolds(page);
    await page
      .getByRole('button', { name: /^More of/ })
      .first()
      .click();
    await openAllFolds(page);
    await page.getByLabel('Rows, with their headings').fill('maker,size,length\nFen,2 AWG,heavy');
    await page.getByLabel('Repeats of each reading').fill('many');
    await page.getByLabel('Repeats of each reading').press('Tab');
    await page.getByText('expected a whole number').waitFor();
    expect(await breachesLightAndDark(page)).toEqual([]);
    await page
      .getByRole('button', { name: /against a known thing/ })
      .first()
      .click();
    await page.getByRole('button', { name: 'Keep this check' }).click();
    await page.getByText('expected what the tool read').waitFor();
    expect(await breachesLightAndDark(page)).toEqual([]);
    expect(troubles).toEqual([]);
  });

  it('what it prints and how a trial is started break none', async () => {
    const { page } = await bench.open(`${PLAN}#labels`, look);
    await page.locator('.paper svg').first().waitFor();
    expect(await breachesLightAndDark(page)).toEqual([]);
    const shelf = await bench.open('/', look);
    await openAllFolds(shelf.page);
    await shelf.page.getByLabel('Size on the labels').fill('thick');
    await shelf.page.locator('#start-size-trouble').waitFor();
    expect(await breachesLightAndDark(shelf.page)).toEqual([]);
  });
});

describe('the plan', () => {
  it('never scrolls sideways, from 320 px up, with everything open', async () => {
    const { page } = await bench.open(PLAN, { width: 320 });
    await openPlanWhole(page);
    for (const width of [320, 360, 560, 900, 1280, 1440, 3840])
      expect(await overAt(page, width), `${width} px`).toBe(0);
  });

  it('gives every control 44 px on a phone, or 24 where many stand together', async () => {
    const { page } = await bench.open(PLAN, { width: 390 });
    await openPlanWhole(page);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'main button, main select, main summary, main input:not([type=checkbox], [type=radio])',
        ),
      ]
        .map((control) => ({ control, height: control.getBoundingClientRect().height }))
        .filter(({ height }) => height > 0)
        .filter(({ control, height }) => height < (control.matches('.work-order summary') ? 24 : 44))
        .map(({ control }) => control.outerHTML.slice(0, 80)),
    );
    expect(small).toEqual([]);
  });

  it.each([1440, 390])('shows names that people never should have given as text, at %i px', async (width) => {
    const { page, troubles } = await bench.open(`/trial/${encodeURIComponent(RUDE)}/plan`, { width });
    await page
      .locator('.pieces')
      .nth(NAMES.length - 1)
      .waitFor();
    const shown = await page.locator('.pieces caption .name').allInnerTexts();
    expect(shown.map((text) => text.trim())).toEqual(NAMES);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await page.getByRole('link', { name: 'Cut list', exact: true }).last().click();
    await page.locator('.paper text').first().waitFor();
    expect(await page.evaluate(() => 'owned' in globalThis)).toBe(false);
    expect(troubles).toEqual([]);
  });
});
