import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { compareJson } from '../../src/edge/cli/firstDifference.ts';
import { findingsOf } from '../../src/findings/findings.ts';
import { fold } from '../../src/trial/fold.ts';
import { type Bench, startBench } from './support/bench.ts';
import { waitForDraws, waitForFindings } from './support/findings.ts';

let bench: Bench;
const INSIDE = '/trial/fenwater-2-awg/inside';

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('inside a trial', () => {
  it('shows the six cables with their outcomes, and the control piece apart', async () => {
    const { page, troubles } = await bench.open(INSIDE);
    await waitForFindings(page);
    expect(await page.locator('.cables > tbody > tr').count()).toBe(6);
    expect(await page.locator('.faces li').count()).toBe(6);
    for (const outcome of await page.locator('.faces .outcome').allInnerTexts()) {
      expect(outcome).toMatch(/^(meets|falls short|not settled)/);
    }
    expect(await page.locator('.control').textContent()).toContain('House wire');
    expect(await page.locator('.cables').textContent()).not.toContain('House wire');
    expect(troubles).toEqual([]);
  });

  it('holds the figures against random draws, which can be stopped and taken up again', async () => {
    const { page } = await bench.open(INSIDE, { draws: true });
    await waitForFindings(page);
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText(/not yet held against random draws/).waitFor();
    await page.getByRole('button', { name: 'Go on' }).click();
    await waitForDraws(page);
    expect(await page.locator('.held').textContent()).toMatch(/held against [\d\u202f]+ random draws/);
  });

  it('opens and closes a sheet by keyboard, and keeps it through a reload', async () => {
    const { page } = await bench.open(INSIDE);
    await waitForFindings(page);
    const turn = page.getByRole('button', { name: /Quill/ });
    await turn.focus();
    await page.keyboard.press('Enter');
    expect(await turn.getAttribute('aria-expanded')).toBe('true');
    await page.getByText('Where the limits come from').waitFor();
    expect(page.url()).toMatch(/#quill$/);
    await page.reload();
    await waitForFindings(page);
    expect(await page.getByRole('button', { name: /Quill/ }).getAttribute('aria-expanded')).toBe('true');
    await page.getByRole('button', { name: /Quill/ }).focus();
    await page.keyboard.press('Space');
    await page.locator('.sheet').waitFor({ state: 'detached' });
  });

  it('goes back to the shelf and forth again', async () => {
    const { page } = await bench.open('/');
    await page.getByRole('link', { name: /Six 2 AWG/ }).click();
    await waitForFindings(page);
    await page.goBack();
    await page.getByRole('heading', { name: 'One cable, six fields' }).waitFor();
    await page.goForward();
    await waitForFindings(page);
    expect(new URL(page.url()).pathname).toBe(INSIDE);
  });

  it('shows other units without a new reading, and remembers them', async () => {
    const { page } = await bench.open(INSIDE);
    await waitForFindings(page);
    const wall = page.locator('.cables > tbody > tr').first().locator('td').nth(8);
    const inMillimetres = (await wall.textContent()) ?? '';
    await page.getByLabel('inches').check();
    const inInches = (await wall.textContent()) ?? '';
    expect(Number.parseFloat(inMillimetres)).toBeCloseTo(25.4 * Number.parseFloat(inInches), 0);
    await page.reload();
    await waitForFindings(page);
    expect(await wall.textContent()).toBe(inInches);
    expect(await page.getByLabel('inches').isChecked()).toBe(true);
  });

  it('puts two cables side by side', async () => {
    const { page } = await bench.open(`${INSIDE}#brackenfell`);
    await waitForFindings(page);
    const choice = page.getByLabel('Put beside another cable');
    await choice.selectOption('saltmarsh');
    await page.getByText(/more metal than/).waitFor();
  });

  it('hands out the data as a .zip with its findings', async () => {
    const { page } = await bench.open(INSIDE, { draws: true });
    await waitForDraws(page);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the data as .zip' }).click(),
    ]);
    const files = unzipSync(readFileSync(await download.path()));
    expect(Object.keys(files).sort()).toContain('readings.csv');
    const published = JSON.parse(new TextDecoder().decode(files['findings.json']));
    expect(published.trial).toBe('fenwater-2-awg');
    // Another engine computes them again: what the browser published must verify anywhere.
    const entries = await bench.store.entries('fenwater-2-awg');
    const again = findingsOf(fold(entries), { draws: 'auto' });
    const compared = compareJson({ ...published, engine: null }, { ...again, engine: null }, 1e-9);
    expect([compared.first, compared.firstFigure]).toEqual([null, null]);
  });

  it('begins at the top of the page on a phone, and at the sheet that the address names', async () => {
    const { page } = await bench.open(INSIDE, { width: 390, height: 844 });
    await waitForFindings(page);
    expect(await page.evaluate(() => scrollY)).toBe(0);
    const { page: sent } = await bench.open(`${INSIDE}#quill`, { width: 390, height: 844 });
    await waitForFindings(sent);
    await sent.waitForFunction(() => scrollY > 0);
  });

  it('answers an unknown trial with a sentence', async () => {
    const { page } = await bench.open('/trial/nobody/inside');
    await page.getByRole('heading', { name: 'No trial called “nobody” is on this shelf.' }).waitFor();
    await page.getByRole('link', { name: 'Back to the shelf' }).click();
    await page.getByRole('heading', { name: 'One cable, six fields' }).waitFor();
  });
});
