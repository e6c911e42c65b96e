import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { storedBodies } from './support/atBench.ts';
import { openFreshPlan, paste, waitForOutlook } from './support/atPlan.ts';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;
let trials = 0;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const stored = (trial: string, kind: string, count: number) => storedBodies(bench.store, trial, kind, count);

/** A fresh trial on the shelf, and its plan open. */
function atPlan() {
  trials += 1;
  return openFreshPlan(bench, `c${trials}`);
}

describe('the claims in their table', () => {
  it('are typed cell by cell, down a column, each as an entry with its row', async () => {
    const { page, trial } = await atPlan();
    await page.getByLabel('Length bought, Maker 1').fill('10 ft');
    await page.keyboard.press('Enter');
    await page.keyboard.type('"');
    await page.keyboard.press('Enter');
    const rows = await stored(trial, 'cable', 4);
    expect(rows[2]).toMatchObject({
      cable: 'cable-1',
      maker: 'Maker 1',
      claimed_size: '2 AWG',
      bought_length: '10 ft',
    });
    expect(rows[3]).toMatchObject({ cable: 'cable-2', bought_length: '10 ft' });
    await page
      .getByText(/bought 3\.05\sm/)
      .first()
      .waitFor();
    await page.reload();
    await waitForOutlook(page);
    expect(await page.getByLabel('Length bought, Maker 2').inputValue()).toBe('10 ft');
  });

  it('have more fields behind the row, and fill their blanks from the row above', async () => {
    const { page, trial } = await atPlan();
    await page.getByRole('button', { name: 'More of Maker 1' }).click();
    await page.getByLabel('Jacket colour').fill('red');
    await page.getByLabel('Jacket colour').press('Tab');
    await page.getByLabel('Paid for', { exact: true }).selectOption('yes');
    await page.getByLabel('Price of the day').fill('2199-01-01');
    await page.getByLabel('Price of the day').press('Tab');
    await page.getByText(/in the future/).waitFor();
    await page.getByRole('button', { name: 'Blanks of Maker 2 as above' }).click();
    const rows = await stored(trial, 'cable', 5);
    expect(rows[3]).toMatchObject({ cable: 'cable-1', jacket_colour: 'red', supplied_free: 'yes' });
    expect(rows[4]).toMatchObject({ cable: 'cable-2', maker: 'Maker 2', jacket_colour: 'red', supplied_free: 'yes' });
  });

  it('come out of a spreadsheet, bad rows named, good ones added', async () => {
    const { page, trial } = await atPlan();
    await paste(
      page,
      '.claims-grid input >> nth=0',
      'maker\tsize\tmetal\tprice\tlength\nFenmarsh\t2 AWG\tOFC\t$39.90\t10 ft\nTarn\t″\t″\t$12\t3 m\nBad\t2 AWG\tOFC\t3\theavy\n',
    );
    await page.getByText('Row 4, bought length.').waitFor();
    await page.getByRole('button', { name: 'Add 2 rows' }).click();
    await page.getByText('Two rows are in the table; one stays here to be put right.').waitFor();
    expect(await page.locator('.claims-grid tbody tr').count()).toBe(4);
    const rows = await stored(trial, 'cable', 4);
    expect(rows.slice(2)).toMatchObject([
      { maker: 'Fenmarsh', claimed_size: '2 AWG', price: '39.90', currency: '$' },
      { maker: 'Tarn', claimed_size: '2 AWG', claimed_metal: 'OFC' },
    ]);
  });

  it('keep both of two cells that are typed faster than the first is on disk', async () => {
    const { page, trial } = await atPlan();
    await page.evaluate(() => {
      const type = (label: string, text: string) => {
        const field = document.querySelector<HTMLInputElement>(`[aria-label="${label}"]`)!;
        field.value = text;
        field.dispatchEvent(new Event('input', { bubbles: true }));
        field.dispatchEvent(new Event('change', { bubbles: true }));
      };
      type('Model, Maker 1', 'Number two');
      type('Strands, Maker 1', '665');
    });
    const rows = await stored(trial, 'cable', 4);
    expect(rows[3]).toMatchObject({ cable: 'cable-1', model: 'Number two', claimed_strands: '665' });
  });
});

describe('what is wanted, typed', () => {
  it('is ticked and typed, and changes what the plan would show', async () => {
    const { page, trial } = await atPlan();
    const before = await page.locator('h1').textContent();
    await page.getByLabel('Shortfall to show').fill('10 %');
    await page.getByLabel('Shortfall to show').press('Tab');
    await page.waitForFunction((was) => document.querySelector('h1')?.textContent !== was, before);
    expect(await page.locator('h1').textContent()).toContain('a 10 % shortfall');
    await page.getByLabel('How much it carries').check();
    await page.getByLabel('Repeats of each reading').fill('many');
    await page.getByLabel('Repeats of each reading').press('Tab');
    await page.getByText('expected a whole number from 1 to 100').waitFor();
    const settings = (await stored(trial, 'setting', 4)).slice(2);
    expect(settings).toEqual([
      { setting: 'shortfall', value: '0.1' },
      { setting: 'methods', value: 'ohms, weigh, amps' },
    ]);
  });
});
