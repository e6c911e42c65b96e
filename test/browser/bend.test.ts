import { createHash } from 'node:crypto';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { storedBodies, waitForAllThere } from './support/atBench.ts';
import { accessibilityBreaches, breachesLightAndDark } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { piecesToBend, plainPhoto } from './support/bendTrial.ts';

const DEMO = '/trial/fenwater-2-awg/bend';
const RUDE = ['<b>Rudge</b> & Pawl', '“‮drawkcab” ⚡', `Endless${'-flexible'.repeat(20)}`];
const PHOTO = plainPhoto(1000, 700);
const SHA = createHash('sha256').update(PHOTO).digest('hex');

let bench: Bench;
let trials = 0;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

async function fresh(
  makers: readonly string[],
  more: readonly [string, Record<string, string>][] = [],
): Promise<string> {
  trials += 1;
  const trial = `bend${trials}`;
  await bench.store.append(trial, piecesToBend(trial, makers, more));
  return trial;
}

const waitForStrips = (page: Page) => page.locator('.bend-strips svg').first().waitFor({ timeout: 60_000 });
const tooWide = (page: Page, width: number) => page.evaluate((w) => document.documentElement.scrollWidth - w, width);

describe('Bend with the invented trial', () => {
  it('says the order, how it was judged, and opens a sheet by keyboard that the address names', async () => {
    const { page, troubles } = await bench.open(DEMO);
    await waitForStrips(page);
    expect(await page.locator('h1').textContent()).toContain('Nine Elms Cord bends most easily');
    expect(await page.locator('.place-lead').textContent()).toContain('judged in sleeves');
    const turn = page.getByRole('button', { name: 'Quill' });
    await turn.focus();
    await page.keyboard.press('Enter');
    await page.locator('.bend-sheet').waitFor();
    expect(new URL(page.url()).hash).toBe('#quill');
    expect(await page.locator('.bend-sheet svg').count()).toBeGreaterThanOrEqual(4);
    await page.goBack();
    await page.locator('.bend-sheet').waitFor({ state: 'detached' });
    await page.goForward();
    await page.reload();
    await page.locator('.bend-sheet').waitFor({ timeout: 60_000 });
    expect(troubles).toEqual([]);
  });

  it('keeps figures of statistics behind how we know', async () => {
    const { page } = await bench.open(DEMO);
    await waitForStrips(page);
    const shown = await page.locator('main').evaluate((main) => {
      const open = main.cloneNode(true) as HTMLElement;
      open.querySelector('.how')?.remove();
      return open.textContent;
    });
    expect(shown).toContain('Nine Elms');
    expect(shown).not.toMatch(/χ²|Kendall|Bradley|λ/);
    await page.locator('.how summary').click();
    expect(await page.locator('.how').textContent()).toMatch(/Kendall’s W[\s\S]*0\.79/);
  });

  it.each([1440, 390])('can be read by everybody at %d px, light and dark', async (width) => {
    const { page } = await bench.open(`${DEMO}#saltmarsh`, { width });
    await waitForStrips(page);
    await page.locator('.bend-sheet').waitFor();
    await page.locator('.how summary').click();
    expect(await breachesLightAndDark(page)).toEqual([]);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
  });
});

describe('Bend without anything to show', () => {
  it('says what to do next', async () => {
    const trial = await fresh(['Harrow', 'Sedge']);
    const { page } = await bench.open(`/trial/${trial}/bend`);
    await page.getByRole('heading', { name: 'Nothing about bending has been recorded yet.' }).waitFor();
    await page.getByRole('link', { name: 'Judge pairs' }).click();
    await page.getByRole('heading', { name: 'Which bends more easily?' }).waitFor();
    expect(new URL(page.url()).hash).toBe('#judge');
  });

  it('sends to the plan where no piece was cut to bend', async () => {
    const trial = await fresh(['Harrow']);
    const { page } = await bench.open(`/trial/${trial}/bend#judge`);
    await page.getByRole('heading', { name: 'Judging takes pieces of two cables.' }).waitFor();
    await page.getByRole('link', { name: 'To the plan' }).click();
    await page.waitForURL(/\/plan$/);
  });
});

describe('judging pairs', () => {
  it('goes by touch at 360 px, with every answer an entry of its own', async () => {
    const trial = await fresh(['Harrow', 'Sedge', 'Quill']);
    const context = await bench.browser.newContext({
      viewport: { width: 360, height: 640 },
      hasTouch: true,
      isMobile: true,
    });
    const page = await context.newPage();
    await page.goto(`${bench.address}/trial/${trial}/bend#judge`);
    await page.locator('.judge-pair').waitFor();
    expect(await tooWide(page, 360)).toBeLessThanOrEqual(0);
    expect(await page.locator('.judge-progress').textContent()).toContain('0 of 9');
    for (const answer of ['Left', 'Same', 'Right']) {
      const box = (await page.getByRole('button', { name: answer }).boundingBox())!;
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(72);
      expect(box.y + box.height).toBeLessThanOrEqual(640);
      await page.getByRole('button', { name: answer }).tap();
      await page
        .getByText(/^Kept: /)
        .first()
        .waitFor();
      const wanted = ['Left', 'Same', 'Right'].indexOf(answer) + 1;
      await page.locator('.judge-progress', { hasText: `${wanted} of 9` }).waitFor();
    }
    const rows = await storedBodies(bench.store, trial, 'judgement', 3);
    expect(rows.map((row) => row.result)).toEqual(['left', 'same', 'right']);
    expect(new Set(rows.map((row) => [row.left, row.right].sort().join()))).toEqual(
      new Set(['c0-b,c1-b', 'c0-b,c2-b', 'c1-b,c2-b']),
    );
    expect(rows.every((row) => row.blinded === 'open' && row.round === '1' && /^phone /.test(row.by!))).toBe(true);
    await context.close();
  });

  it('goes by keyboard, is taken back, and hides the names in sleeves', async () => {
    const trial = await fresh(['Harrow', 'Sedge']);
    const { page, troubles } = await bench.open(`/trial/${trial}/bend#judge`);
    await page.locator('.judge-pair').waitFor();
    expect(await page.locator('.judge-pair').textContent()).toContain('Harrow');
    await page.locator('.judge-settings summary').click();
    await page.getByLabel('Who judges, on this device').fill('first judge');
    await page.getByLabel('How the judge is kept from knowing').selectOption('sleeve');
    expect(await page.locator('.judge-pair').textContent()).not.toMatch(/Harrow|Sedge/);
    await page.locator('.judge-question').click();
    await page.keyboard.press('ArrowLeft');
    await page
      .getByText(/^Kept: .* bends more easily than/)
      .first()
      .waitFor();
    await page.keyboard.press('u');
    await page.getByRole('heading', { name: /^Once more/ }).waitFor();
    await page.keyboard.press(' ');
    await page
      .getByText(/bend alike/)
      .first()
      .waitFor();
    await page.keyboard.press('ArrowRight');
    const rows = await storedBodies(bench.store, trial, 'judgement', 3);
    expect(rows.map((row) => row.result)).toEqual(['left', 'same', 'right']);
    expect(await storedBodies(bench.store, trial, 'withdrawal', 1)).toMatchObject([
      { about: 'judgement', which: rows[0]!.judgement, act: 'put aside' },
    ]);
    expect(rows[1]).toMatchObject({ left: rows[0]!.left, right: rows[0]!.right, round: '1' });
    expect(rows[2]).toMatchObject({ by: 'first judge', blinded: 'sleeve', round: '2', left: rows[0]!.right });
    expect(await page.locator('.judge-progress').textContent()).toContain('2 of 3');
    expect(troubles).toEqual([]);
  });

  it('keeps the pair in hand when another phone answers, and counts its answer', async () => {
    const trial = await fresh(['Harrow', 'Sedge', 'Quill', 'Tollgate']);
    const [one, two] = [await bench.open(`/trial/${trial}/bend#judge`), await bench.open(`/trial/${trial}/bend#judge`)];
    await one.page.locator('.judge-pair').waitFor();
    await two.page.locator('.judge-pair').waitFor();
    await waitForAllThere(one.page);
    const held = await one.page.locator('.judge-pair').textContent();
    await two.page.keyboard.press('ArrowLeft');
    await one.page.locator('.judge-progress', { hasText: '1 of 18' }).waitFor();
    expect(await one.page.locator('.judge-pair').textContent()).toBe(held);
  });

  it('takes a pair of one’s own choice, and says why not one cable with itself', async () => {
    const trial = await fresh(['Harrow', 'Sedge', 'Quill']);
    const { page } = await bench.open(`/trial/${trial}/bend#judge`);
    await page.locator('.judge-choose summary').click();
    await page.getByLabel('Left hand').selectOption('c2-b');
    await page.getByLabel('Right hand').selectOption('c2-b');
    await page.getByRole('button', { name: 'Judge these two' }).click();
    await page.getByRole('alert').filter({ hasText: 'one cable' }).waitFor();
    await page.getByLabel('Right hand').selectOption('c0-b');
    await page.getByRole('button', { name: 'Judge these two' }).click();
    expect(await page.locator('.judge-pair .sign').allTextContents()).toEqual(['TL', 'KR']);
  });

  it.each([
    [1440, 'light'],
    [390, 'dark'],
  ] as const)('can be used by everybody at %d px, %s, whatever the cables are called', async (width, colorScheme) => {
    const trial = await fresh(RUDE);
    const { page, troubles } = await bench.open(`/trial/${trial}/bend#judge`, { width, colorScheme });
    await page.locator('.judge-pair').waitFor();
    for (const fold of await page.locator('.judging summary').all()) await fold.click();
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
    await page.locator('.judge-question').click();
    await page.keyboard.press('ArrowDown');
    await storedBodies(bench.store, trial, 'judgement', 1);
    await page.goto(`${bench.address}/trial/${trial}/bend`);
    await page.locator('.place-lead').waitFor({ timeout: 60_000 });
    expect(await page.locator('main b', { hasText: 'Rudge' }).count()).toBe(0);
    expect(await tooWide(page, width)).toBeLessThanOrEqual(0);
    expect(troubles).toEqual([]);
  });
});

describe('a droop in a photo', () => {
  const NOTE = { note: 'n-1', about: 'specimen', which: 'c0-b', photo: SHA, text: 'as laid' };

  async function openPhoto(width = 1440) {
    const trial = await fresh(['Harrow', 'Sedge'], [['note', NOTE]]);
    await bench.store.putBlob(trial, PHOTO);
    const opened = await bench.open(`/trial/${trial}/bend#photo:n-1`, { width });
    await opened.page.locator('.marked-photo').waitFor();
    const box = (await opened.page.locator('.marked-photo').boundingBox())!;
    const tap = (x: number, y: number) =>
      opened.page.mouse.click(box.x + (x / 1000) * box.width, box.y + (y / 700) * box.height);
    return { trial, box, tap, ...opened };
  }

  it('is marked by four taps, drawn over, and kept as readings', async () => {
    const { page, trial, tap, troubles } = await openPhoto();
    for (const [x, y] of [
      [100, 100],
      [660, 340],
      [100, 600],
      [900, 600],
    ] as const)
      await tap(x, y);
    await page.getByLabel('The known distance').fill('400 mm');
    await page.getByLabel('What hangs free, along the cable').fill('31.5 cm');
    await page.locator('.photo-found', { hasText: /^Drop (119|120)\.\d\s±/ }).waitFor();
    expect(await page.locator('.marked-photo path.stroke').count()).toBeGreaterThanOrEqual(7);
    await page.getByRole('button', { name: 'Keep these as readings' }).click();
    const rows = await storedBodies(bench.store, trial, 'reading', 2);
    expect(rows[0]).toMatchObject({ specimen: 'c0-b', quantity: 'overhang', value: '315', unit: 'mm' });
    expect(rows[1]).toMatchObject({
      specimen: 'c0-b',
      quantity: 'tip_drop',
      unit: 'mm',
      position: 'up',
      set: rows[0]!.set,
    });
    expect(Math.abs(Number(rows[1]!.value) - 120)).toBeLessThanOrEqual(1);
    expect(rows[1]!.note).toContain('read from the photo of note n-1');
    await page.getByRole('link', { name: 'Back to its sheet' }).click();
    await page.locator('.bend-sheet').waitFor({ timeout: 60_000 });
    expect(await page.locator('.bend-sheet').textContent()).toContain('The photo shows one way up only');
    expect(troubles).toEqual([]);
  });

  it('is marked by keyboard alone, and a mark can be dragged', async () => {
    const { page, tap, box } = await openPhoto();
    const mark = page.getByRole('button', { name: /^Tip, middle/ });
    await mark.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    expect(await mark.textContent()).toContain('at 501, 360');
    await page.getByRole('button', { name: /^Edge of the clamp/ }).click();
    await tap(100, 100);
    const at = (x: number, y: number) => [box.x + (x / 1000) * box.width, box.y + (y / 700) * box.height] as const;
    await page.mouse.move(...at(100, 100));
    await page.mouse.down();
    await page.mouse.move(...at(150, 130), { steps: 4 });
    await page.mouse.up();
    expect(await page.getByRole('button', { name: /^Edge of the clamp/ }).textContent()).toMatch(
      /at 1(49|50|51), 1(29|30|31)/,
    );
  });

  it('says what is wrong with marks that fit no droop', async () => {
    const { page, tap } = await openPhoto();
    for (const [x, y] of [
      [100, 100],
      [900, 340],
      [100, 600],
      [300, 600],
    ] as const)
      await tap(x, y);
    await page.getByLabel('The known distance').fill('300 mm');
    await page.getByLabel('What hangs free, along the cable').fill('320');
    await page.getByRole('alert').filter({ hasText: 'in a straight line, more than the 320 mm' }).waitFor();
    expect(await page.getByRole('button', { name: 'Keep these as readings' }).count()).toBe(0);
  });

  it('can be used by everybody on a phone, and is listed in the sheet', async () => {
    const { page } = await openPhoto(390);
    expect(await accessibilityBreaches(page)).toEqual([]);
    expect(await tooWide(page, 390)).toBeLessThanOrEqual(0);
  });

  it('is offered for marking once the bench has said that it shows a droop', async () => {
    const trial = await fresh(['Harrow', 'Sedge']);
    const { page, troubles } = await bench.open(`/trial/${trial}/bench`);
    await page.getByRole('button', { name: /^Photo/ }).click();
    const dialog = page.getByRole('dialog', { name: 'Add a photo' });
    await dialog
      .getByLabel('The photo')
      .setInputFiles({ name: 'droop.png', mimeType: 'image/png', buffer: plainPhoto(60, 40) });
    await dialog.getByLabel('What it is about').selectOption({ label: 'the whole trial' });
    await dialog.getByLabel('What it shows').selectOption('droop');
    expect(await dialog.getByLabel('What it is about').inputValue()).toBe('0');
    await dialog.getByRole('button', { name: 'Keep the photo' }).click();
    await dialog.waitFor({ state: 'detached' });
    expect(await storedBodies(bench.store, trial, 'note', 1)).toMatchObject([{ shot: 'droop', about: 'specimen' }]);
    await page.goto(`${bench.address}/trial/${trial}/bend`);
    await page.getByRole('heading', { name: 'Droops in photos, not marked yet' }).waitFor();
    expect(await accessibilityBreaches(page)).toEqual([]);
    await page.getByRole('link', { name: 'Mark the droop in the photo' }).click();
    await page.locator('.marked-photo').waitFor();
    expect(troubles).toEqual([]);
  });

  it('says where a photo is that is not here', async () => {
    const trial = await fresh(['Harrow'], [['note', { ...NOTE, photo: 'a'.repeat(64) }]]);
    const { page } = await bench.open(`/trial/${trial}/bend#photo:n-1`);
    await page.getByRole('alert').filter({ hasText: 'not on the bench computer yet' }).waitFor();
  });
});
