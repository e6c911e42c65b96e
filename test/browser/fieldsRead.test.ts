import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';
import { answered, fillFields, HONEST } from './support/sixFields.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const echo = async (page: Page, name: string) =>
  ((await page.locator(`#six-${name}-read`).textContent()) ?? '').replaceAll('\u00a0', ' ');

describe('how the six fields were read', () => {
  it('is said under each of them', async () => {
    const { page, troubles } = await bench.open('/');
    await fillFields(page, { ...HONEST, 'What the label says': '1/0 AWG OFC', Ohms: '0.34 mohm' });
    expect(await echo(page, 'label')).toMatch(
      /^read as 1\/0 AWG, .*; copper; oxygen-free: not testable with these tools$/,
    );
    expect(await echo(page, 'mass')).toBe('read as 95.6 g');
    expect(await echo(page, 'ohms')).toBe('read as 0.34 mΩ');
    expect(await echo(page, 'temperature')).toBe('read as 20 °C');
    expect(await page.getByLabel('Ohms').getAttribute('aria-describedby')).toBe('six-ohms-read');
    await page.getByLabel('Ohms').fill('');
    await page.locator('#six-ohms-read').waitFor({ state: 'detached' });
    expect(troubles).toEqual([]);
  });

  it('follows the unit switches, and so does the answer', async () => {
    const { page } = await bench.open('/');
    const temperature = page.getByLabel('Temperature of the copper');
    expect(await temperature.getAttribute('placeholder')).toBe('such as 20 C');
    await page.getByLabel('degrees Fahrenheit').check();
    await page.getByLabel('inches').check();
    expect(await temperature.getAttribute('placeholder')).toBe('such as 68 F');
    expect(await page.getByLabel('Length that was weighed').getAttribute('placeholder')).toContain('in');
    await fillFields(page, {
      ...HONEST,
      'Length that was weighed': '11.811',
      'Length between the voltage contacts': '59.055',
      'Temperature of the copper': '68',
    });
    await answered(page);
    expect(await echo(page, 'temperature')).toBe('read as 68 °F');
    expect(await echo(page, 'length')).toBe('read as 11.811 in');
    const area = () => page.locator('.six .answer .key .figure b').first().textContent();
    expect(Math.abs(Number.parseFloat((await area()) ?? '') / 34.8 - 1)).toBeLessThan(0.01);
    await page.getByLabel('degrees Celsius').check();
    await page.waitForFunction(() => document.querySelector('#six-temperature-read')?.textContent?.includes('°C'));
    await answered(page);
    expect(Math.abs(Number.parseFloat((await area()) ?? '') / 34.8 - 1)).toBeGreaterThan(0.01);
  });

  it.each([
    ['Mass of the bare conductor', 'mass', '-5 g', /Found "-5 g"; expected a mass above zero/],
    ['Mass of the bare conductor', 'mass', '1e9 kg', /Found "1e9 kg"; expected a mass of at most 10 t/],
    ['Length that was weighed', 'length', '0', /Found "0"; expected a length above zero/],
    ['Temperature of the copper', 'temperature', '2000 C', /expected a temperature between −60 °C and 200 °C/],
  ])('refuses an impossible value: %s', async (label, name, text, sentence) => {
    const { page } = await bench.open('/');
    await fillFields(page, { ...HONEST, [label]: text });
    const trouble = page.locator(`#six-${name}-trouble`);
    expect(((await trouble.textContent()) ?? '').replaceAll('\u00a0', ' ')).toMatch(sentence);
    await answered(page);
    const keep = page.getByRole('button', { name: 'Keep as the start of a trial' });
    expect(await keep.isDisabled()).toBe(true);
    expect(await page.locator('#keep-refused').textContent()).toContain(label);
    await page.getByLabel(label).fill(HONEST[label as keyof typeof HONEST]);
    await trouble.waitFor({ state: 'detached' });
    expect(await keep.isEnabled()).toBe(true);
    expect(await page.locator('#keep-refused').count()).toBe(0);
  });
});
