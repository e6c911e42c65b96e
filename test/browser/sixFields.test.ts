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

const answer = (page: Page) => page.locator('.six .answer');

describe('one cable, six fields', () => {
  it('answers while they are typed', async () => {
    const { page, troubles } = await bench.open('/');
    await fillFields(page, HONEST);
    await answer(page)
      .getByText(/copper/)
      .first()
      .waitFor();
    await answered(page);
    expect(Math.abs((await metalArea(page)) / 34.8 - 1)).toBeLessThan(0.01);
    expect(await answer(page).locator('.drawing svg').count()).toBe(1);
    expect(await answer(page).locator('.key').textContent()).toContain('meets');
    expect(troubles).toEqual([]);
  });

  it('widens the answer when the temperature is blank, and says so', async () => {
    const { page } = await bench.open('/');
    await fillFields(page, HONEST);
    await answered(page);
    const sharp = await plusMinus(page);
    await page.getByLabel('Temperature of the copper').fill('');
    await answer(page)
      .getByText(/0 to 35\s°C/)
      .waitFor();
    await answered(page);
    expect(await plusMinus(page)).toBeGreaterThan(sharp);
  });

  it('reads other units as the same cable', async () => {
    const { page } = await bench.open('/');
    await fillFields(page, HONEST);
    await answered(page);
    const area = await metalArea(page);
    await fillFields(page, {
      'Mass of the bare conductor': '3.372 oz',
      'Length that was weighed': '11.81 in',
      Ohms: '760 uohm',
      'Length between the voltage contacts': '4\' 11 1/16"',
      'Temperature of the copper': '68 F',
    });
    await answered(page);
    expect(await page.locator('.trouble').count()).toBe(0);
    expect(Math.abs((await metalArea(page)) / area - 1)).toBeLessThan(0.005);
  });

  it('says under the field what was found and what was expected', async () => {
    const { page } = await bench.open('/');
    await page.getByLabel('Mass of the bare conductor').fill('300 mm');
    const field = page.getByLabel('Mass of the bare conductor');
    await page.locator('#six-mass-trouble').waitFor();
    expect(await page.locator('#six-mass-trouble').textContent()).toMatch(
      /Found "300\smm" \(a length\); expected a mass/,
    );
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    await field.fill('95.6 g');
    await page.waitForFunction(() => document.querySelector('#six-mass-trouble') === null);
    expect(await field.getAttribute('aria-invalid')).toBeNull();
  });

  it('keeps the cable as the start of a trial, as it was typed', async () => {
    const { page } = await bench.open('/');
    await fillFields(page, { ...HONEST, 'Mass of the bare conductor': '95,6 gr' });
    await page.getByRole('button', { name: 'Keep as the start of a trial' }).click();
    await page.waitForURL(/\/trial\/.+\/inside/);
    await waitForFindings(page);
    expect(await page.locator('.faces li').count()).toBe(1);
    const [line] = await bench.store.trials();
    const entries = await bench.store.entries(line!.trial);
    const mass = entries.find((entry) => entry.body.quantity === 'conductor_mass');
    expect(mass?.body).toMatchObject({ value: '95,6', unit: 'gr' });
  });
});

/** The metal area that stands in the answer, in the unit chosen. */
async function metalArea(page: Page): Promise<number> {
  return Number.parseFloat((await answer(page).locator('.key .figure b').first().textContent()) ?? '');
}

/** The number after ± of the metal area. */
async function plusMinus(page: Page): Promise<number> {
  const text = await answer(page).locator('.key .figure span').first().textContent();
  return Number.parseFloat((text ?? '').replace(/[^\d.]/g, ''));
}
