import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { waitForAllThere } from './support/atBench.ts';
import { breachesLightAndDark } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { openAllFolds } from './support/openAllFolds.ts';
import { overAt } from './support/overAt.ts';

let bench: Bench;
const BENCH = '/trial/fenwater-2-awg/bench';
const HISTORY = '/trial/fenwater-2-awg/history';

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const LOOKS = [{ width: 1440 }, { width: 360 }];

/** Dialogs by the key that opens them. */
const DIALOGS = {
  s: 'Strike out a reading',
  n: 'Write a note',
  p: 'Add a photo',
  g: 'Take up another reading',
  '?': 'Keys at the bench',
};

describe.each(LOOKS)('at $width px, light and dark,', (look) => {
  it('the bench breaks no rule of WCAG 2.2 AA, with a question, a trouble and all folds open', async () => {
    const { page } = await bench.open(BENCH, look);
    await waitForAllThere(page);
    await page.locator('#bench-value').fill('x');
    await page.locator('#bench-value').press('Enter');
    await page.locator('#bench-trouble').waitFor();
    await openAllFolds(page);
    expect(await breachesLightAndDark(page)).toEqual([]);
  });

  it('the dialogs behind the keys break none', async () => {
    const { page } = await bench.open(BENCH, look);
    await waitForAllThere(page);
    for (const [key, title] of Object.entries(DIALOGS)) {
      await page.locator('#bench-value').focus();
      await page.keyboard.press(key);
      await page.getByRole('heading', { name: title }).waitFor();
      expect(await breachesLightAndDark(page), title).toEqual([]);
      await page.keyboard.press('Escape');
      await page.getByRole('heading', { name: title }).waitFor({ state: 'detached' });
    }
  });

  it('the history breaks none, now and looking back', async () => {
    const { page } = await bench.open(HISTORY, look);
    await page.locator('.journal').waitFor();
    await openAllFolds(page);
    expect(await breachesLightAndDark(page)).toEqual([]);
    await page
      .getByRole('link', { name: /^Look back to/ })
      .nth(40)
      .click();
    await page.locator('.banner').waitFor();
    await page.locator('.faces li').first().waitFor();
    expect(await breachesLightAndDark(page)).toEqual([]);
  });
});

describe.each([BENCH, HISTORY])('%s', (path) => {
  it('never scrolls sideways, from 320 px up', async () => {
    const { page } = await bench.open(path, { width: 320 });
    await page.locator('#bench-value, .journal').first().waitFor();
    await openAllFolds(page);
    for (const width of [320, 360, 560, 760, 900, 1280, 1440, 3840])
      expect(await overAt(page, width), `${width} px`).toBe(0);
  });

  it('gives every control at least 24 px, and the main ones 44', async () => {
    const { page } = await bench.open(path, { width: 390 });
    await page.locator('#bench-value, .journal').first().waitFor();
    await openAllFolds(page);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'main button, main select, main summary, main input:not([type=radio]), .places a, header a',
        ),
      ]
        .filter((control) => control.getBoundingClientRect().height > 0)
        .filter((control) => control.getBoundingClientRect().height < (control.matches('[type=checkbox]') ? 24 : 44))
        .map((control) => `${control.tagName} ${control.id} ${control.textContent}`),
    );
    expect(small).toEqual([]);
  });
});
