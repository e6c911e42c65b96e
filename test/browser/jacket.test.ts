import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { piecesToWear } from './support/abuseTrial.ts';
import { storedBodies, waitForAllThere } from './support/atBench.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';

const DEMO = '/trial/fenwater-2-awg/jacket';
const RUDE = ['<b>Rudge</b> & Pawl', '“‮drawkcab” ⚡', `Endless${'-jacket'.repeat(20)}`];

let bench: Bench;
let trials = 0;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

async function fresh(makers: readonly string[], o: Parameters<typeof piecesToWear>[2] = {}): Promise<string> {
  trials += 1;
  const trial = `jacket${trials}`;
  await bench.store.append(trial, piecesToWear(trial, makers, o));
  return trial;
}

const tooWide = (page: Page, width: number) => page.evaluate((w) => document.documentElement.scrollWidth - w, width);
const countShown = (page: Page) => page.locator('.count b').textContent();

async function choose(page: Page, test: string): Promise<void> {
  await page.getByRole('button', { name: test, exact: true }).click();
  await page.getByRole('button', { name: 'Take the first piece' }).waitFor();
}

const begin = (page: Page) => page.getByRole('button', { name: 'Take the first piece' }).click();

describe('Jacket with the invented trial', () => {
  it('says what jackets are and last, and opens a sheet by keyboard that the address names', async () => {
    const { page, troubles } = await bench.open(DEMO);
    await page.locator('.jacket-test').first().waitFor({ timeout: 90_000 });
    expect(await page.locator('h1').textContent()).toMatch(/^Walls run from 1\.90\smm \(Brackenfell\) to 3\.36\smm/);
    expect(await page.locator('.jacket-faces svg').count()).toBe(12);
    expect(await page.locator('.jacket-test').first().textContent()).toContain('pieces of a cable are few');
    const turn = page.getByRole('button', { name: 'Quill' });
    await turn.focus();
    await page.keyboard.press('Enter');
    await page.locator('.jacket-sheet').waitFor();
    expect(new URL(page.url()).hash).toBe('#quill');
    expect(await page.locator('.jacket-sheet').textContent()).toContain('A hint: density alone names no material.');
    await page.goBack();
    await page.locator('.jacket-sheet').waitFor({ state: 'detached' });
    const scrape = page.locator('.jacket-test', { has: page.locator('h2', { hasText: 'Scrape' }) });
    const before = await scrape.locator('svg').first().getAttribute('aria-label');
    await scrape.getByRole('radio', { name: 'strokes per mm of wall' }).check();
    await scrape.getByText(/^What half of such pieces last, strokes per mm of wall$/).waitFor();
    expect(await scrape.locator('svg').first().getAttribute('aria-label')).not.toBe(before);
    const shown = await page.locator('main').evaluate((main) => {
      const open = main.cloneNode(true) as HTMLElement;
      open.querySelector('.how')?.remove();
      return open.textContent;
    });
    expect(shown).not.toMatch(/Weibull|log-rank|Kaplan|Holm|χ²/);
    await page.locator('.how summary').click();
    expect(await page.locator('.how').textContent()).toMatch(/Kaplan[\s\S]*Weibull/);
    expect(troubles).toEqual([]);
  });

  it.each([
    [1440, 'light'],
    [390, 'dark'],
  ] as const)('can be read by everybody at %d px, %s', async (width, colorScheme) => {
    const { page } = await bench.open(`${DEMO}#saltmarsh`, { width, colorScheme });
    await page.locator('.jacket-sheet').waitFor({ timeout: 90_000 });
    for (const fold of await page.locator('main details > summary').all()) await fold.click();
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
  });
});

describe('a test run by hand', () => {
  it('goes by touch at 360 px, keeps its count over a reload, and every outcome is an entry', async () => {
    const trial = await fresh(['Harrow', 'Sedge']);
    const context = await bench.browser.newContext({
      viewport: { width: 360, height: 640 },
      hasTouch: true,
      isMobile: true,
    });
    const page = await context.newPage();
    await page.goto(`${bench.address}/trial/${trial}/jacket#run`);
    await page.getByRole('heading', { name: 'Which test?' }).waitFor();
    expect(await tooWide(page, 360)).toBeLessThanOrEqual(0);
    await choose(page, 'Scrape');
    expect(await page.locator('.set-up').textContent()).toContain('never from a vehicle battery');
    await page.getByLabel('Load on the needle, N').fill('7');
    await page.getByLabel(/^Looked at every so many strokes/).fill('20');
    await page.getByLabel(/^Ended at/).fill('40');
    await begin(page);
    await page.locator('.run-piece').waitFor();
    const buttons = ['+1', '+10', 'Copper shows', 'It survived'];
    for (const name of buttons) {
      const box = (await page.getByRole('button', { name, exact: true }).boundingBox())!;
      expect(Math.min(box.width, box.height), name).toBeGreaterThanOrEqual(44);
      expect(box.y + box.height, name).toBeLessThanOrEqual(640);
    }
    for (const name of ['+10', '+1', '+1']) await page.getByRole('button', { name, exact: true }).tap();
    expect(await countShown(page)).toBe('12');
    const first = await page.locator('.run-piece .sign').textContent();
    await page.reload();
    await page.locator('.run-piece').waitFor();
    expect(await countShown(page)).toBe('12');
    expect(await page.locator('.run-piece .sign').textContent()).toBe(first);
    await page.getByRole('button', { name: '+10', exact: true }).tap();
    await page.getByText('Look now, at 20.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).tap();
    expect(await countShown(page)).toBe('12');
    await page.getByRole('button', { name: 'Copper shows' }).tap();
    await page.getByText(`Kept: ${first} failed at 12 strokes.`).first().waitFor();
    expect(await countShown(page)).toBe('0');
    for (let i = 0; i < 4; i++) await page.getByRole('button', { name: '+10', exact: true }).tap();
    // The count stops at the end that was fixed for all.
    await page.getByRole('button', { name: '+1', exact: true }).tap();
    expect(await countShown(page)).toBe('40');
    await page.locator('.count-line', { hasText: '40: ended. Survived?' }).waitFor();
    await page.getByRole('button', { name: 'It survived' }).tap();
    const rows = await storedBodies(bench.store, trial, 'endurance', 2);
    expect(rows[0]).toMatchObject({
      test: 'scrape',
      amount: '12',
      unit: 'strokes',
      outcome: 'failed',
      stress: '7',
      stress_unit: 'N',
      inspected_every: '20',
    });
    expect(rows[1]).toMatchObject({ amount: '40', outcome: 'survived' });
    expect(new Set(rows.map((row) => row.specimen!.slice(0, 2))).size).toBe(2);
    await context.close();
  });

  it('goes by keyboard and pedal: a held key counts once, the last outcome is taken back with its count', async () => {
    const trial = await fresh(['Harrow', 'Sedge']);
    const { page, troubles } = await bench.open(`/trial/${trial}/jacket#run`);
    await choose(page, 'Sandpaper');
    await begin(page);
    await page.locator('.run-piece').waitFor();
    await page.keyboard.down('Enter');
    await page.keyboard.down('Enter');
    await page.keyboard.down('Enter');
    await page.keyboard.up('Enter');
    expect(await countShown(page)).toBe('1');
    // After a click on +10 the pedal still counts by ones.
    await page.getByRole('button', { name: '+10', exact: true }).click();
    await page.keyboard.press('Enter');
    await page.keyboard.press('t');
    expect(await countShown(page)).toBe('22');
    await page.locator('.run-head').click();
    await page.keyboard.press(' ');
    await page.keyboard.press('u');
    expect(await countShown(page)).toBe('22');
    await page.keyboard.press('f');
    await page
      .getByText(/^Kept: .* failed at 22 strokes/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Take it back' }).click();
    await page.locator('.count b', { hasText: '22' }).waitFor();
    await page.keyboard.press('s');
    const rows = await storedBodies(bench.store, trial, 'endurance', 2);
    expect(rows.map((row) => row.outcome)).toEqual(['failed', 'survived']);
    expect(rows[1]!.specimen).toBe(rows[0]!.specimen);
    expect(await storedBodies(bench.store, trial, 'withdrawal', 1)).toMatchObject([
      { about: 'endurance', which: rows[0]!.endurance, act: 'put aside' },
    ]);
    expect(troubles).toEqual([]);
  });

  it('says what cannot be, before the first piece and at the outcome', async () => {
    const trial = await fresh(['Harrow']);
    const { page } = await bench.open(`/trial/${trial}/jacket#run`);
    await choose(page, 'Fluid');
    await page.getByLabel('Hours for every piece').fill('0');
    await begin(page);
    await page.getByRole('alert').filter({ hasText: 'found "fluid" alone; expected the fluid too' }).waitFor();
    await page.getByLabel('Name, as it will be listed').fill('fluid: diesel');
    await begin(page);
    await page
      .getByRole('alert')
      .filter({ hasText: /How much for every piece: found "?0"?; expected/ })
      .waitFor();
    await page.getByLabel('Hours for every piece').fill('1200 min');
    await begin(page);
    await page.getByLabel('Mass before, g').fill('heavy');
    await page.getByRole('button', { name: 'Keep mass before' }).click();
    await page
      .getByRole('alert')
      .filter({ hasText: /Mass before: found "heavy"/ })
      .waitFor();
    await page.getByLabel('Mass before, g').fill('22 lb');
    await page.getByRole('button', { name: 'Keep mass before' }).click();
    await page.locator('.exposed-read p:first-child b', { hasText: '22 lb' }).waitFor();
    await page.getByLabel('Mass before, g').fill('31.42');
    await page.getByRole('button', { name: 'Keep mass before' }).click();
    await page.getByRole('alert').filter({ hasText: 'is far from 22 lb read of this piece' }).waitFor();
    await page.getByRole('button', { name: 'Take back mass before, 22 lb' }).click();
    await page.locator('.exposed-read p:first-child b', { hasText: '22 lb' }).waitFor({ state: 'detached' });
    expect(await storedBodies(bench.store, trial, 'reading', 2)).toMatchObject([
      { quantity: 'mass_before', value: '22', unit: 'lb', set: 'fluid: diesel' },
      { quantity: 'mass_before', value: '31.42', unit: 'g', set: 'fluid: diesel' },
    ]);
    expect(await storedBodies(bench.store, trial, 'strike', 1)).toHaveLength(1);
    expect(await accessibilityBreaches(page)).toEqual([]);
    await page.getByRole('button', { name: 'It came through' }).click();
    await page.getByText('The clock here did not run; 20 h were planned.').waitFor();
    await page.getByRole('button', { name: 'Yes, 20 h for every piece' }).click();
    expect(await storedBodies(bench.store, trial, 'endurance', 1)).toMatchObject([
      { test: 'fluid: diesel', amount: '20', unit: 'h', outcome: 'survived', amount_by: 'planned' },
    ]);
    await page.getByRole('button', { name: 'Another test' }).click();
    await choose(page, 'Pinch');
    await page.getByLabel('Diameter of the rod, mm').fill('thick');
    await begin(page);
    await page
      .getByRole('alert')
      .filter({ hasText: /Load: found "thick"/ })
      .waitFor();
    await page.getByLabel('Diameter of the rod, mm').fill('3');
    await begin(page);
    await page.getByRole('button', { name: 'Copper shows' }).click();
    await page.getByRole('alert').filter({ hasText: 'Found nothing' }).waitFor();
    await page.getByLabel(/^Greatest figure/).fill('8.4 kgf');
    await page.getByRole('button', { name: 'Copper shows' }).click();
    const rows = await storedBodies(bench.store, trial, 'endurance', 2);
    expect(rows[1]).toMatchObject({ test: 'pinch', amount: '8.4', unit: 'kgf', stress: '3', stress_unit: 'mm' });
    expect(rows[1]!.specimen).not.toBe(rows[0]!.specimen);
    await page.getByText('No fresh piece is left').or(page.getByText('Every fresh piece is through')).waitFor();
  });

  it('says of a piece that failed before that it does not count twice, unless the earlier one was a slip', async () => {
    const trial = await fresh(['Harrow'], { each: 1 });
    const { page } = await bench.open(`/trial/${trial}/jacket#run`, { width: 360 });
    await choose(page, 'Scrape');
    await begin(page);
    const failAt = async (tens: number) => {
      for (let i = 0; i < tens; i++) await page.getByRole('button', { name: '+10', exact: true }).click();
      await page.getByRole('button', { name: 'Copper shows' }).click();
    };
    await failAt(2);
    await page.getByText('Every fresh piece is through this test.').waitFor();
    await page.getByText('Another piece').click();
    await page.locator('#run-piece').selectOption({ index: 1 });
    await page.getByText('It failed in this test before, at 20 strokes.').waitFor();
    await page.getByText('Mind: fingers out of the stroke').waitFor();
    await failAt(3);
    await page.getByText('It failed before, at 20 strokes: that counts, and this does not.').first().waitFor();
    await page.getByRole('button', { name: 'Take it back' }).click();
    await page.getByRole('button', { name: 'The earlier one was a slip' }).click();
    await page.getByText('It failed in this test before').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Copper shows' }).click();
    const rows = await storedBodies(bench.store, trial, 'endurance', 3);
    const aside = await storedBodies(bench.store, trial, 'withdrawal', 2);
    expect(aside.map((row) => row.which)).toEqual([rows[1]!.endurance, rows[0]!.endurance]);
    expect(rows[2]).toMatchObject({ amount: '30', outcome: 'failed' });
  });

  it('times what is timed, over a reload too', async () => {
    const trial = await fresh(['Harrow']);
    const { page } = await bench.open(`/trial/${trial}/jacket#run`);
    await choose(page, 'Hot iron');
    await begin(page);
    await page.locator('.run-head').click();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Stop the clock' }).waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Stop the clock' }).waitFor();
    await page.waitForTimeout(300);
    await page.getByRole('button', { name: 'Copper shows' }).click();
    const [row] = await storedBodies(bench.store, trial, 'endurance', 1);
    expect(row).toMatchObject({ test: 'hot iron', unit: 's', outcome: 'failed' });
    expect(Number(row!.amount)).toBeGreaterThan(0.2);
  });

  it.each([
    [1440, 'dark'],
    [390, 'light'],
  ] as const)('can be used by everybody at %d px, %s, whatever the cables are called', async (width, colorScheme) => {
    const trial = await fresh(RUDE);
    const { page, troubles } = await bench.open(`/trial/${trial}/jacket#run`, { width, colorScheme });
    await page.getByRole('heading', { name: 'Which test?' }).waitFor();
    expect(await accessibilityBreaches(page)).toEqual([]);
    await choose(page, 'One of your own');
    await page.getByLabel('Name, as it will be listed').fill('<i>dog</i> bites');
    expect(await accessibilityBreaches(page)).toEqual([]);
    await begin(page);
    await page.locator('.run-piece').waitFor();
    for (const fold of await page.locator('.run-aside details:not([open]) > summary').all()) await fold.click();
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
    await page.locator('.run-head').click();
    await page.keyboard.press('Enter');
    await page.keyboard.press('f');
    await storedBodies(bench.store, trial, 'endurance', 1);
    await page.goto(`${bench.address}/trial/${trial}/jacket`);
    await page.locator('.jacket-test').waitFor({ timeout: 60_000 });
    expect(await page.locator('main b', { hasText: 'Rudge' }).count()).toBe(0);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
    expect(troubles).toEqual([]);
  });
});

describe('without pieces or readings', () => {
  it('says what to do next', async () => {
    const trial = await fresh(['Harrow'], { each: 0 });
    const { page } = await bench.open(`/trial/${trial}/jacket`);
    await page.getByRole('heading', { name: 'Nothing about jackets has been recorded yet.' }).waitFor();
    await page.getByRole('link', { name: 'Run a test' }).click();
    await page.getByRole('heading', { name: 'No piece to abuse is on record.' }).waitFor();
    expect(new URL(page.url()).hash).toBe('#run');
  });
});

describe('the wall at the bench', () => {
  it('goes round the clock with the place filled in, and leads on to the tests', async () => {
    const trial = await fresh(['Harrow']);
    const { page } = await bench.open(`/trial/${trial}/bench`);
    await page.locator('#bench-value').waitFor();
    await waitForAllThere(page);
    const type = async (text: string) => {
      await page.locator('#bench-value').fill(text);
      await page.keyboard.press('Enter');
    };
    for (let i = 0; i < 12 && (await page.locator('.wall-round').count()) === 0; i++) await type('14.1');
    await page.getByText('Read the wall at 12 o’clock.').waitFor();
    await type('1.71');
    await page.getByText('Read the wall at 2 o’clock.').waitFor();
    await page.getByRole('radio', { name: '8 o’clock' }).check();
    await page.getByText('Read the wall at 8 o’clock.').waitFor();
    await type('1.93');
    await page.getByText('Read the wall at 2 o’clock.').waitFor();
    const readings = await storedBodies(bench.store, trial, 'reading', 4);
    const walls = readings.filter((row) => row.quantity === 'wall_thickness');
    expect(walls.map((row) => row.position)).toEqual(["12 o'clock", "8 o'clock"]);
    expect(await accessibilityBreaches(page)).toEqual([]);
    await page.getByRole('link', { name: 'Run an endurance test' }).click();
    await page.getByRole('heading', { name: 'Which test?' }).waitFor();
  });
});
