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

const KEEP = 'Keep as the start of a trial';

describe('keeping one cable', () => {
  it('makes one trial, however often the button is pressed', async () => {
    const { page, troubles } = await bench.open('/');
    const before = (await bench.store.trials()).length;
    await fillFields(page, HONEST);
    await answered(page);
    await page.getByRole('button', { name: KEEP }).dblclick();
    await waitForFindings(page);
    expect((await bench.store.trials()).length).toBe(before + 1);
    await page.goBack();
    await page.locator('.kept-as').waitFor();
    expect(await page.getByRole('button', { name: KEEP }).count()).toBe(0);
    await page.locator('.kept-as a').click();
    await waitForFindings(page);
    expect((await bench.store.trials()).length).toBe(before + 1);
    expect(troubles).toEqual([]);
  });

  it('names it by label, day and time, and the shelf says when it was opened', async () => {
    const { page } = await bench.open('/');
    await fillFields(page, { ...HONEST, 'What the label says': '4 AWG OFC' });
    await answered(page);
    await page.getByRole('button', { name: KEEP }).click();
    await waitForFindings(page);
    const title = (await page.locator('.header .trial b').textContent()) ?? '';
    expect(title).toMatch(/^4 AWG OFC, \d{1,2} \w+ \d{4}, \d{2}:\d{2}$/);
    const [, , trial] = new URL(page.url()).pathname.split('/');
    await page.goBack();
    // By its address: a cable that is kept twice within a minute has the same title twice.
    const row = page.locator('.trials tbody tr', { has: page.locator(`a[href^="/trial/${trial}/"]`) });
    await row.waitFor();
    expect(await row.textContent()).toContain(title);
    expect(await row.locator('td.number').last().textContent()).toMatch(/^\d{4}-\d{2}-\d{2}\s\d{2}:\d{2}$/);
  });

  it('a changed field can be kept as another', async () => {
    const { page } = await bench.open('/');
    await fillFields(page, HONEST);
    await answered(page);
    await page.getByRole('button', { name: KEEP }).click();
    await waitForFindings(page);
    const before = (await bench.store.trials()).length;
    await page.goBack();
    await page.locator('.kept-as').waitFor();
    await page.getByLabel('Mass of the bare conductor').fill('90 g');
    await page.getByRole('button', { name: KEEP }).click();
    await waitForFindings(page);
    expect((await bench.store.trials()).length).toBe(before + 1);
  });

  it('what was typed outlives a reload, and going away and coming back', async () => {
    const { page } = await bench.open('/');
    await fillFields(page, HONEST);
    await answered(page);
    await page.reload();
    await answered(page);
    for (const [label, text] of Object.entries(HONEST)) {
      expect(await page.getByLabel(label, { exact: false }).inputValue()).toBe(text);
    }
    expect(await page.locator('.six .answer .key').textContent()).toContain('meets');
    await page.goto(`${bench.address}/phones`);
    await page.goBack();
    await answered(page);
    expect(await page.getByLabel('Mass of the bare conductor').inputValue()).toBe('95.6 g');
    await page.getByRole('button', { name: 'Empty all six' }).click();
    await page.reload();
    await page.waitForSelector('h1');
    expect(await page.getByLabel('Mass of the bare conductor').inputValue()).toBe('');
  });
});
