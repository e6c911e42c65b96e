import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { manyLines } from '../../bench/shelfCase.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { Bench as Trial } from '../findings/bench.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;

/** An invented trial of one cable beside a wire that other trials measure too. */
function trialOf(trial: string, maker: string, mm2: number, wire: number): Entry[] {
  const b = new Trial()
    .carefulTools()
    .cable('x', '2 AWG', 'OFC', { maker, price: '12.50 EUR', price_per: 'metre' })
    .cable('w', '10 AWG', 'copper', { maker: 'House wire', role: 'control', shared_name: 'house wire' })
    .piece('px', 'x')
    .piece('pw', 'w')
    .everything('px', mm2)
    .everything('pw', wire);
  b.say('trial', { trial, title: `Trial of ${maker}` });
  return b.entries.map((entry) => ({ ...entry, trial }));
}

beforeAll(async () => {
  bench = await startBench({ demo: false });
  for (const [trial, maker, mm2, wire] of [
    ['one', 'Quill', 33, 5.26],
    ['two', 'Rush', 30, 5.28],
  ] as const)
    await bench.store.append(trial, trialOf(trial, maker, mm2, wire));
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('the cables of all trials', () => {
  it('are found by words, stand side by side, and a piece in both trials links them', async () => {
    const { page, troubles } = await bench.open('/');
    await page.getByRole('link', { name: /All 4 cables/ }).click();
    await page.getByText('4 cables', { exact: true }).waitFor();
    await page.getByLabel('Words').fill('2 awg');
    await page.getByText('2 of 4 cables').waitFor();
    await page.getByLabel('Choose Quill of Trial of Quill').check();
    await page.getByLabel('Choose Rush of Trial of Rush').check();
    const said = page.locator('.said-first');
    await said.getByText(/“house wire” was measured in two trials/).waitFor();
    await said.getByText('Two trials say little of it').waitFor();
    expect(await page.locator('.side-by-side svg').getAttribute('aria-label')).toContain('widened');
    await page.getByLabel('Piece that links the trials').selectOption('');
    await said.getByText('contains an error that nobody measured').waitFor();
    await page.getByLabel('Metal found').selectOption('copper');
    await page.getByLabel('Price a metre from').fill('13');
    await page.getByText('No cable is like that').waitFor();
    await page.getByRole('button', { name: 'show all' }).click();
    await page.getByText('4 cables', { exact: true }).waitFor();
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(troubles).toEqual([]);
  });

  it('are shown as they were told last when the bench computer is out of reach, and it is said', async () => {
    const { page } = await bench.open('/cables', { plain: true });
    await page.getByText('4 cables', { exact: true }).waitFor();
    await page.route('**/api/cables', (route) => route.abort());
    await page.reload();
    await page.getByText('as this browser was told of them last').waitFor();
    await page.getByText('4 cables', { exact: true }).waitFor();
  });

  it('are only drawn near what is in sight, however many there are, and the keyboard keeps its place', async () => {
    const { page } = await bench.open('/', { plain: true });
    await page.route('**/api/cables', (route) => route.fulfill({ json: manyLines(10_000) }));
    await page.goto(`${bench.address}/cables`);
    await page.getByText('10,000 cables', { exact: true }).waitFor();
    const table = page.locator('table.found');
    expect(await table.getAttribute('aria-rowcount')).toBe('10001');
    const drawn = () => table.locator('tbody tr').count();
    expect(await drawn()).toBeLessThan(80);
    await table.locator('tbody input').first().focus();
    await page.locator('.window').evaluate((list) => {
      list.scrollTop = 100_000;
    });
    await page.waitForFunction(() => Number(document.querySelector('tbody tr')?.getAttribute('aria-rowindex')) > 1000);
    expect(await drawn()).toBeLessThan(80);
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('window');
    await page.getByLabel('Words').fill('alder');
    await page.waitForFunction(() => document.querySelector('.window')?.scrollTop === 0);
    expect(await table.locator('tbody tr').first().getAttribute('aria-rowindex')).toBe('2');
  });
});
