import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { freshBench, storedBodies, waitForAllThere, waitForDone } from './support/atBench.ts';
import { type Bench, startBench } from './support/bench.ts';
import { READS } from './support/benchTrial.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const atBench = (codes?: readonly string[], repeats?: number) => freshBench(bench, codes, repeats);
const stored = (trial: string, kind: string, count: number) => storedBodies(bench.store, trial, kind, count);
const type = (page: Page, text: string) => page.keyboard.type(text);

describe('putting right', () => {
  it('asks about a far-off reading without stopping, and replaces it when it is measured again', async () => {
    const { page, trial } = await atBench(['KR'], 3);
    await type(page, '1.02');
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await type(page, '10.2');
    await page.keyboard.press('Enter');
    await waitForDone(page, 2);
    await page
      .getByText(/about ten times the reading before/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Measure again' }).click();
    await page.getByText('In place of 10.2 mΩ').waitFor();
    await page.locator('#bench-value').fill('1.02');
    await page.locator('#bench-value').press('Enter');
    const rows = await stored(trial, 'reading', 3);
    expect(rows[2]).toMatchObject({ replaces: rows[1]!.reading, why: 'measured again', value: '1.02' });
    await waitForDone(page, 2);
  });

  it('strikes out by one key, with a reason and not without', async () => {
    const { page, trial } = await atBench();
    await type(page, '1.02');
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await page.keyboard.press('s');
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Strike out' }).click();
    await dialog.getByText(/Found no reason/).waitFor();
    await dialog.getByLabel('The reason in your words').fill('clips touched');
    await page.keyboard.press('Enter');
    await waitForDone(page, 0);
    const [reading] = await stored(trial, 'reading', 1);
    expect(await stored(trial, 'strike', 1)).toMatchObject([{ reading: reading!.reading, why: 'clips touched' }]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('bench-value');
  });

  it('undoes the last reading, which stays on record', async () => {
    const { page, trial } = await atBench();
    const before = await page.locator('.in-hand').textContent();
    await type(page, '1.02');
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await page.keyboard.press('u');
    await waitForDone(page, 0);
    expect(await page.locator('.in-hand').textContent()).toBe(before);
    expect(await stored(trial, 'strike', 1)).toMatchObject([{ why: 'undone' }]);
    expect(await page.locator('.repeats s').textContent()).toBe('1.02');
  });

  it('repairs two swapped pieces in one act', async () => {
    const { page, trial } = await atBench();
    const first = (await page.locator('.in-hand .sign').textContent()) ?? '';
    await type(page, '1.011');
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await type(page, '1.044');
    await page.keyboard.press('Enter');
    await waitForDone(page, 2);
    await page.getByRole('button', { name: 'Pieces were mixed up' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('One piece').selectOption({ label: 'KR, whole length' });
    await dialog.getByLabel('The other piece').selectOption({ label: 'VN, whole length' });
    await dialog.getByLabel('How you know').fill('tags were on the wrong hooks');
    await dialog.getByRole('button', { name: 'Put it right' }).click();
    await dialog.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /^Resistance/ }).click();
    const of = (sign: string) => page.locator('.fellows > ul > li', { hasText: sign }).locator('ol').textContent();
    await expect.poll(() => of(first)).toBe('1.044');
    expect(await stored(trial, 'retag', 1)).toMatchObject([{ kind: 'swap', why: 'tags were on the wrong hooks' }]);
    expect((await stored(trial, 'reading', 2)).map((row) => row.value)).toEqual(['1.011', '1.044']);
  });
});

describe('the order of work', () => {
  it('goes forth and back by arrow, puts off, and goes piece by piece when that is chosen', async () => {
    const { page, trial } = await atBench();
    const inHand = () => page.locator('.in-hand h1').textContent();
    const first = await inHand();
    await page.keyboard.press('ArrowDown');
    const second = await inHand();
    expect(second).not.toBe(first);
    await page.keyboard.press('ArrowUp');
    expect(await inHand()).toBe(first);
    await page.keyboard.press('l');
    expect(await inHand()).toBe(second);
    await page.getByLabel('piece by piece').check();
    await page.getByRole('heading', { name: 'Piece by piece' }).waitFor();
    expect(await stored(trial, 'setting', 3)).toContainEqual({ setting: 'working', value: 'by specimen' });
  });

  it('takes up any quantity on any piece', async () => {
    const { page, trial } = await atBench();
    await page.keyboard.press('g');
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Piece').selectOption('cable-2-apart');
    await dialog.getByLabel('Quantity').selectOption('strand_count');
    await dialog.getByRole('button', { name: 'Take it up' }).click();
    await page.getByRole('heading', { name: 'VN Number of strands' }).waitFor();
    await type(page, '665');
    await page.keyboard.press('Enter');
    const [row] = await stored(trial, 'reading', 1);
    expect(row).toMatchObject({ specimen: 'cable-2-apart', quantity: 'strand_count', value: '665' });
    expect(row).not.toHaveProperty('unit');
  });

  it('shows codes only while the trial is blind, until somebody reveals the names', async () => {
    const { page, trial } = await atBench();
    expect(await page.locator('#page').textContent()).toContain('Maker');
    await page.getByRole('button', { name: 'Judge blind' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hide the names' }).click();
    await page.getByText(/This trial goes by codes/).waitFor();
    expect(await page.locator('#page').innerHTML()).not.toMatch(/Maker|cable-\d/);
    // The codes that were seen beside the names are void: each piece has a new one.
    const codes = page.locator('.fellows .sign');
    await expect.poll(() => codes.allTextContents()).not.toContain('KR');
    const code = (await codes.first().textContent()) ?? '';
    await page.getByRole('link', { name: /^Inside/ }).click();
    await page.locator('.cables', { hasText: code }).waitFor();
    expect(await page.locator('#page').innerHTML()).not.toMatch(/Maker|cable-\d/);
    await page.goBack();
    await page.getByRole('button', { name: 'Reveal the names' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Reveal', exact: true }).click();
    await page.getByRole('button', { name: 'Judge blind' }).waitFor();
    expect((await stored(trial, 'blinding', 2)).map((row) => row.act)).toEqual(['blind', 'reveal']);
  });
});

describe('notes and photos', () => {
  const HOSTILE = '<img src=x onerror="document.title=\'gone\'"> \u202Eabc & "so"';
  /** The smallest PNG: one grey pixel. */
  const PNG = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
    'base64',
  );

  it('keeps any text as text', async () => {
    const { page, trial, troubles } = await atBench();
    await page.keyboard.press('n');
    await page.getByRole('dialog').getByLabel('What you saw').fill(HOSTILE);
    await page.getByRole('dialog').getByRole('button', { name: 'Keep the note' }).click();
    expect(await stored(trial, 'note', 1)).toMatchObject([{ about: 'specimen', text: HOSTILE }]);
    await page.getByRole('link', { name: 'History' }).click();
    await page.locator('.journal', { hasText: 'onerror' }).waitFor();
    expect(await page.locator('.journal img').count()).toBe(0);
    expect(await page.title()).not.toBe('gone');
    expect(troubles).toEqual([]);
  });

  it('keeps a photo without a network and hands it over afterwards, as a proof shot', async () => {
    const { page, context, trial } = await atBench(['KR']);
    await context.setOffline(true);
    await page.getByText('Proof shots').click();
    await page
      .getByLabel('Photo of the receipt of Maker 1')
      .setInputFiles({ name: 'receipt.png', mimeType: 'image/png', buffer: PNG });
    await page.getByText('1 waits in this browser').waitFor();
    await page.getByText('4 missing').waitFor();
    expect(await bench.store.blobNames(trial)).toEqual([]);
    await context.setOffline(false);
    await waitForAllThere(page);
    await expect.poll(() => bench.store.blobNames(trial)).toHaveLength(1);
    const [note] = await stored(trial, 'note', 1);
    expect(note).toMatchObject({ about: 'cable', which: 'cable-1', shot: 'receipt' });
    expect(await bench.store.blobNames(trial)).toEqual([note!.photo]);
    expect(await bench.store.getBlob(trial, note!.photo!)).toEqual(new Uint8Array(PNG));
  });
});

describe('filming', () => {
  it('gives each reading its place in the recording once the camera runs', async () => {
    const { page, trial } = await atBench();
    await page.getByText('This bench').click();
    await page.getByRole('link', { name: 'Slate for the camera' }).click();
    await page.locator('.slate svg').waitFor();
    await page.getByRole('button', { name: 'The camera runs' }).click();
    await page.getByRole('link', { name: 'Back to the bench' }).click();
    await page.locator('#bench-value').waitFor();
    await type(page, READS.resistance![0]);
    await page.keyboard.press('Enter');
    const [row] = await stored(trial, 'reading', 1);
    expect(row!.footage).toBe('take 1');
    expect(row!.timecode).toMatch(/^\d\d:\d\d$/);
  });
});
