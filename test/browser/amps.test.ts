import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { piecesToWear } from './support/abuseTrial.ts';
import { storedBodies, waitForAllThere } from './support/atBench.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';

const DEMO = '/trial/fenwater-2-awg/amps';
const RUDE = ['<b>Rudge</b> & Pawl', '“‮drawkcab” ⚡', `Endless${'-amps'.repeat(24)}`];

let bench: Bench;
let trials = 0;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

async function fresh(makers: readonly string[], more: Parameters<typeof piecesToWear>[2] = {}): Promise<string> {
  trials += 1;
  const trial = `amps${trials}`;
  await bench.store.append(trial, piecesToWear(trial, makers, more));
  return trial;
}

const tooWide = (page: Page, width: number) => page.evaluate((w) => document.documentElement.scrollWidth - w, width);
const worked = (page: Page) => page.locator('.run-check[data-ready=yes]').waitFor({ timeout: 90_000 });
const heading = async (page: Page) => (await page.locator('h1').textContent())?.replaceAll('\u00a0', ' ') ?? '';

describe('Amps with the invented trial', () => {
  it('says what cables carry, and opens the heated one by keyboard with its curves and cautions', async () => {
    const { page, troubles } = await bench.open(DEMO);
    await page.locator('.amps-strips svg').first().waitFor({ timeout: 90_000 });
    expect(await heading(page)).toMatch(/^Brackenfell ends 38 K above its surroundings at 160 A\./);
    expect(await page.locator('.amps-strips svg').count()).toBe(2);
    const turn = page.getByRole('button', { name: 'Brackenfell' });
    await turn.focus();
    await page.keyboard.press('Enter');
    await page.locator('.heatings svg').nth(1).waitFor({ timeout: 60_000 });
    expect(new URL(page.url()).hash).toBe('#brackenfell');
    expect(await page.locator('.heatings svg').first().getAttribute('aria-label')).toMatch(
      /^Brackenfell heated by 110 A, 1[67] K after 50 minutes; it ends at 16\.\d K/,
    );
    expect(await page.locator('.amps-sheet').textContent()).toContain('it does not switch off');
    await page.goBack();
    await page.locator('.amps-sheet').waitFor({ state: 'detached' });
    const shown = await page.locator('main').evaluate((main) => {
      const open = main.cloneNode(true) as HTMLElement;
      open.querySelector('.how')?.remove();
      return open.textContent;
    });
    expect(shown).not.toMatch(/exponential|likelihood|\bsafe\b|approved/i);
    expect(troubles).toEqual([]);
  });

  it.each([
    ['#brackenfell', '.heatings svg', 1440, 'light'],
    ['#brackenfell', '.heatings svg', 390, 'dark'],
    ['#run', '.run-check[data-ready=yes] .run-table', 1440, 'dark'],
    ['#run', '.run-check[data-ready=yes] .run-blocks', 390, 'light'],
    ['#heat', '.heat-steps', 390, 'light'],
    ['#log', '.log-drop', 390, 'dark'],
  ] as const)('can be read by everybody: %s with %s at %d px, %s', async (hash, there, width, colorScheme) => {
    const { page } = await bench.open(`${DEMO}${hash}`, { width, colorScheme });
    await page.locator(there).first().waitFor({ timeout: 90_000 });
    for (const fold of await page.locator('main details > summary').all()) await fold.click();
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
  });
});

const minutes = (rows: number, of: (minute: number) => string) =>
  Array.from({ length: rows }, (_, i) => of(i / 2)).join('\n');
const copper = (m: number) => (20 + 35 * (1 - Math.exp(-m / 9))).toFixed(2);

/** A log of an hour at 140 A, as its logger writes it: clock, Fahrenheit for the room, semicolons. */
const LOG = `Logger 4\nClock;Copper °C;Room °F;Current A\n${minutes(
  120,
  (m) => `12:${String(Math.floor(m)).padStart(2, '0')}:${m % 1 === 0 ? '00' : '30'};${copper(m)};68.0;140.0`,
)}`;

async function bringText(page: Page, text: string): Promise<void> {
  await page.locator('#log-text').fill(text);
  await page.getByRole('button', { name: 'Take the text' }).click();
}

describe('a logger’s file', () => {
  it('is guessed, read, looked at, and kept as rows with the file itself under its hash', async () => {
    const trial = await fresh(['Harrow', 'Sedge']);
    const { page, troubles } = await bench.open(`/trial/${trial}/amps#log`);
    await page.locator('.log-drop').waitFor({ timeout: 60_000 });
    await page
      .locator('#log-file')
      .setInputFiles({ name: 'Bench <1>.csv', mimeType: 'text/csv', buffer: Buffer.from(LOG) });
    await page.getByRole('heading', { name: 'Which column is which?' }).waitFor();
    const roles = await page
      .locator('.log-map select')
      .evaluateAll((all) => all.map((s) => (s as HTMLSelectElement).value));
    expect(roles).toEqual(['time', 'clock', 'conductor', '°C', 'ambient', '°F', 'current', 'A']);
    expect(await page.getByRole('button', { name: 'Read it' }).isDisabled()).toBe(true);
    await page.locator('#log-piece').selectOption('c0-x1');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.locator('#log-says').waitFor();
    expect(await page.locator('.log-says').textContent()).toMatch(/140\u00a0A: ends about 3[45]\.\d\u00a0K above/);
    await page.getByRole('button', { name: /^Keep \d+ rows/ }).click();
    await page.getByText(/^Kept: \d+ rows of Bench <1>\.csv/).waitFor();
    await waitForAllThere(page);
    const rows = await storedBodies(bench.store, trial, 'current', 100);
    expect(rows[0]).toMatchObject({ specimen: 'c0-x1', current_A: '140', ambient_C: '20' });
    const [note] = await storedBodies(bench.store, trial, 'note', 1);
    expect(note).toMatchObject({ about: 'specimen', which: 'c0-x1' });
    // Files go over after the entries.
    await expect
      .poll(async () => (await bench.store.getBlob(trial, note!.photo!)) !== null, { timeout: 30_000 })
      .toBe(true);
    const blob = await bench.store.getBlob(trial, note!.photo!);
    expect(Buffer.from(blob!).toString()).toBe(LOG);
    expect(troubles).toEqual([]);
  });

  it('is refused by name: running backwards, columns swapped, no current, hotter than the metal melts, no table', async () => {
    const trial = await fresh(['Harrow']);
    const { page } = await bench.open(`/trial/${trial}/amps#log`);
    await page.locator('.log-drop').waitFor({ timeout: 60_000 });
    const refusal = async (text: string, setUp: () => Promise<void> = async () => {}) => {
      await bringText(page, text);
      await page.locator('#log-piece').selectOption('c0-x1');
      await setUp();
      await page.getByRole('button', { name: 'Read it' }).click();
      const said = await page.locator('.trouble-sentence').textContent();
      await page.getByRole('button', { name: 'Put it down' }).click();
      return said?.replaceAll('\u00a0', ' ');
    };
    const head = 'time s,copper C,room C,amps A\n';
    const back = `${head}${minutes(20, (m) => `${m < 8 ? m * 60 : m * 60 - 400},${copper(m)},20,140`)}`;
    expect(await refusal(back)).toContain('runs backwards at row');
    const swapped = `time s,room C,copper C,amps A\n${minutes(40, (m) => `${m * 60},${copper(m)},20,140`)}`;
    expect(await refusal(swapped)).toContain('the two columns are swapped');
    const off = `${head}${minutes(20, (m) => `${m * 60},${copper(m)},20,0`)}`;
    expect(await refusal(off)).toContain('The current is 0 A in every row');
    const molten = `${head}${minutes(20, (m) => `${m * 60},${1000 + 20 * m},20,140`)}`;
    expect(await refusal(molten)).toMatch(/melting point/);
    await bringText(page, 'Dear Sedge,\nthe log is on its way.');
    expect(await page.locator('.trouble-sentence').textContent()).toContain('No line of this file holds two figures');
  });

  it('asks for the current where no column has it', async () => {
    const trial = await fresh(['Harrow']);
    const { page } = await bench.open(`/trial/${trial}/amps#log`);
    await page.locator('.log-drop').waitFor({ timeout: 60_000 });
    await bringText(page, `time min,copper C\n${minutes(60, (m) => `${m},${copper(m)}`)}`);
    await page.locator('#log-piece').selectOption('c0-x1');
    expect(await page.locator('.log-read').textContent()).toContain('say how many amps flowed');
    await page.locator('#log-current').fill('140');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.locator('#log-says').waitFor();
  });
});

describe('a heating test by hand', () => {
  it('wants its stop before the start, sounds at it without switching off, and keeps its clock over a reload', async () => {
    const trial = await fresh(['Harrow']);
    const { page } = await bench.open(`/trial/${trial}/amps#heat`, { width: 390 });
    await page.locator('#heat-piece').waitFor({ timeout: 60_000 });
    expect(await page.locator('.heat-steps').textContent()).toContain(
      'Never take the current from opened mains equipment.',
    );
    await page.locator('#heat-piece').selectOption('c0-x1');
    await page.locator('#heat-current').fill('120');
    await page.getByRole('button', { name: 'The current is on' }).click();
    await page.getByText('Missing: the temperature at which you stop.').waitFor();
    await page.locator('#heat-stop').fill('55');
    await page.getByRole('button', { name: 'The current is on' }).click();
    await page.locator('#heat-reads').fill('31.5');
    await page.keyboard.press('Enter');
    await page.getByText('Kept: 31.5 °C.').waitFor();
    expect(await page.locator('.heat-stop').count()).toBe(0);
    await page.reload();
    await page.locator('#heat-reads').fill('55,2');
    await page.keyboard.press('Enter');
    await page.getByText('Stop: 55.2 °C. Switch off at the switch; this page does not.').waitFor();
    const rows = await storedBodies(bench.store, trial, 'current', 2);
    expect(rows.map((row) => row.conductor_C)).toEqual(['31.5', '55.2']);
    expect(Number(rows[1]!.time_s)).toBeGreaterThanOrEqual(Number(rows[0]!.time_s));
    await page.getByRole('button', { name: 'The current is off' }).click();
    await page.locator('#heat-piece').waitFor();
  });
});

describe('ohms by volts and amps at the bench', () => {
  it('are reached from the step for ohms, and go pair by pair with their sets', async () => {
    const whole = { specimen: 'w1', cable: 'c0', kind: 'whole', cut_length: '3000', cut_length_unit: 'mm' };
    const trial = await fresh(['Harrow'], {
      more: [
        ['setting', { setting: 'methods', value: 'ohms' }],
        ['specimen', whole],
      ],
    });
    const { page, troubles } = await bench.open(`/trial/${trial}/bench`);
    await page.getByRole('button', { name: 'Measure by volts and amps' }).click({ timeout: 60_000 });
    for (const [value, words] of [
      ['80 mV', 'Current 1 of 3, as clamped.'],
      ['20 A', 'Current 1 of 3, as clamped.'],
      ['79 mV', 'Current 1 of 3, turned round.'],
      ['20 A', 'Current 1 of 3, turned round.'],
    ] as const) {
      await page.locator('.four-wire-acts', { hasText: words }).waitFor();
      await page.locator('#bench-value').fill(value);
      await page.keyboard.press('Enter');
    }
    await page.locator('.four-wire-acts', { hasText: 'Current 2 of 3, as clamped.' }).waitFor();
    const rows = await storedBodies(bench.store, trial, 'reading', 4);
    expect(rows.map((row) => [row.quantity, row.set, row.position ?? ''])).toEqual([
      ['test_voltage', 'current 1', ''],
      ['test_current', 'current 1', ''],
      ['test_voltage', 'current 2', 'reverse'],
      ['test_current', 'current 2', 'reverse'],
    ]);
    expect(troubles).toEqual([]);
  });
});

describe('an empty trial, and names of any kind', () => {
  it('says what to do next', async () => {
    const trial = await fresh(['Harrow', 'Sedge']);
    const { page, troubles } = await bench.open(`/trial/${trial}/amps`);
    await page
      .getByRole('heading', { name: 'Nothing under current has been recorded yet.' })
      .waitFor({ timeout: 60_000 });
    await page.getByRole('link', { name: 'Run check' }).click();
    await worked(page);
    expect(await heading(page)).toContain('The least nominal copper size that does is');
    expect(await page.locator('main').textContent()).toContain('its resistance was not read');
    expect(troubles).toEqual([]);
  });

  it('shows them as text and within the page', async () => {
    const read = RUDE.flatMap((_, i): [string, Record<string, string>][] =>
      [
        ['r', 'resistance', '0.25', 'mohm'],
        ['d', 'outer_diameter', '12.1', 'mm'],
        ['m', 'mass_whole', '120', 'g'],
      ].map(([k, quantity, value, unit]) => [
        'reading',
        { reading: `${k}${i}`, specimen: `c${i}-a`, quantity: quantity!, value: value!, unit: unit!, at_length: '300' },
      ]),
    );
    const trial = await fresh(RUDE, { more: read });
    const { page, troubles } = await bench.open(`/trial/${trial}/amps`, { width: 390 });
    await page.getByRole('button', { name: '<b>Rudge</b> & Pawl' }).first().waitFor({ timeout: 60_000 });
    expect(await tooWide(page, 390)).toBeLessThanOrEqual(0);
    await page.getByRole('link', { name: 'Run check' }).click();
    await worked(page);
    expect(await page.locator('main b:text-is("Rudge")').count()).toBe(0);
    expect(await tooWide(page, 390)).toBeLessThanOrEqual(0);
    expect(troubles).toEqual([]);
  });
});
