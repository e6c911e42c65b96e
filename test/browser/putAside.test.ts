import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { piecesToWear } from './support/abuseTrial.ts';
import { freshTrial, storedBodies, waitForAllThere } from './support/atBench.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';
import { piecesToBend } from './support/bendTrial.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

describe('what was entered by mistake', () => {
  it('is put aside on Plan with what hangs on it, and taken up again', async () => {
    const trial = await freshTrial(bench, ['KR', 'VN']);
    const { page, troubles } = await bench.open(`/trial/${trial}/plan`);
    await waitForAllThere(page);
    await page.getByRole('button', { name: 'More of Maker 2' }).click();
    await page.getByRole('button', { name: 'Put aside: Maker 2' }).click();
    const asking = page.getByRole('dialog', { name: 'Put aside: Maker 2' });
    await asking.getByLabel('listed twice').check();
    expect(await accessibilityBreaches(page)).toEqual([]);
    await asking.getByRole('button', { name: 'Put aside', exact: true }).click();
    const fold = page.locator('.claims-plan .aside-list');
    await fold.getByText('Put aside: 1').click();
    expect(await page.locator('.claims-grid tbody tr:not(.sheet-row)').count()).toBe(1);
    expect(await fold.locator('li').textContent()).toContain('listed twice');
    await page.getByRole('button', { name: 'Put aside: scale' }).click();
    await page.getByLabel('Why, in your words').fill('lent away');
    await page.getByRole('dialog').getByRole('button', { name: 'Put aside', exact: true }).click();
    await page.locator('.tools .aside-list').waitFor();
    await fold.getByRole('button', { name: 'Take up again: Maker 2' }).click();
    await page.getByLabel('Why, in your words').fill('it is another one');
    await page.getByRole('dialog').getByRole('button', { name: 'Take up again', exact: true }).click();
    await fold.waitFor({ state: 'detached' });
    expect(await page.locator('.claims-grid tbody tr:not(.sheet-row)').count()).toBe(2);
    expect(
      (await storedBodies(bench.store, trial, 'withdrawal', 3)).map(({ act, which, why }) => [act, which, why]),
    ).toEqual([
      ['put aside', 'cable-2', 'listed twice'],
      ['put aside', 'scale', 'lent away'],
      ['taken up again', 'cable-2', 'it is another one'],
    ]);
    expect(troubles).toEqual([]);
  });

  it('is a judged answer or a tested piece, each where it is shown', async () => {
    const bent = `bent-${Date.now()}`;
    const judged = (judgement: string, result: string): [string, Record<string, string>] => [
      'judgement',
      { judgement, left: 'c0-b', right: 'c1-b', result, by: 'first judge' },
    ];
    await bench.store.append(
      bent,
      piecesToBend(bent, ['Harrow', 'Sedge'], [judged('j1', 'left'), judged('j2', 'same')]),
    );
    const { page, troubles } = await bench.open(`/trial/${bent}/bend`);
    const answers = page.locator('.rows-on-record');
    await answers.getByText('2 answers, as they were given').click();
    await answers.getByRole('button', { name: 'Put aside: KR bends more easily than VN' }).click();
    await page.getByRole('dialog').getByLabel('the other hand was meant').check();
    await page.getByRole('dialog').getByRole('button', { name: 'Put aside', exact: true }).click();
    await answers.getByText('The one answer, as it was given').waitFor();
    await answers.getByText('Put aside: 1').click();
    expect(await accessibilityBreaches(page)).toEqual([]);
    await page.goto(`${bench.address}/trial/${bent}/history`);
    await page.locator('.journal', { hasText: 'the answer: KR bends more easily than VN' }).waitFor();

    const worn = `worn-${Date.now()}`;
    const outcome = { specimen: 'c0-x1', test: 'scrape', amount: '120', unit: 'strokes', outcome: 'failed' };
    await bench.store.append(worn, piecesToWear(worn, ['Harrow', 'Sedge'], { more: [['endurance', outcome]] }));
    await page.goto(`${bench.address}/trial/${worn}/jacket`);
    await answers.getByText('The one outcome, as it was kept').click();
    const name = 'KR, piece to abuse 1: scrape, failed at 120 strokes';
    await answers.getByRole('button', { name: `Put aside: ${name}` }).click();
    await page.getByRole('dialog').getByLabel('miscounted').check();
    await page.getByRole('dialog').getByRole('button', { name: 'Put aside', exact: true }).click();
    await page.getByRole('heading', { name: 'Nothing about jackets has been recorded yet.' }).waitFor();
    await answers.getByText('Put aside: 1').click();
    await answers.getByRole('button', { name: `Take up again: ${name}` }).click();
    await page.getByLabel('Why, in your words').fill('counted right after all');
    await page.getByRole('dialog').getByRole('button', { name: 'Take up again', exact: true }).click();
    await answers.getByText('The one outcome, as it was kept').waitFor();
    expect(troubles).toEqual([]);
  });

  it('as a whole trial stands folded at the foot of the shelf, with its reason and the way back', async () => {
    const trial = await freshTrial(bench, ['KR']);
    const { page } = await bench.open('/');
    await page.getByRole('button', { name: `Put away: Bench ${trial}` }).click();
    await page.getByLabel('for trying out').check();
    await page.getByRole('dialog').getByRole('button', { name: 'Put away', exact: true }).click();
    const fold = page.locator('.put-away');
    await fold.getByText('Put away: 1').click();
    await fold.getByText('“for trying out”').waitFor();
    const own = await bench.open('/');
    for (const place of ['plan', 'bench', 'inside', 'bend', 'jacket', 'amps', 'standing', 'publish', 'history']) {
      await own.page.goto(`${bench.address}/trial/${trial}/${place}`);
      await own.page.locator('.put-away-here', { hasText: 'for trying out' }).waitFor();
    }
    expect(await accessibilityBreaches(own.page)).toEqual([]);
    await own.page.goto(bench.address);
    await own.page.locator('.put-away').waitFor();
    expect(await own.page.locator('.put-away-here').count()).toBe(0);
    expect(await page.locator('table.trials').first().getByText(`Bench ${trial}`).count()).toBe(0);
    expect(await accessibilityBreaches(page)).toEqual([]);
    await fold.getByRole('button', { name: `Take up again: Bench ${trial}` }).click();
    await page.getByLabel('Why, in your words').fill('needed after all');
    await page.getByRole('dialog').getByRole('button', { name: 'Take up again', exact: true }).click();
    await fold.waitFor({ state: 'detached' });
    await page.locator('table.trials').getByText(`Bench ${trial}`).waitFor();
  });
});
