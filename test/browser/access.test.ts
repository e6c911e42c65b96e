import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { breachesLightAndDark } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { waitForFindings } from './support/findings.ts';
import { openAllFolds } from './support/openAllFolds.ts';
import { overAt } from './support/overAt.ts';

let bench: Bench;
const INSIDE = '/trial/fenwater-2-awg/inside#quill';

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const LOOKS = [{ width: 1440 }, { width: 390 }];

describe.each(LOOKS)('at $width px, light and dark,', (look) => {
  it('the shelf breaks no rule of WCAG 2.2 AA', async () => {
    const { page } = await bench.open('/', look);
    await page.getByRole('link', { name: /Six 2 AWG/ }).waitFor();
    await page.getByLabel('Mass of the bare conductor').fill('300 mm');
    await page.getByLabel('What the label says').fill('2 AWG');
    await page.locator('#six-mass-trouble').waitFor();
    expect(await breachesLightAndDark(page)).toEqual([]);
  });

  it('inside breaks no rule of WCAG 2.2 AA, with a sheet and all folds open', async () => {
    const { page } = await bench.open(INSIDE, look);
    await waitForFindings(page);
    await openAllFolds(page);
    expect(await breachesLightAndDark(page)).toEqual([]);
  });
});

describe.each(['/', INSIDE])('%s', (path) => {
  it('never scrolls sideways, from 320 px up', async () => {
    const { page } = await bench.open(path, { width: 320 });
    if (path !== '/') await waitForFindings(page);
    await openAllFolds(page);
    for (const width of [320, 360, 560, 900, 1280, 1440, 3840])
      expect(await overAt(page, width), `${width} px`).toBe(0);
  });

  it('gives every control at least 24 px, and the main ones 44', async () => {
    const { page } = await bench.open(path, { width: 390 });
    if (path !== '/') await waitForFindings(page);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('main button, main select, main summary, .places a, .header a')]
        .filter((control) => control.getBoundingClientRect().height > 0)
        .filter((control) => control.getBoundingClientRect().height < (control.matches('.sheet summary') ? 24 : 44))
        .map((control) => control.textContent),
    );
    expect(small).toEqual([]);
  });
});
