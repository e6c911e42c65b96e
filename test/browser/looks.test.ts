import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { freshTrial, storedBodies, waitForAllThere } from './support/atBench.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, type Look, startBench } from './support/bench.ts';
import { said } from './support/benchTrial.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** Two cables by their codes, with eyes wanted beside ohms and scale; the bench open. */
async function withEyes(look: Look = {}): Promise<{ page: Page; trial: string; troubles: string[] }> {
  const trial = await freshTrial(bench, ['KR', 'VN']);
  await bench.store.append(trial, [said(trial, 'setting', { setting: 'methods', value: 'ohms, weigh, eye' }, 900)]);
  const { page, troubles } = await bench.open(`/trial/${trial}/bench`, look);
  await page.locator('#bench-value').waitFor();
  await waitForAllThere(page);
  return { page, trial, troubles };
}

const inList = (page: Page, name: string) => page.locator('.work-list').getByRole('button', { name });
const withoutMoment = ({ at: _, evidence: __, ...body }: Record<string, string>) => body;

describe('looking at cables', () => {
  it('asks strand by strand, writes strands that show the same as one row, and goes on to the next cable', async () => {
    const { page, trial, troubles } = await withEyes();
    await inList(page, 'Scraped strands 0 of 2').click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('heading', { name: 'KR: Scrape three strands and look' }).waitFor();
    await dialog.getByRole('button', { name: 'Keep what was seen' }).click();
    await dialog.getByText(/Found nothing chosen/).waitFor();
    await dialog.getByRole('group', { name: 'Outer strand' }).getByLabel('red through').check();
    await dialog.getByRole('group', { name: 'Middle strand' }).getByLabel('red through').check();
    await dialog.getByRole('group', { name: 'Centre strand' }).getByLabel('white core').check();
    await dialog.getByRole('button', { name: 'Keep what was seen' }).click();
    await dialog.getByRole('heading', { name: /^VN: / }).waitFor();
    const rows = await storedBodies(bench.store, trial, 'evidence', 2);
    const look = { cable: 'cable-1', look: 'scraped_strand' };
    expect(rows.map(withoutMoment)).toEqual([
      { ...look, where: 'outer, middle', count: '2 of 3', seen: 'red through' },
      { ...look, where: 'centre', count: '1 of 3', seen: 'white core' },
    ]);
    await dialog.getByText('Or count how many of a bundle show it').click();
    await dialog.getByLabel('So many showed it').fill('3');
    await dialog.getByLabel('So many looked at').fill('10');
    await dialog.getByRole('group', { name: 'What they showed' }).getByLabel('tin outside').check();
    await dialog.getByRole('button', { name: 'Keep what was seen' }).click();
    await dialog.waitFor({ state: 'detached' });
    await inList(page, 'Scraped strands 2 of 2').waitFor();
    const all = await storedBodies(bench.store, trial, 'evidence', 3);
    expect(all[2]).toMatchObject({ cable: 'cable-2', count: '3 of 10', seen: 'tin outside' });
    expect(troubles).toEqual([]);
  });

  it('keeps a magnet by one key and a print by its words, and undoes the last of them', async () => {
    const { page, trial } = await withEyes();
    await inList(page, 'Magnet 0 of 2').click();
    await page.getByRole('dialog').getByRole('button', { name: 'no pull' }).click();
    await page.getByRole('heading', { name: 'VN: Hold a magnet to the strands' }).waitFor();
    await page.getByRole('button', { name: 'Back to the bench' }).click();
    await inList(page, 'Magnet 1 of 2').waitFor();
    await inList(page, 'Print on the jacket 0 of 2').click();
    await page.getByLabel('What is printed').fill('2 AWG OFC <b>');
    await page.getByRole('button', { name: 'Keep these words' }).click();
    await page.getByRole('heading', { name: /^VN: Read/ }).waitFor();
    await page.keyboard.press('Escape');
    expect((await storedBodies(bench.store, trial, 'evidence', 2)).map(withoutMoment)).toEqual([
      { cable: 'cable-1', look: 'magnet', seen: 'no pull' },
      { cable: 'cable-1', look: 'print_on_jacket', seen: '2 AWG OFC <b>' },
    ]);
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.locator('#bench-value').focus();
    await page.keyboard.press('u');
    await inList(page, 'Print on the jacket 0 of 2').waitFor();
    expect(await storedBodies(bench.store, trial, 'withdrawal', 1)).toMatchObject([
      { about: 'evidence', why: 'undone' },
    ]);
  });

  it('puts a look aside with a reason and not without; History shows both', async () => {
    const { page, trial } = await withEyes();
    await inList(page, 'Magnet 0 of 2').click();
    await page.getByRole('dialog').getByRole('button', { name: 'pulls', exact: true }).click();
    await page.getByRole('heading', { name: 'VN: Hold a magnet to the strands' }).waitFor();
    await page.getByRole('button', { name: 'Back to the bench' }).click();
    await inList(page, 'Scraped strands 0 of 2').click();
    await page.getByRole('button', { name: 'Put aside: KR, magnet: pulls' }).click();
    const asking = page.getByRole('dialog', { name: 'Put aside: KR, magnet: pulls' });
    await asking.getByRole('button', { name: 'Put aside', exact: true }).click();
    await asking.getByText(/Found no reason/).waitFor();
    await asking.getByLabel('another cable').check();
    await asking.getByRole('button', { name: 'Put aside', exact: true }).click();
    await asking.waitFor({ state: 'detached' });
    const [row] = await storedBodies(bench.store, trial, 'evidence', 1);
    expect(await storedBodies(bench.store, trial, 'withdrawal', 1)).toMatchObject([
      { act: 'put aside', about: 'evidence', which: row!.evidence, why: 'another cable' },
    ]);
    await page.keyboard.press('Escape');
    await inList(page, 'Magnet 0 of 2').waitFor();
    await page.goto(`${bench.address}/trial/${trial}/history`);
    await page.locator('.corrections li', { hasText: 'was put aside. Reason given: another cable' }).waitFor();
  });

  it.each([
    ['light', 1440],
    ['dark', 360],
  ] as const)('breaks no rule of WCAG 2.2 AA, %s at %i px', async (colorScheme, width) => {
    const { page } = await withEyes({ colorScheme, width });
    for (const name of ['Scraped strands', 'Magnet', 'Print on the jacket']) {
      await inList(page, `${name} 0 of 2`).click();
      await page.getByRole('dialog').waitFor();
      for (const fold of await page.locator('dialog details').all()) await fold.locator('summary').click();
      expect(await accessibilityBreaches(page)).toEqual([]);
      await page.getByRole('button', { name: 'Back to the bench' }).click();
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }
  });
});
