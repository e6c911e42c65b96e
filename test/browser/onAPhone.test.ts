import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Entry } from '../../src/journal/entry.ts';
import { freshBench } from './support/atBench.ts';
import { type Bench, startBench } from './support/bench.ts';
import { said } from './support/benchTrial.ts';
import { waitForFindings } from './support/findings.ts';

let bench: Bench;

/** Invented cables from thin to far thicker than any vehicle has: label, grams over 300 mm, and the outer diameter where it was read. */
const CABLES: Record<string, [label: string, grams: string, outer: string]> = {
  thin: ['16 AWG', '3.6', ''],
  'thin-in-jacket': ['16 AWG', '3.6', '2.4 mm'],
  usual: ['2 AWG', '95.6', '11 mm'],
  huge: ['2000 mm2', '5600', '75 mm'],
  pipe: ['60000 mm2', '165 kg', '420 mm'],
};

function trialOf(name: string): Entry[] {
  const [label, grams, outer] = CABLES[name]!;
  const rows: [string, Record<string, string>][] = [
    ['trial', { trial: name, title: name }],
    ['cable', { cable: 'one', maker: 'One cable', claimed_size: label, claimed_metal: 'copper' }],
    ['specimen', { specimen: 'piece', cable: 'one', cut_length: '300', kind: 'apart' }],
    ['reading', { reading: 'length', specimen: 'piece', quantity: 'conductor_length', value: '300', unit: 'mm' }],
    ['reading', { reading: 'mass', specimen: 'piece', quantity: 'conductor_mass', value: grams, unit: 'g' }],
  ];
  if (outer !== '')
    rows.push([
      'reading',
      { reading: 'outer', specimen: 'piece', quantity: 'outer_diameter', value: outer, unit: 'mm' },
    ]);
  return rows.map(([kind, body], place) => said(name, kind, body, place));
}

beforeAll(async () => {
  bench = await startBench({ demo: false });
  for (const name of Object.keys(CABLES)) await bench.store.append(name, trialOf(name));
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** How far the page can be pushed sideways, px. */
const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe.each([360, 390])('at %i px', (width) => {
  it.each(Object.keys(CABLES))('a trial of one %s cable does not scroll sideways', async (name) => {
    const { page, troubles } = await bench.open(`/trial/${name}/inside`, { width, height: 780 });
    await waitForFindings(page);
    expect(await sideways(page)).toBe(0);
    expect(await page.locator('.faces .cut svg').count()).toBe(1);
    const bar = await page.locator('.scale-bar svg').boundingBox();
    expect(bar!.width).toBeGreaterThanOrEqual(40);
    expect(bar!.x + bar!.width).toBeLessThanOrEqual(width);
    await page.locator('.turn').click();
    await page.locator('.sheet').waitFor();
    expect(await sideways(page)).toBe(0);
    expect(troubles).toEqual([]);
  });
});

describe('the bench at 390 by 844 px', () => {
  it('has nothing that matters under the keypad: what goes along, what was kept with its undo', async () => {
    const { page } = await freshBench(bench, ['KR'], 3, { width: 390, height: 844 });
    const keypad = page.locator('.keypad');
    /** Whether the whole of it stands above the keys, or among them. */
    const inSight = async (locator: Locator) => {
      const [box, keys] = [await locator.boundingBox(), await keypad.locator('.keys').boundingBox()];
      return box !== null && box.y >= 0 && box.y + box.height <= keys!.y + 1;
    };
    const along = page.locator('.carried-fold > summary');
    expect(await along.innerText()).toBe('no temperature yet · no distance between the contacts yet');
    expect([await inSight(along), await inSight(page.locator('.value'))]).toEqual([true, true]);
    await along.click();
    await page.getByLabel('Between the voltage contacts, mm').fill('1900');
    await page.getByLabel('Copper, among the strands, °C').fill('20.4');
    await along.click();
    expect(await along.innerText()).toBe('20.4 °C · 1900 mm between the contacts');
    for (const value of ['0.9', '1.2']) {
      await page.locator('#bench-value').fill(value);
      await page.keyboard.press('Enter');
      await page.locator('.done-line', { hasText: `Kept ${value} mΩ` }).waitFor();
    }
    await page.locator('.question', { hasText: 'differ by 33 %' }).waitFor();
    await page.evaluate(() => scrollTo(0, 0));
    expect(await inSight(page.locator('.done-line'))).toBe(true);
    expect(await inSight(page.locator('.question p').first())).toBe(true);
    await page.getByRole('button', { name: /^Undo: Kept 1\.2/ }).click();
    await page.locator('.question').waitFor({ state: 'detached' });
  });
});
