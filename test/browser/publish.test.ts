import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { sealRow } from '../../src/report/publish/seal.ts';
import { piecesToWear } from './support/abuseTrial.ts';
import { storedBodies } from './support/atBench.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { said } from './support/benchTrial.ts';

const DEMO = '/trial/fenwater-2-awg/publish';
const RUDE = ['<b>Rudge</b> & Pawl', '“‮drawkcab” ⚡', `Endless${'-jacket'.repeat(20)}`, '=cmd()'];

let bench: Bench;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('Publish with the invented trial', () => {
  it('seals what was chosen, shows it as it will look, and hands over report, cards and data', async () => {
    const { page, troubles } = await bench.open(DEMO);
    await page.locator('.card-frame svg').waitFor({ timeout: 120_000 });
    expect(await page.locator('h1').first().textContent()).toMatch(/^Two parts are sealed/);
    for (const place of ['bend', 'jacket', 'amps', 'standing']) await page.locator(`#part-${place}`).uncheck();
    await page.getByLabel('Title as readers see it').fill('Inside, once more');
    await page.getByRole('button', { name: 'Seal this part' }).click();
    await page
      .getByText('Computed again just now: the same rows and the same digits.')
      .nth(2)
      .waitFor({ timeout: 60_000 });
    const sealed = (await storedBodies(bench.store, 'fenwater-2-awg', 'seal', 3)).at(-1);
    expect(sealed).toMatchObject({ part: '3', title: 'Inside, once more', places: 'inside', hidden: 'no' });

    await page.getByLabel('Part', { exact: true }).selectOption('3');
    const paper = page.locator('.report-preview .paper');
    await page.getByText(/^Part 3: Inside, once more · sealed/).waitFor({ timeout: 60_000 });
    expect(await paper.locator('h1').textContent()).toMatch(/^Six 2\sAWG battery cables/);
    expect(await paper.locator('#bend').count()).toBe(0);
    for (const [name, file] of [
      ['Save as a web page', /-part-3\.html$/],
      ['PDF, A4', /-part-3\.pdf$/],
      ['Save as PNG', /\.png$/],
      ['Save as SVG', /\.svg$/],
      ['Save the data package', /\.zip$/],
    ] as const) {
      const [came] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name, exact: true }).click(),
      ]);
      expect(came.suggestedFilename()).toMatch(file);
    }

    await page.getByLabel('Card', { exact: true }).selectOption('two');
    await page.getByLabel('Second cable').selectOption({ label: 'Quill' });
    expect(await page.locator('.card-frame').textContent()).toContain('Quill');
    await page.getByLabel('Size', { exact: true }).selectOption('1080x1920');
    await page.getByLabel('Leave the ground out').check();
    expect(await page.locator('.card-frame.see-through svg').getAttribute('viewBox')).toBe('0 0 1080 1920');

    await page.getByLabel('Most characters').fill('300');
    const text = await page.getByLabel('The text').inputValue();
    expect(text.length).toBeLessThanOrEqual(300);
    expect(await page.locator('.counter').textContent()).toBe(
      `${[...text].length} of 300 characters. ${/(\d+) lines/.exec((await page.locator('.counter').textContent())!)![1]} lines do not fit.`,
    );
    await page.getByRole('button', { name: 'Keep it from readers' }).last().click();
    await page.getByText('kept from readers').waitFor();
    expect(troubles).toEqual([]);
  });

  it.each([
    [1440, 'light'],
    [390, 'dark'],
  ] as const)('can be read by everybody at %d px, %s', async (width, colorScheme) => {
    const { page } = await bench.open(DEMO, { width, colorScheme });
    await page.locator('.card-frame svg').waitFor({ timeout: 120_000 });
    for (const fold of await page.locator('main details > summary').all()) await fold.click();
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(await page.evaluate((w) => document.documentElement.scrollWidth - w, width)).toBeLessThanOrEqual(0);
  });
});

/** Presses a button and answers the file that comes of it. */
async function fileFrom(page: Page, button: string): Promise<Buffer> {
  const [came] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return readFileSync(await came.path());
}

/** Mean difference of two pictures of one size, as a share of the whole range. */
function apart(a: PNG, b: PNG): number {
  let sum = 0;
  for (let at = 0; at < a.data.length; at++) sum += Math.abs(a.data[at]! - b.data[at]!);
  return sum / a.data.length / 255;
}

describe('Publish while the bench computer is away', () => {
  it('makes the web page and the cards here, with their fonts, and says what only the bench computer makes', async () => {
    const { page, context } = await bench.open(DEMO);
    await page.locator('.card-frame svg').waitFor({ timeout: 120_000 });
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const byBench = PNG.sync.read(await fileFrom(page, 'Save as PNG'));
    await context.setOffline(true);
    const here = PNG.sync.read(await fileFrom(page, 'Save as PNG'));
    expect([here.width, here.height]).toEqual([1920, 1080]);
    // Two programs round the edges of letters in two ways, which makes 0.0012; with another font it is 0.013.
    expect(apart(here, byBench)).toBeLessThan(0.004);
    const blank = new PNG({ width: 1920, height: 1080 });
    blank.data.fill(Buffer.from(here.data.subarray(0, 4)));
    expect(apart(blank, byBench)).toBeGreaterThan(0.02);

    await page.getByLabel('Leave the ground out').check();
    await page.getByLabel('Size', { exact: true }).selectOption('1080x1080');
    const clear = PNG.sync.read(await fileFrom(page, 'Save as PNG'));
    expect([clear.width, clear.height, clear.data[3]]).toEqual([1080, 1080, 0]);

    const html = (await fileFrom(page, 'Save as a web page')).toString('utf8');
    expect(html).toMatch(/^<!DOCTYPE html>/);
    expect(html.match(/@font-face/g)).toHaveLength(5);
    expect(html).not.toMatch(/<(script|link|img)[^>]*(src|href)=/);
    const shown = await page.locator('.publish-report .paper').innerHTML();
    const opened = await context.newPage();
    await opened.setContent(html);
    expect(await opened.locator('main').innerText()).toContain(
      await page.locator('.publish-report .paper h1').innerText(),
    );
    expect(await opened.locator('section').count()).toBe((shown.match(/<section/g) ?? []).length);
    await opened.close();

    await page.getByRole('button', { name: 'PDF, A4', exact: true }).click();
    await page.getByText(/The bench computer makes this file, and it does not answer now/).waitFor();
    await context.setOffline(false);
  });
});

describe('Publish for a device that only reads', () => {
  it('shows sealed parts, and offers nothing that it may not do', async () => {
    const { page, troubles } = await bench.open('/', { plain: true });
    await page.route('**/api/me', (route) => route.fulfill({ json: { role: 'reader', device: null } }));
    await page.goto(`${bench.address}${DEMO}`);
    await page.getByText(/^Part \d: .* · sealed/).waitFor({ timeout: 120_000 });
    const buttons = await page.locator('main button').allTextContents();
    expect(buttons).toContain('Save as a web page');
    expect(buttons.filter((words) => /Seal|Keep it|readers|Draft/.test(words))).toEqual([]);
    expect(await page.getByLabel('Part', { exact: true }).locator('option').allTextContents()).not.toContain(
      'A draft, not sealed',
    );
    expect(troubles).toEqual([]);
  });
});

describe('answering a maker, and filming', () => {
  it('shows one cable, keeps the reply, and prints it from then on', async () => {
    await bench.store.append('answer', piecesToWear('answer', ['Alder', 'Zinnober']));
    const { page, troubles } = await bench.open('/trial/answer/publish');
    await page.locator('.maker').waitFor({ timeout: 60_000 });
    await page.getByText('Look at the draft').click();
    const draft = page.locator('.maker .paper');
    expect(await draft.textContent()).toContain('Alder');
    expect(await draft.textContent()).not.toContain('Zinnober');
    expect(await page.locator('.objections dt').count()).toBe(8);
    await page.getByLabel('Waiting for a reply until').fill('2026-12-20');
    await page.getByLabel('The reply, word for word').fill('<i>Ours</i> is thicker now.');
    await page.locator('.reply').getByRole('button', { name: 'Keep it' }).click();
    const [reply] = await storedBodies(bench.store, 'answer', 'reply', 1);
    expect(reply).toMatchObject({ cable: 'c0', deadline: '2026-12-20', reply_text: '<i>Ours</i> is thicker now.' });
    await page.locator('.publish-report .paper blockquote', { hasText: '<i>Ours</i> is thicker now.' }).waitFor();
    expect(troubles).toEqual([]);
  });

  it.each([
    ['film', 1440, 'light'],
    ['film-key', 1440, 'dark'],
    ['film-clear', 390, 'light'],
  ] as const)('follows the bench on a second screen: %s', async (ground, width, colorScheme) => {
    const trial = `film-${ground}`;
    await bench.store.append(trial, piecesToWear(trial, RUDE));
    const { page, troubles } = await bench.open(`/trial/${trial}/publish#${ground}`, { width, colorScheme });
    await page.getByText('Nothing has been read yet.').waitFor({ timeout: 60_000 });
    const row = { reading: 'r1', specimen: 'c1-a', quantity: 'conductor_mass', value: '95.6', unit: 'g' };
    await bench.store.append(trial, [said(trial, 'reading', row, 500)]);
    await page.locator('.film-value', { hasText: /^95\.6\sg$/ }).waitFor({ timeout: 30_000 });
    const high = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    if (width > 1000) expect(high, 'filmed without a scroll bar').toBeLessThanOrEqual(0);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(
      { film: 'rgb(229, 232, 229)', 'film-key': 'rgb(0, 177, 64)', 'film-clear': 'rgba(0, 0, 0, 0)' }[ground],
    );
    expect(await page.evaluate((w) => document.documentElement.scrollWidth - w, width)).toBeLessThanOrEqual(0);
    if (ground === 'film') expect(await accessibilityBreaches(page)).toEqual([]);
    expect(troubles).toEqual([]);
  });
});

it('shows hostile names as text, in preview, cards and words', async () => {
  await bench.store.append('rude', piecesToWear('rude', RUDE));
  const { page, troubles } = await bench.open('/trial/rude/publish', { width: 390 });
  await page.locator('.card-frame svg').waitFor({ timeout: 60_000 });
  expect(await page.locator('.report-preview .paper').textContent()).toContain(RUDE[0]);
  expect(await page.locator('.report-preview .paper b', { hasText: 'Rudge' }).count()).toBe(0);
  expect(await page.locator('.card-frame').textContent()).toContain('Rudge');
  expect(await page.getByLabel('The text').inputValue()).toContain(RUDE[0]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - 390)).toBeLessThanOrEqual(0);
  expect(troubles).toEqual([]);
});

it('breaks the name of a part that is one long word, and pushes nothing sideways', async () => {
  const long = 'p'.repeat(200);
  const entries = piecesToWear('longpart', ['Rudge', 'Pawl']);
  const asked = {
    part: '1',
    title: '',
    places: ['inside' as const],
    level: 0.95,
    draws: 0,
    hidden: false,
    at: '2026-10-04T10:00:00Z',
    by: '',
  };
  const row = { ...sealRow(entries, asked), part: long };
  await bench.store.append('longpart', [...entries, said('longpart', 'seal', row, 500)]);
  const { page, troubles } = await bench.open('/trial/longpart/publish', { width: 390 });
  await page.locator('.card-frame svg').waitFor({ timeout: 60_000 });
  await page.getByLabel('Part', { exact: true }).selectOption(long);
  await page.locator('.publish-report > .note', { hasText: long }).waitFor({ timeout: 60_000 });
  const html = (await fileFrom(page, 'Save as a web page')).toString();
  const saved = await page.context().newPage();
  await saved.setContent(html);
  for (const width of [390, 1440]) {
    for (const each of [page, saved]) {
      await each.setViewportSize({ width, height: 1000 });
      expect(await each.evaluate((w) => document.documentElement.scrollWidth - w, width)).toBeLessThanOrEqual(0);
    }
    expect((await saved.locator('.wordmark').boundingBox())!.height).toBeLessThan(40);
  }
  expect(troubles).toEqual([]);
});
