import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { freshBench, freshTrial, storedBodies, valueInHand, waitForAllThere, waitForDone } from './support/atBench.ts';
import { type Bench, startBench } from './support/bench.ts';
import { said } from './support/benchTrial.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const atBench = (codes: readonly string[] = ['KR'], repeats = 1) => freshBench(bench, codes, repeats);
const stored = (trial: string, kind: string, count: number) => storedBodies(bench.store, trial, kind, count);

async function enter(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Takes up a quantity on a piece by the dialog. */
async function takeUp(page: Page, piece: string, quantity: string): Promise<void> {
  await page.keyboard.press('g');
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Piece').selectOption(piece);
  await dialog.getByLabel('Quantity').selectOption(quantity);
  await dialog.getByRole('button', { name: 'Take it up' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.waitForFunction(() => document.activeElement?.id === 'bench-value');
}

describe('what is refused', () => {
  it('is replaced whole by what a tool types next, and never goes to another quantity', async () => {
    const { page, trial } = await atBench();
    const field = page.locator('#bench-value');
    await page.getByLabel('Between the voltage contacts, mm').fill('two feet or so');
    await field.focus();
    await enter(page, '48');
    await page.locator('#bench-trouble', { hasText: 'Between the contacts: found' }).waitFor();
    expect(await field.inputValue()).toBe('48');
    await page.getByLabel('Between the voltage contacts, mm').fill('1900');
    await page.keyboard.press('Enter');
    await enter(page, '48.5');
    expect(await stored(trial, 'reading', 1)).toMatchObject([{ value: '48.5', at_length: '1900' }]);
    await enter(page, '4..8');
    await page.locator('#bench-trouble').waitFor();
    await page.keyboard.press('ArrowDown');
    expect(await field.inputValue()).toBe('');
    expect(await page.locator('#bench-trouble').count()).toBe(0);
  });

  it('is replaced by the keypad too', async () => {
    const { page, trial } = await atBench();
    await page.setViewportSize({ width: 390, height: 844 });
    const key = (name: RegExp) => page.locator('.keypad .keys').getByRole('button', { name }).click();
    for (const name of [/^\./, /^\./, /^4$/, /^Record/]) await key(name);
    await page.locator('#bench-trouble').waitFor();
    for (const name of [/^1$/, /^\./, /^0$/, /^2$/, /^Record/]) await key(name);
    expect(await stored(trial, 'reading', 1)).toMatchObject([{ value: '1.02' }]);
  });

  it('is seen from its beginning, however long it is', async () => {
    const { page } = await atBench();
    await page.keyboard.type('1234567890.12345');
    const field = page.locator('#bench-value');
    expect(await field.evaluate((input) => input.scrollWidth <= input.clientWidth + 1)).toBe(true);
  });
});

describe('the dialog that strikes out', () => {
  it('tells readings of one value apart, and keeps its buttons in sight on a phone', async () => {
    const trial = await freshTrial(bench, ['KR'], 3);
    const { page } = await bench.open(`/trial/${trial}/bench`, { width: 390, height: 640 });
    await page.locator('#bench-value').waitFor();
    for (const count of [1, 2, 3]) {
      await enter(page, await valueInHand(page));
      await waitForDone(page, count);
    }
    await page.getByRole('button', { name: 'Strike out' }).first().click();
    const dialog = page.getByRole('dialog');
    const lines = await dialog.locator('.choice-list.long label').allInnerTexts();
    expect(lines).toHaveLength(3);
    expect(new Set(lines).size).toBe(3);
    expect(lines[0]).toMatch(/reading 3 of 3, \d+ \w+, \d\d:\d\d$/);
    for (const name of ['Strike out', 'Leave it']) {
      const box = await dialog.getByRole('button', { name }).boundingBox();
      expect(box!.y + box!.height).toBeLessThan(640 - 16);
    }
  });
});

describe('questions', () => {
  it('stay listed and counted until they are answered, and are asked of a first reading', async () => {
    const { page, trial } = await atBench(['KR', 'VN']);
    await takeUp(page, 'cable-1-apart', 'specimen_mass');
    await enter(page, '5000 kg');
    await page.getByText('1 question open').waitFor();
    await takeUp(page, 'cable-2-apart', 'specimen_mass');
    await enter(page, '121.4');
    await page.getByText('1 question is still open').click();
    await page.locator('.open-questions').getByText('5000 kg').first().waitFor();
    await page.reload();
    await page.getByText('1 question is still open').click();
    await page.locator('.open-questions').getByRole('button', { name: 'Strike out, with a reason' }).click();
    const dialog = page.getByRole('dialog');
    expect(await dialog.getByRole('radio', { checked: true }).first().locator('xpath=..').textContent()).toContain(
      '5000 kg',
    );
    await dialog.getByLabel('wrong unit').check();
    await dialog.getByRole('button', { name: 'Strike out' }).click();
    await dialog.waitFor({ state: 'detached' });
    expect(await page.locator('.open-questions').count()).toBe(0);
    expect((await stored(trial, 'reading', 2))[0]).toMatchObject({ value: '5000', unit: 'kg' });
  });

  it('are there for whoever opens the trial elsewhere, and answered for everybody', async () => {
    const { page, trial } = await atBench(['KR', 'VN']);
    await takeUp(page, 'cable-1-apart', 'specimen_mass');
    await enter(page, '5000 kg');
    await page.getByText('1 question open').waitFor();
    await waitForAllThere(page);
    const other = await bench.open(`/trial/${trial}/bench`, { width: 390, height: 844 });
    await other.page.getByText('1 question is still open').click();
    const asked = other.page.locator('.open-questions .question');
    await asked.getByText('5000 kg').first().waitFor();
    await asked.getByRole('button', { name: 'Keep it' }).click();
    await asked.waitFor({ state: 'detached' });
    const [reading] = await stored(trial, 'reading', 1);
    expect(await stored(trial, 'note', 1)).toMatchObject([{ about: 'reading', which: reading!.reading }]);
    expect((await stored(trial, 'note', 1))[0]!.answers).not.toBe('');
    await page.getByText('1 question open').waitFor({ state: 'detached' });
    expect(await page.locator('.question').count()).toBe(0);
    expect(other.troubles).toEqual([]);
  });

  it('about ohms without the contact distance are answered by adding it, also in feet and inches', async () => {
    const { page, trial } = await atBench(['KR'], 2);
    for (const value of ['0.88', '0.881']) await enter(page, value);
    await waitForDone(page, 2);
    const lacking = page.getByRole('region', { name: 'The contacts of KR' });
    await lacking.getByText('2 readings without the distance').waitFor();
    await page.getByText('the ohms count once the distance').first().waitFor();
    await lacking.getByLabel('Distance, mm').fill('5 ft 6 in');
    await lacking.getByRole('button', { name: 'Add it' }).click();
    await lacking.waitFor({ state: 'detached' });
    const rows = await stored(trial, 'reading', 4);
    expect(rows[2]).toMatchObject({ value: '0.88', at_length: '5 ft 6 in', replaces: rows[0]!.reading });
    await waitForDone(page, 2);
    await page.locator('.area-so-far', { hasText: 'mm²' }).waitFor();
  });

  it('about the contact distance can be left unanswered for good', async () => {
    const { page, trial } = await atBench();
    await enter(page, '1.02');
    const lacking = page.getByRole('region', { name: 'The contacts of KR' });
    await lacking.getByRole('button', { name: 'I do not know' }).click();
    await lacking.waitFor({ state: 'detached' });
    expect(await stored(trial, 'note', 1)).toMatchObject([{ about: 'reading' }]);
  });
});

describe('a contact distance', () => {
  it('is told as wrong at its field once the field is left', async () => {
    const { page } = await atBench();
    const contacts = page.getByLabel('Between the voltage contacts, mm');
    await contacts.fill('5 ft 6 in');
    await page.getByText('1676 mm').waitFor();
    await contacts.fill('about five feet');
    expect(await page.locator('#bench-contacts-trouble').count()).toBe(0);
    await contacts.press('Escape');
    await page.locator('#bench-contacts-trouble').waitFor();
  });
});

describe('units', () => {
  it('follow the tool or the choice on this device, together for one act, and no other device', async () => {
    const { page, trial } = await atBench();
    const body = { reading: 'x1', specimen: 'cable-1-apart', quantity: 'overhang', value: '11', unit: 'in' };
    await bench.store.append(trial, [said(trial, 'reading', body, 6000)]);
    await page.reload();
    await page.locator('#bench-value').waitFor();
    await takeUp(page, 'cable-1-apart', 'overhang');
    const unit = page.getByLabel('Unit of what is typed');
    expect(await unit.inputValue()).toBe('mm');
    await unit.selectOption('in');
    await page.locator('#bench-value').focus();
    await takeUp(page, 'cable-1-apart', 'tip_drop');
    expect(await unit.inputValue()).toBe('in');
    await page.keyboard.type('40mm');
    expect(await page.locator('.typed-value .unit').textContent()).toBe('mm');
  });
});

describe('what was done', () => {
  it('stands in sight and is undone step by step', async () => {
    const { page, trial } = await atBench(['KR', 'VN']);
    await enter(page, '1.01');
    await waitForDone(page, 1);
    await enter(page, '1.04 mohm');
    await waitForDone(page, 2);
    await page.locator('.done-line', { hasText: /^Kept 1\.04 mΩ · / }).waitFor();
    await page.getByRole('button', { name: 'Pieces were mixed up' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('One piece').selectOption({ label: 'KR, whole length' });
    await dialog.getByLabel('The other piece').selectOption({ label: 'VN, whole length' });
    await dialog.getByLabel('How you know').fill('tags');
    await dialog.getByRole('button', { name: 'Put it right' }).click();
    await page.locator('.done-line', { hasText: 'KR and VN have changed places' }).waitFor();
    await page.getByRole('button', { name: /^Resistance/ }).click();
    // Looking elsewhere ends no sitting.
    await page.getByRole('link', { name: /^Inside/ }).click();
    await page.goBack();
    await page.locator('#bench-value').waitFor();
    await page.getByRole('button', { name: /^Resistance/ }).click();
    const before = await page.locator('.fellows > ul').textContent();
    await page.keyboard.press('u');
    await page.locator('.done-line', { hasText: 'have changed back' }).waitFor();
    expect(await page.locator('.fellows > ul').textContent()).not.toBe(before);
    await page.keyboard.press('u');
    await waitForDone(page, 1);
    await page.keyboard.press('u');
    await waitForDone(page, 0);
    expect(await stored(trial, 'strike', 2)).toHaveLength(2);
    expect(await stored(trial, 'retag', 2)).toHaveLength(2);
  });

  it('gives back what was struck out, and what a measuring again had replaced', async () => {
    const { page, trial } = await atBench(['KR'], 3);
    await enter(page, '1.02');
    await waitForDone(page, 1);
    await enter(page, '10.2');
    await page.getByRole('button', { name: 'Measure again' }).click();
    await enter(page, '1.03');
    await expect.poll(() => page.locator('.repeats s').count()).toBe(1);
    await page.keyboard.press('u');
    const counted = () => page.locator('.repeats .figure-typed').allTextContents();
    await expect.poll(counted).toEqual(['1.02', '10.2']);
    await page.keyboard.press('s');
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('clip or jaw slipped').check();
    await dialog.getByRole('button', { name: 'Strike out' }).click();
    await dialog.waitFor({ state: 'detached' });
    await expect.poll(async () => (await counted()).length).toBe(1);
    await page.keyboard.press('u');
    await expect.poll(counted).toEqual(['1.02', '10.2']);
    expect((await stored(trial, 'reading', 5)).at(-1)).toMatchObject({ why: 'not struck out after all' });
  });
});

describe('who records', () => {
  it('is asked once, and passed over by recording without a name', async () => {
    const trial = await freshTrial(bench, ['KR']);
    const { page } = await bench.open(`/trial/${trial}/bench`);
    await waitForAllThere(page);
    await page.getByLabel('Who records on this device?').fill('Ada');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.id === 'bench-value');
    await enter(page, '1.02');
    await waitForDone(page, 1);
    await waitForAllThere(page);
    expect((await bench.store.entries(trial)).at(-1)).toMatchObject({ by: 'Ada' });
    expect(await page.getByLabel('Who records on this device?').count()).toBe(0);
  });
});

describe('keys and dialogs', () => {
  it('reach the temperature, and a note opens on its text', async () => {
    const { page, trial } = await atBench();
    await page.keyboard.press('t');
    await page.keyboard.type('19.5');
    await page.keyboard.press('Enter');
    await enter(page, '1.02');
    expect(await stored(trial, 'reading', 1)).toMatchObject([{ temperature: '19.5', value: '1.02' }]);
    await page.keyboard.press('n');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.type('kinked near the tag');
    await page.getByRole('button', { name: 'Keep the note' }).click();
    expect(await stored(trial, 'note', 1)).toMatchObject([{ text: 'kinked near the tag' }]);
  });
});
