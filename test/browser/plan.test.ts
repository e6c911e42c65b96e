import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { storedBodies } from './support/atBench.ts';
import { openFreshPlan, printedPages, startTrial, waitForOutlook } from './support/atPlan.ts';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;
let trials = 0;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const stored = (trial: string, kind: string, count: number) => storedBodies(bench.store, trial, kind, count);

/** A fresh trial on the shelf, and its plan open. */
function atPlan() {
  trials += 1;
  return openFreshPlan(bench, `p${trials}`);
}

describe('a first trial', () => {
  it('is made of a few answers in one go, with its plan worked out', async () => {
    const { page, troubles } = await bench.open('/');
    const trial = await startTrial(page, 3);
    expect(await page.locator('h1').textContent()).toMatch(/^This plan shows a 5 % shortfall .+ in 100\./);
    expect(await page.locator('.hundreds li').count()).toBe(3);
    expect(await page.locator('.claims-grid tbody tr').count()).toBe(3);
    expect(await page.locator('.work-order > ol > li').count()).toBeGreaterThan(4);
    expect((await stored(trial, 'cable', 3)).map((row) => row.claimed_size)).toEqual(['2 AWG', '2 AWG', '2 AWG']);
    expect((await stored(trial, 'instrument', 5)).map((row) => row.instrument)).toContain('four-wire meter');
    expect(await stored(trial, 'specimen', 0)).toEqual([]);
    expect(troubles).toEqual([]);
  });

  it('says under its fields what it cannot read, and is then not made', async () => {
    const { page } = await bench.open('/');
    const before = (await bench.store.trials()).length;
    if ((await page.locator('.start-trial').getAttribute('open')) === null)
      await page.locator('.start-trial summary').click();
    await page.getByRole('button', { name: 'Make the plan' }).click();
    expect(await page.locator('.start-trial [role=alert]').textContent()).toContain('such as 2 AWG');
    await page.getByLabel('Size on the labels').fill('thick');
    await page.getByLabel('How many cables').fill('0');
    expect(await page.locator('#start-size-trouble').textContent()).toContain('Found "thick"');
    expect(await page.locator('#start-cables-trouble').textContent()).toContain('1 to 100');
    await page.getByLabel('Limit of error of the pocket scale').fill('a bit');
    expect(await page.locator('#own-pocket-scale-trouble').textContent()).toContain('±0.02 mm');
    await page.getByRole('button', { name: 'Make the plan' }).click();
    expect(await page.locator('.start-trial [role=alert]').textContent()).toContain('cannot be read');
    expect((await bench.store.trials()).length).toBe(before);
  });

  it('accepts its cut list, which the bench then asks for', async () => {
    const { page } = await bench.open('/');
    const trial = await startTrial(page, 2);
    const shown = await page.locator('.pieces tbody th bdi').allInnerTexts();
    await page.getByRole('button', { name: 'Accept this cut list' }).click();
    await page.getByText(`All ${shown.length} pieces are on record`).waitFor();
    const pieces = await stored(trial, 'specimen', shown.length);
    expect(pieces.map((row) => row.specimen)).toEqual(shown);
    expect(new Set(pieces.map((row) => row.code)).size).toBe(shown.length);
    await page.getByRole('link', { name: /^Bench/ }).click();
    await page.locator('#bench-value').waitFor();
  });
});

describe('the claims', () => {
  it('are refused under the field, keep what was typed, and say nothing to the journal', async () => {
    const { page, trial } = await atPlan();
    const field = page.getByLabel('Length bought, Maker 2');
    await field.fill('heavy');
    await field.press('Tab');
    await page.getByText('Found "heavy"; expected a length').waitFor();
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await field.inputValue()).toBe('heavy');
    expect(await stored(trial, 'cable', 2)).toHaveLength(2);
    await field.fill('3 m');
    await field.press('Tab');
    await page.getByText('Found "heavy"').waitFor({ state: 'detached' });
    expect((await stored(trial, 'cable', 3))[2]).toMatchObject({ cable: 'cable-2', bought_length: '3 m' });
  });

  it('fill the cables of a first trial that nobody has named yet', async () => {
    const { page } = await bench.open('/');
    const trial = await startTrial(page, 2);
    await page.getByText('Paste rows from a spreadsheet').click();
    await page
      .getByLabel('Rows, with their headings')
      .fill('Fenmarsh, 2 AWG, OFC\nTarn, 1/0 AWG, CCA\nQuay, 2 AWG, OFC');
    await page.getByRole('button', { name: 'Add 3 rows' }).click();
    await page.getByText('Three rows are in the table.').waitFor();
    expect(await page.locator('.claims-grid tbody tr').count()).toBe(3);
    const rows = await stored(trial, 'cable', 5);
    expect(rows.slice(2).map((row) => [row.cable, row.maker])).toEqual([
      ['c1', 'Fenmarsh'],
      ['c2', 'Tarn'],
      ['quay', 'Quay'],
    ]);
  });
});

describe('what is wanted', () => {
  it('can be the least work that settles it, or everything', async () => {
    const { page, trial } = await atPlan();
    const minutes = async () => (await page.locator('.how-much b').textContent()) ?? '';
    await page.getByLabel('Everything').check();
    await page.getByLabel('Abuse of jackets').and(page.locator(':checked')).waitFor();
    await waitForOutlook(page);
    const all = await minutes();
    await page.getByLabel('Least work that settles it').check();
    await page.getByLabel('Abuse of jackets').and(page.locator(':not(:checked)')).waitFor();
    await page.waitForFunction((before) => document.querySelector('.how-much b')?.textContent !== before, all);
    const methods = (await stored(trial, 'setting', 4)).filter((row) => row.setting === 'methods');
    expect(methods.at(-1)?.value).not.toContain('bend');
  });

  it('stays fluid to type in while the outlook is worked out', async () => {
    const { page } = await atPlan();
    await page.getByLabel('Shortfall to show').fill('4 %');
    await page.getByLabel('Shortfall to show').press('Tab');
    await page.locator('.look-ahead[aria-busy=true]').waitFor();
    const slowest = await page.getByLabel('Title').evaluate(async (field) => {
      const input = field as HTMLInputElement;
      let worst = 0;
      for (let i = 0; i < 20; i += 1) {
        const start = performance.now();
        input.value += 'x';
        input.dispatchEvent(new Event('input', { bubbles: true }));
        await new Promise((painted) => requestAnimationFrame(() => setTimeout(painted)));
        worst = Math.max(worst, performance.now() - start);
      }
      return worst;
    });
    // A keystroke is felt as late from about a tenth of a second on; a worker that blocked the page would take seconds.
    expect(slowest).toBeLessThan(500);
    await waitForOutlook(page);
  });
});

describe('a tool', () => {
  it('takes the limit that its box prints, or the one that a check has shown', async () => {
    const { page, trial } = await atPlan();
    const row = page.locator('.tools-grid tbody tr', { hasText: 'meter' });
    const limit = page.getByLabel('Limit of error, as printed, meter');
    await limit.fill('much');
    await limit.press('Tab');
    await row.getByText('Found "much"').waitFor();
    await limit.fill('0.5 % + 3 counts');
    await limit.press('Tab');
    await row.getByText('as stated').waitFor();
    expect((await row.locator('.taken').textContent())?.replaceAll('\u00a0', ' ')).toContain('±(0.003 mΩ + 0.5 %)');

    await page.getByRole('button', { name: 'Check scale against a known thing' }).click();
    await page.getByLabel('What that is').fill('100');
    await page.getByLabel('How far that may be off').fill('0.005');
    await page.getByRole('button', { name: 'Keep this check' }).click();
    await page.getByText('expected what the tool read').waitFor();
    await page.getByLabel('What the tool read').fill('100.01');
    await page.getByText('too high').waitFor();
    await page.getByRole('button', { name: 'Keep this check' }).click();
    await page.locator('.tools-grid').getByText('as checked').waitFor();
    expect(await page.locator('dialog').count()).toBe(0);
    expect((await stored(trial, 'check', 1))[0]).toMatchObject({
      instrument: 'scale',
      against: 'check weight',
      known_value: '100',
      unit: 'g',
      known_error: '0.005',
      read_value: '100.01',
    });
  });

  it('shows how far its zeros drift', async () => {
    const { page } = await atPlan();
    for (const zero of ['0.00', '0.08']) {
      await page.getByRole('button', { name: 'Check scale against a known thing' }).click();
      await page.getByLabel('Held against').selectOption('zero');
      await page.getByLabel('What the tool read').fill(zero);
      await page.getByRole('button', { name: 'Keep this check' }).click();
      await page.locator('dialog').waitFor({ state: 'detached' });
    }
    await page.getByText('2 zeros, 0.08 g apart').waitFor();
  });

  it('is added from a list', async () => {
    const { page } = await atPlan();
    await page.getByLabel('Tool to add').selectOption('micrometer');
    await page.getByRole('button', { name: 'Add this tool' }).click();
    await page.locator('.tools-grid th', { hasText: 'micrometer' }).waitFor();
  });
});

describe('on paper', () => {
  it.each([
    ['A4', '595×842'],
    ['Letter', '612×792'],
  ])('labels fill sheets of %s and nothing else is printed', async (paper, size) => {
    const { page, troubles } = await atPlan();
    await page.getByRole('link', { name: 'Labels' }).click();
    await page.locator('.paper svg').first().waitFor();
    await page.getByLabel(paper, { exact: true }).check();
    await page.locator(`.paper.${paper} svg`).first().waitFor();
    const texts = await page.locator('.paper text').allTextContents();
    expect(texts).toContain('KR');
    expect(await page.locator('.paper path').count()).toBeGreaterThan(0);
    expect(await printedPages(page)).toEqual([size]);
    expect(troubles).toEqual([]);
  });

  it('labels can do without names and without QR; flags and the cut list are there too', async () => {
    const { page } = await atPlan();
    await page.getByRole('link', { name: 'Flags that wrap' }).click();
    await page.locator('.paper text', { hasText: 'cable-1-apart' }).first().waitFor();
    await page.getByLabel('code alone').check();
    await page.locator('.paper text', { hasText: 'cable-1-apart' }).first().waitFor({ state: 'detached' });
    await page.getByLabel('without QR').check();
    await page.waitForFunction(() => document.querySelector('.paper path') === null);
    await page.getByLabel('Cut list').check();
    await page.locator('.paper text', { hasText: 'Cut list: Bench' }).waitFor();
    expect(new URL(page.url()).hash).toBe('#cut-list');
    await page.goBack();
    await page.getByRole('heading', { level: 1, name: /Flags/ }).waitFor();
    await page.getByRole('link', { name: 'Back to the plan' }).click();
    await page.getByRole('heading', { name: 'Cut list' }).waitFor();
  });

  it('labels name the cable beside the code, and only while names are shown', async () => {
    const { page, trial } = await atPlan();
    const [{ maker = '' } = {}] = await stored(trial, 'cable', 1);
    await page.getByRole('link', { name: 'Labels' }).click();
    await page.locator('.paper text', { hasText: maker }).first().waitFor();
    await page.getByText('npm start -- --share').waitFor();
    await page.getByLabel('code alone').check();
    await page.locator('.paper text', { hasText: maker }).first().waitFor({ state: 'detached' });
  });

  it('a label’s address takes its piece up on the bench', async () => {
    const { trial } = await atPlan();
    const { page } = await bench.open(`/trial/${trial}/bench?specimen=VN`);
    await page.locator('.in-hand', { hasText: /cable-2|Maker 2|VN/ }).waitFor();
  });
});

describe('at 1440 px', () => {
  it('a tool takes one line, its two acts beside each other, and so does the header', async () => {
    const { page } = await bench.open('/', { width: 1440 });
    await startTrial(page, 3);
    const act = page.locator('.tools-grid tbody .act').first();
    await act.waitFor({ state: 'attached' });
    if (!(await act.isVisible())) await page.locator('#tools summary').first().click();
    const tops = await act
      .locator('button.link')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top));
    expect(tops).toHaveLength(2);
    expect(tops[1]).toBe(tops[0]);
    const heights = await page
      .locator('.tools-grid tbody tr')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    // A field is 44 px high; a second line of words is allowed beside it, a second field’s height is not.
    for (const height of heights) expect(height).toBeLessThan(80);
    expect((await page.locator('.header').boundingBox())?.height).toBeLessThan(72);
  });
});

describe('blind', () => {
  it('shows no code beside a name, until the names are revealed on record', async () => {
    const { page, trial } = await atPlan();
    expect(await page.locator('.pieces .code').allInnerTexts()).toContain('VN');
    const pieces = (await stored(trial, 'specimen', 1)).length;
    await page.locator('.blinding summary').click();
    await page.getByLabel('How nobody is to know').selectOption('sleeve');
    await page.getByRole('button', { name: 'Go by codes from here on' }).click();
    await page.getByRole('heading', { name: 'The trial goes by codes.' }).waitFor();
    const makers = (await stored(trial, 'cable', 1)).map((row) => row.maker!);
    const onPage = async () => (await page.locator('body').textContent()) ?? '';
    for (const maker of makers) expect(await onPage()).not.toContain(maker);
    // The codes stood beside the names, so new ones were drawn once the names were hidden.
    const codes = (await stored(trial, 'specimen', 2 * pieces)).slice(pieces).map((row) => row.code);
    expect(codes).toHaveLength(pieces);
    expect(codes).not.toContain('VN');
    await page.getByRole('button', { name: 'Show names to the one who cuts' }).click();
    await page.getByText('Names are shown on this device although the trial goes by codes.').waitFor();
    expect(await onPage()).toContain(makers[0]!);
    await page.getByRole('button', { name: 'Hide them again' }).click();
    await page.getByRole('heading', { name: 'The trial goes by codes.' }).waitFor();
    await page.getByRole('button', { name: 'Reveal the names' }).click();
    await page.getByRole('button', { name: 'Reveal now, on record' }).click();
    await page.getByText('the names have been shown since').waitFor();
    expect((await stored(trial, 'blinding', 3)).map((row) => [row.act, row.how])).toEqual([
      ['blind', 'sleeve'],
      ['show', undefined],
      ['reveal', undefined],
    ]);
  });
});

describe('a trial that nobody knows', () => {
  it('is said to be unknown', async () => {
    const { page } = await bench.open('/trial/nobody/plan');
    await page.getByRole('heading', { name: /Nothing is known of this trial/ }).waitFor();
    await page.getByRole('link', { name: 'Back to the shelf' }).click();
    await page.getByRole('heading', { name: 'One cable, six fields' }).waitFor();
  });
});
