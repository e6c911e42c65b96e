import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { bodiesOf, waitForAllThere } from './support/atBench.ts';
import { breachesLightAndDark } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { trialOfNames } from './support/trialOfNames.ts';

const DEMO = '/trial/fenwater-2-awg/standing';
const RUDE = ['<b>Rudge</b> & Pawl', '“‮drawkcab” ⚡', `Endless${'-flexible'.repeat(20)}`];

let bench: Bench;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const settingsSaid = async () => bodiesOf(await bench.store.entries('fenwater-2-awg'), 'setting');
const waitForOrder = (page: Page) => page.locator('.places-table, .place-blocks').first().waitFor({ timeout: 90_000 });
const waitForRest = (page: Page) =>
  page.waitForFunction(
    () => /100\s000 joint draws/.test(document.querySelector('.standing-resting')?.textContent ?? ''),
    null,
    { timeout: 90_000 },
  );
/** Words of names that are broken over two lines, of those tables that are shown. */
const brokenWords = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('main :is(.places-table, .tastes-table, .prices) .name')].flatMap((name) =>
      [...(name.textContent ?? '').matchAll(/\S+/g)].flatMap(({ 0: word, index }) => {
        const range = document.createRange();
        range.setStart(name.firstChild!, index);
        range.setEnd(name.firstChild!, index + word.length);
        return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1 ? [word] : [];
      }),
    ),
  );
const linesOfPlaces = (page: Page) =>
  page.evaluate(
    () => new Set([...document.querySelectorAll('.places li')].map((li) => li.getBoundingClientRect().top)).size,
  );
const tooWide = (page: Page, width: number) => page.evaluate((w) => document.documentElement.scrollWidth - w, width);

describe('Standing with the invented trial', () => {
  it('says an order without a total, and opens a cable that the address names', async () => {
    const { page, troubles } = await bench.open(DEMO);
    await waitForOrder(page);
    expect(await page.locator('h1').textContent()).toMatch(/^By these weights/);
    expect(await page.locator('.weight').count()).toBe(4);
    await page.getByRole('button', { name: 'Quill' }).focus();
    await page.keyboard.press('Enter');
    await page.locator('.standing-sheet').waitFor();
    expect(new URL(page.url()).hash).toBe('#quill');
    expect(await page.locator('.standing-sheet svg').count()).toBeGreaterThanOrEqual(4);
    await page.goBack();
    await page.locator('.standing-sheet').waitFor({ state: 'detached' });
    await waitForRest(page);
    expect(await page.locator('main').textContent()).not.toMatch(/\b(score|winner|points|total)\b/i);
    expect(troubles).toEqual([]);
  });

  it('breaks no name of the invented trial within a word, and no place off the ruler, at widths between phone and desk', async () => {
    const { page } = await bench.open(DEMO, { width: 765 });
    await page.locator('.places-table').waitFor({ timeout: 90_000 });
    for (const width of [765, 930, 1100, 1280, 1425]) {
      await page.setViewportSize({ width, height: 1000 });
      await page.waitForTimeout(200);
      expect({ width, broken: await brokenWords(page) }).toEqual({ width, broken: [] });
      if (width >= 1280) expect({ width, lines: await linesOfPlaces(page) }).toEqual({ width, lines: 1 });
      expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
    }
    const trial = page.locator('.header .trial');
    expect((await trial.boundingBox())!.height).toBeLessThan(44);
  });

  it('follows a slider by keyboard, and keeps nothing until it is told to', async () => {
    const { page } = await bench.open(DEMO);
    await waitForOrder(page);
    const price = page.getByRole('slider', { name: 'Price' });
    await price.focus();
    await page.keyboard.press('End');
    await page.waitForFunction(() =>
      /^By these weights Tollgate comes first/.test(document.querySelector('h1')?.textContent ?? ''),
    );
    expect(await price.inputValue()).toBe('100');
    expect(await page.getByRole('slider', { name: /^Copper/ }).inputValue()).toBe('0');
    expect(await settingsSaid()).not.toContainEqual(expect.objectContaining({ setting: 'standing_weights' }));
    await page.keyboard.press('Home');
    await page.getByRole('button', { name: 'Back to the trial’s' }).click();
    await page.waitForFunction(() =>
      [...document.querySelectorAll<HTMLInputElement>('.weight input')].every(({ value }) => value === '25'),
    );
  });

  it('turns an end that is no number away in one sentence, and ranks by buttons', async () => {
    const { page } = await bench.open(DEMO);
    await waitForOrder(page);
    await page.locator('.standing-door > summary').click();
    const price = page.getByRole('group', { name: /^Price/ });
    await price.getByRole('textbox', { name: 'Worth nothing at' }).fill('dear');
    await price.getByRole('textbox', { name: 'Worth nothing at' }).blur();
    await page.getByText('Found "dear"; expected a number of EUR/m.').waitFor();
    const copper = page.getByRole('group', { name: /^Copper/ });
    const slider = page.getByRole('slider', { name: /^Copper, of/ }).first();
    for (const [label, typed, why] of [
      ['Worth nothing at', '-5', 'Found "-5"; expected 0 to 200 %.'],
      ['Counts', '500', 'Found "500"; expected a whole number from 0 to 100.'],
      ['Counts', '30.5', 'Found "30.5"; expected a whole number from 0 to 100.'],
    ] as const) {
      const field = copper.getByRole('textbox', { name: label });
      await field.fill(typed);
      await field.blur();
      await copper.getByText(why).waitFor();
      expect(await field.inputValue()).toBe(typed);
    }
    expect(await slider.inputValue()).toBe('25');
    await copper.getByRole('textbox', { name: 'Counts' }).fill('40');
    await copper.getByRole('textbox', { name: 'Counts' }).blur();
    await copper.getByText('expected a whole number').waitFor({ state: 'detached' });
    await page.getByRole('radio', { name: 'Cheapest that carries it' }).check();
    await page.getByText(/^No least current is asked for\./).waitFor();
    await page.getByText(/^The scales of .*price.* follow from/).waitFor();
    await page.getByRole('button', { name: 'Take weights from this order' }).click();
    await page.getByText('Weights from your ranking.').waitFor();
    await page.getByRole('button', { name: 'Leave out: Price' }).click();
    await page.waitForFunction(() => !/Price/.test(document.querySelector('.ranking ol')?.textContent ?? 'Price'));
  });

  it('takes a job, and keeps scales and weights as settings of the trial', async () => {
    const { page } = await bench.open(DEMO);
    await waitForOrder(page);
    await page.getByRole('radio', { name: 'Long run' }).check();
    await page.waitForFunction(() => /Harrow/.test(document.querySelector('h1')?.textContent ?? ''));
    await page.getByRole('slider', { name: 'Resistance' }).waitFor();
    await waitForRest(page);
    await page.getByRole('button', { name: 'Keep these weights in the trial' }).click();
    await page.getByText('These weights are kept in the trial.').waitFor({ timeout: 60_000 });
    await waitForAllThere(page);
    expect(await settingsSaid()).toContainEqual({
      setting: 'standing_job',
      value: 'long run',
    });
    await page.getByRole('button', { name: 'Fix them before this order is shown to anybody' }).click();
    await page.getByRole('button', { name: 'Fix the scales that count in the trial' }).click();
    await page.getByText('Fixed.').first().waitFor({ timeout: 60_000 });
    await waitForAllThere(page);
    expect(await settingsSaid()).toContainEqual(expect.objectContaining({ setting: 'standing_scale_resistance' }));
  });

  it.each([1440, 390])(
    'moves the ends of a curve by the pointer and by keys at %d px, and the order follows',
    async (width) => {
      const { page, troubles } = await bench.open(DEMO, { width });
      await waitForOrder(page);
      await page.locator('.standing-door > summary').click();
      const end = page.getByRole('slider', { name: 'Price: worth nothing at' });
      const other = page.getByRole('slider', { name: 'Price: worth everything at' });
      const field = page.getByRole('group', { name: /^Price/ }).getByRole('textbox', { name: 'Worth nothing at' });
      expect(await end.getAttribute('aria-valuetext')).toBe('25 EUR/m');
      await end.scrollIntoViewIfNeeded();
      const box = (await end.boundingBox())!;
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
      await page.mouse.move(box.x + 24, box.y + 24);
      await page.mouse.down();
      await page.mouse.move(box.x - 6, box.y + 24, { steps: 5 });
      await page.mouse.up();
      const dragged = Number(await end.getAttribute('aria-valuenow'));
      expect(dragged).toBeLessThan(24);
      expect(await field.inputValue()).toBe(String(dragged));
      await end.press('ArrowLeft');
      expect(Number(await end.getAttribute('aria-valuenow'))).toBeLessThan(dragged);
      // One end never passes the other: that would turn less-is-better round.
      await end.press('Home');
      expect(Number(await end.getAttribute('aria-valuenow'))).toBeGreaterThan(
        Number(await other.getAttribute('aria-valuenow')),
      );
      await page.waitForFunction(() => /Tollgate/.test(document.querySelector('.now-first.always')?.textContent ?? ''));
      await page.getByText('Tried out here, not kept yet.').waitFor();
      await field.fill('25');
      await field.blur();
      expect(await end.getAttribute('aria-valuetext')).toBe('25 EUR/m');
      expect(troubles).toEqual([]);
    },
  );

  it.each([1440, 390])('can be read by everybody at %d px, light and dark', async (width) => {
    const { page } = await bench.open(`${DEMO}#saltmarsh`, { width });
    await waitForOrder(page);
    await page.locator('.standing-sheet').waitFor();
    await page.locator('.standing-door > summary').click();
    await page.locator('.how summary').click();
    await waitForRest(page);
    expect(await breachesLightAndDark(page)).toEqual([]);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
  });
});

describe('Standing with other trials', () => {
  it('says what to do where nothing can be ordered', async () => {
    await bench.store.append('lone', trialOfNames('lone', ['Harrow']));
    const { page } = await bench.open('/trial/lone/standing');
    await page.getByRole('heading', { name: /^An order takes two cables/ }).waitFor({ timeout: 60_000 });
    await page.getByRole('link', { name: 'To the bench' }).click();
    await page.waitForURL(/\/bench$/);
  });

  it('shows rude names as text, whole, at 360 px', async () => {
    await bench.store.append('rude', trialOfNames('rude', RUDE));
    const { page, troubles } = await bench.open('/trial/rude/standing', { width: 360 });
    await waitForOrder(page);
    for (const name of RUDE) expect(await page.locator('.place-blocks').textContent()).toContain(name);
    expect(await page.locator('main b:has-text("Rudge")').count()).toBe(0);
    expect(await tooWide(page, 360)).toBeLessThanOrEqual(0);
    expect(troubles).toEqual([]);
  });
});
