import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { storedBodies, waitForAllThere } from './support/atBench.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { piecesToBend } from './support/bendTrial.ts';

let bench: Bench;
let trials = 0;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const read = (quantity: string, value: string, unit: string, n: number): [string, Record<string, string>] => [
  'reading',
  { reading: `k${n}`, specimen: 'c0-b', quantity, value, unit },
];
/** What the bench asks of a piece before it is bent. */
const KNOWN = [
  read('specimen_length', '420', 'mm', 0),
  read('specimen_mass', '168', 'g', 1),
  read('outer_diameter', '12.0', 'mm', 2),
  read('outer_diameter', '12.1', 'mm', 3),
];
const newReadings = async (trial: string, count: number) =>
  (await storedBodies(bench.store, trial, 'reading', KNOWN.length + count)).slice(KNOWN.length);

async function atBench(width = 1440) {
  trials += 1;
  const trial = `bendbench${trials}`;
  await bench.store.append(trial, piecesToBend(trial, ['Harrow'], KNOWN));
  const opened = await bench.open(`/trial/${trial}/bench`, { width });
  await opened.page.locator('#bench-value').waitFor();
  await waitForAllThere(opened.page);
  return { trial, ...opened };
}

/** Types a value for the quantity that is in hand, and waits until the bench has gone on. */
async function type(page: Page, head: string, text: string): Promise<void> {
  await page.locator('.in-hand .what', { hasText: head }).waitFor();
  await page.locator('#bench-value').fill(text);
  await page.keyboard.press('Enter');
  await page.locator('#said', { hasText: `Kept: ${text}` }).waitFor({ state: 'attached' });
}

describe('bending at the bench', () => {
  it('advises what to let hang free, and keeps both ways up as one droop', async () => {
    const { page, trial, troubles } = await atBench();
    await page.locator('.before', { hasText: /Let about \d+\smm hang free/ }).waitFor();
    await type(page, 'Free length', '320');
    await type(page, 'Drop of the tip', '121');
    await type(page, 'Free length', '320.5');
    await page.locator('.in-hand .what', { hasText: 'Drop of the tip' }).waitFor();
    expect(await page.getByRole('radio', { name: 'turned over' }).isChecked()).toBe(true);
    await type(page, 'Drop of the tip', '133');
    await page.locator('.repeats li', { hasText: '121 as laid' }).waitFor();
    await page.locator('.repeats li', { hasText: '133 turned over' }).waitFor();
    for (const [face, value] of [
      ['turned over', '133'],
      ['as laid', '121'],
    ] as const) {
      await page.getByRole('radio', { name: face }).check();
      await page.getByRole('heading', { name: `Drop of the tip so far, ${face}, mm` }).waitFor();
      // The mean stands beside the readings that it is of, and no others.
      expect(await page.locator('.fellows li.here ol').innerText()).toBe(value);
      expect(await page.locator('.fellows li.here .mean').innerText()).toBe(value);
    }
    const rows = await newReadings(trial, 4);
    expect(rows.map(({ quantity, set, position = '' }) => [quantity, set, position])).toEqual([
      ['overhang', 'droop', ''],
      ['tip_drop', 'droop', 'up'],
      ['overhang', 'droop', ''],
      ['tip_drop', 'droop', 'down'],
    ]);
    expect(troubles).toEqual([]);
  });

  it('goes through a push from span to force and on, loading and letting back', async () => {
    const { page, trial } = await atBench();
    await page.getByRole('button', { name: 'Push', exact: true }).click();
    await type(page, 'Span between the supports', '240');
    for (const [deflection, force] of [
      ['2', '41'],
      ['4', '83'],
    ] as const) {
      await type(page, 'Deflection under the push', deflection);
      await type(page, 'Pushing force', force);
    }
    await page.getByRole('radio', { name: 'letting back' }).check();
    await type(page, 'Deflection under the push', '3');
    await type(page, 'Pushing force', '52');
    const rows = await newReadings(trial, 7);
    expect(new Set(rows.map((row) => row.set))).toEqual(new Set(['first push']));
    expect(rows.map(({ position = '' }) => position)).toEqual([
      '',
      'loading',
      'loading',
      'loading',
      'loading',
      'unloading',
      'unloading',
    ]);
    const force = rows.find((row) => row.quantity === 'push_force')!;
    expect(force).toMatchObject({ unit: 'gf', instrument: 'kitchen' });
  });

  it('takes a coil and what springs back', async () => {
    const { page, trial } = await atBench();
    await page.getByRole('button', { name: 'Coil', exact: true }).click();
    await type(page, 'Diameter of the tightest coil', '61');
    await page.getByRole('button', { name: 'Spring-back', exact: true }).click();
    await type(page, 'Share of the bend', '42');
    const rows = await newReadings(trial, 2);
    expect(rows[0]).toMatchObject({ quantity: 'coil_diameter', position: 'inside', unit: 'mm' });
    expect(rows[1]).toMatchObject({ quantity: 'spring_back', unit: '%', value: '42' });
  });

  it('can be used by everybody at 390 px', async () => {
    const { page } = await atBench(390);
    await page.locator('.bend-acts').waitFor();
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - 390)).toBeLessThanOrEqual(0);
  });
});
