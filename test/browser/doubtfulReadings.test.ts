import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';
import { waitForFindings } from './support/findings.ts';
import { answered, fillFields, HONEST } from './support/sixFields.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** Text as people see it, with plain spaces. */
const textOf = async (page: Page, selector: string) =>
  ((await page.locator(selector).first().textContent()) ?? '').replace(/\s/g, ' ');

async function keep(page: Page, fields: Record<string, string>): Promise<void> {
  await fillFields(page, fields);
  await answered(page);
  await page.getByRole('button', { name: 'Keep as the start of a trial' }).click();
  await waitForFindings(page);
}

/** Milliohms typed as ohms. */
const CONTRADICTING = { ...HONEST, Ohms: '0.76 ohm' };

describe('readings that contradict each other', () => {
  it('are said to, with the one to take again, and no figure is given', async () => {
    const { page, troubles } = await bench.open('/');
    await fillFields(page, CONTRADICTING);
    await answered(page);
    expect(await textOf(page, '.six .answer .said')).toMatch(/^The readings contradict each other/);
    expect(await textOf(page, '.six .answer')).toContain('Take again: resistance.');
    expect(await textOf(page, '.six .answer .drawing')).toContain('read again');
    expect(await page.locator('.six .answer .key').count()).toBe(0);
    expect(troubles).toEqual([]);
  });

  it.each([1440, 390])('stand inside a trial as such, not as missing, at %i px', async (width) => {
    const { page } = await bench.open('/', { width });
    await keep(page, CONTRADICTING);
    expect(await textOf(page, 'h1')).not.toContain('Nothing has been measured');
    expect(await textOf(page, width > 1279 ? '.cables tbody' : '.blocks')).toContain('No area: take again resistance');
    expect(await textOf(page, '.faces .outcome')).toBe('not settled');
    await page.locator('.turn').click();
    expect(await textOf(page, '.sheet .said')).toMatch(/^The readings contradict each other/);
    expect(await textOf(page, '.sheet .claims')).not.toMatch(/meets|falls short/);
    expect(await textOf(page, '.sheet')).not.toContain('No area yet');
  });
});

describe('a wide figure', () => {
  it.each([1440, 390])('is told by both its ends, at %i px', async (width) => {
    const { page } = await bench.open('/', { width });
    await keep(page, {
      'What the label says': '2 AWG OFC',
      'Mass of the bare conductor': '3 g',
      'Length that was weighed': '8 mm',
    });
    const place = width > 1279 ? '.cables .key .figure' : '.blocks .lead .figure';
    expect(await textOf(page, place)).toMatch(/^\d+ to \d+/);
    expect(await textOf(page, '.gauge-words')).toBe('not told');
    await page.locator('.turn').click();
    expect(await textOf(page, '.sheet')).toMatch(/What the width of \d+ to \d+ mm² is made of/);
    expect(await textOf(page, 'main')).not.toContain('× 10');
  });
});

describe('numbers and their units', () => {
  it('never part at the end of a line', async () => {
    const { page } = await bench.open('/');
    await keep(page, HONEST);
    await page.locator('.turn').click();
    const main = (await page.locator('main').textContent()) ?? '';
    expect(main.match(/\d (%|mm²|mm|°C|g|AWG)(?![\p{L}\d])/gu)).toBeNull();
  });
});
