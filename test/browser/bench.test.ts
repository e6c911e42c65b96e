import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import {
  freshBench,
  freshTrial,
  quantityInHand,
  storedBodies,
  valueInHand,
  waitForAllThere,
  waitForDone,
} from './support/atBench.ts';
import { type Bench, startBench } from './support/bench.ts';
import { said } from './support/benchTrial.ts';
import { waitForFindings } from './support/findings.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const atBench = (codes?: readonly string[], repeats?: number) => freshBench(bench, codes, repeats);
/** Where requests are held up or turned away. */
const atPlainBench = () => freshBench(bench, ['KR', 'VN'], 1, { plain: true });
const stored = (trial: string, kind: string, count: number) => storedBodies(bench.store, trial, kind, count);
const type = (page: Page, text: string) => page.keyboard.type(text);

describe('from the bench to what is inside', () => {
  it('goes by keyboard alone', async () => {
    const trial = await freshTrial(bench, ['KR']);
    const { page, troubles } = await bench.open('/');
    await page.getByRole('link', { name: `Bench ${trial}` }).waitFor();
    await tabTo(page, `Bench ${trial}`);
    await page.keyboard.press('Enter');
    await page.locator('.places').waitFor();
    await tabTo(page, /^Bench/);
    await page.keyboard.press('Enter');
    await page.locator('#bench-value').waitFor();
    for (let done = 0; done < 6; done += 1) {
      await waitForDone(page, done);
      await type(page, await valueInHand(page));
      await page.keyboard.press('Enter');
    }
    await waitForDone(page, 6);
    expect(await page.locator('.progress').textContent()).toContain('nothing left');
    await tabTo(page, /^Inside/);
    await page.keyboard.press('Enter');
    await waitForFindings(page);
    expect(await page.locator('.cables').textContent()).toContain('Maker 1');
    const readings = await stored(trial, 'reading', 6);
    expect(readings.map((row) => row.value).sort()).toEqual(['1.02', '121.4', '30.1', '300', '300', '91.2'].sort());
    expect(readings.find((row) => row.quantity === 'conductor_mass')).toMatchObject({
      specimen: 'cable-1-apart',
      unit: 'g',
      instrument: 'scale',
    });
    expect(troubles).toEqual([]);
  });

  it('goes by touch at 390 px with the keypad', async () => {
    const trial = await freshTrial(bench, ['KR']);
    const context = await bench.browser.newContext({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const page = await context.newPage();
    await page.goto(`${bench.address}/trial/${trial}/bench`);
    await page.locator('.keypad').waitFor();
    expect(await page.locator('#bench-value').getAttribute('inputmode')).toBe('none');
    for (let done = 0; done < 6; done += 1) {
      await waitForDone(page, done);
      for (const sign of await valueInHand(page))
        await keypadKey(page, sign === '.' ? /^\./ : new RegExp(`^${sign}$`)).tap();
      await keypadKey(page, /^Record/).tap();
    }
    await waitForDone(page, 6);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await page.locator('.places-fold summary').tap();
    await page.locator('.places-fold').getByRole('link', { name: 'Inside' }).tap();
    await waitForFindings(page);
    expect(await stored(trial, 'reading', 6)).toHaveLength(6);
  });
});

describe('the keypad', () => {
  it('types fractions with one key, erases, and changes the unit without a digit', async () => {
    const { page, context } = await atBench(['KR']);
    await page.setViewportSize({ width: 390, height: 844 });
    const [field, key] = [page.locator('#bench-value'), (name: RegExp) => keypadKey(page, name).click()];
    const fraction = /fraction$/;
    for (const name of [/^1$/, fraction, /^3$/, fraction, /^8$/]) await key(name);
    expect(await field.inputValue()).toBe('1 3/8');
    for (let letters = 0; letters < 5; letters += 1) await key(/^Erase$/);
    for (const name of [/^3$/, fraction, fraction, /^8$/]) await key(name);
    expect(await field.inputValue()).toBe('3/8');
    await key(/change unit$/);
    expect(await field.inputValue()).toBe('3/8');
    expect(await page.getByLabel('Unit of what is typed').inputValue()).toBe('uohm');
    await context.close();
  });
});

describe('without a network', () => {
  it('goes on recording, says what waits, and sends it all when the network is back', async () => {
    const { page, context, trial } = await atBench();
    await type(page, await valueInHand(page));
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await waitForAllThere(page);
    await context.setOffline(true);
    for (let done = 1; done < 4; done += 1) {
      await type(page, await valueInHand(page));
      await page.keyboard.press('Enter');
      await waitForDone(page, done + 1);
    }
    await page.getByText('3 wait in this browser').waitFor();
    expect(await stored(trial, 'reading', 1)).toHaveLength(1);
    await context.setOffline(false);
    await waitForAllThere(page);
    expect(await stored(trial, 'reading', 4)).toHaveLength(4);
  });

  it('can be loaded anew offline, and still sends it all when the network is back', async () => {
    const { page, context, trial } = await atBench();
    await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active?.state === 'activated');
    await type(page, await valueInHand(page));
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await waitForAllThere(page);
    await context.setOffline(true);
    for (let done = 1; done < 4; done += 1) {
      await type(page, await valueInHand(page));
      await page.keyboard.press('Enter');
      await waitForDone(page, done + 1);
    }
    await page.reload();
    await page.getByText('3 wait in this browser').waitFor();
    await waitForDone(page, 4);
    await type(page, '1.023');
    await page.keyboard.press('Enter');
    await page.getByText('4 wait in this browser').waitFor();
    await context.setOffline(false);
    await waitForAllThere(page);
    expect(await stored(trial, 'reading', 5)).toHaveLength(5);
  });

  it('still holds after a reload what the bench computer has not got', async () => {
    const { page, context, trial } = await atPlainBench();
    await context.route('**/api/**', (route) => route.abort());
    for (let done = 0; done < 3; done += 1) {
      await type(page, await valueInHand(page));
      await page.keyboard.press('Enter');
      await waitForDone(page, done + 1);
    }
    await page.reload();
    await page.getByText('3 wait in this browser').waitFor();
    await waitForDone(page, 3);
    expect(await stored(trial, 'reading', 0)).toHaveLength(0);
    await context.unroute('**/api/**');
    await waitForAllThere(page);
    expect(await stored(trial, 'reading', 3)).toHaveLength(3);
  });

  it('never says that a reading is on the bench computer before it is', async () => {
    const { page, context } = await atPlainBench();
    let answer: () => void = () => {};
    const held = new Promise<void>((settle) => {
      answer = settle;
    });
    await context.route('**/api/entries', async (route) => {
      await held;
      await route.continue();
    });
    await type(page, await valueInHand(page));
    await page.keyboard.press('Enter');
    await page.getByText('1 waits in this browser').waitFor();
    expect(await page.locator('.kept-where').textContent()).not.toContain('on the bench computer');
    answer();
    await waitForAllThere(page);
  });

  it('hears at once what another device said', async () => {
    const { page, trial } = await atBench();
    const body = { reading: 'x1', specimen: 'cable-1-whole', quantity: 'resistance', value: '1.03', unit: 'mohm' };
    const answer = await fetch(`${bench.address}/api/entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ trial, entries: [said(trial, 'reading', body, 5000)] }),
    });
    expect(answer.status).toBe(200);
    await waitForDone(page, 1);
  });
});

describe('what is typed', () => {
  it('lands in the field wherever the focus is, as from a tool that types', async () => {
    const { page, trial } = await atBench();
    await page.getByRole('link', { name: 'History' }).focus();
    await type(page, '1.021');
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await type(page, '1.022');
    await page.keyboard.press('Enter');
    await waitForDone(page, 2);
    expect((await stored(trial, 'reading', 2)).map((row) => row.value)).toEqual(['1.021', '1.022']);
  });

  it('is kept as typed: comma, fraction, its own unit; changing the unit changes no digit', async () => {
    const { page, trial } = await atBench(['KR']);
    await type(page, '1,02');
    await page.keyboard.press('Enter');
    await waitForDone(page, 1);
    expect(await quantityInHand(page)).toBe('specimen_mass');
    await type(page, '4.28');
    await page.getByLabel('Unit of what is typed').selectOption('oz');
    expect(await page.locator('#bench-value').inputValue()).toBe('4.28');
    await page.locator('#bench-value').press('Enter');
    await waitForDone(page, 2);
    expect(await quantityInHand(page)).toBe('conductor_length');
    await page.getByLabel('Unit of what is typed').selectOption('in');
    await page.locator('#bench-value').fill('11 13/16');
    await page.locator('#bench-value').press('Enter');
    await waitForDone(page, 3);
    const rows = await stored(trial, 'reading', 3);
    expect(rows.map(({ value, unit }) => [value, unit])).toEqual([
      ['1,02', 'mohm'],
      ['4.28', 'oz'],
      ['11 13/16', 'in'],
    ]);
  });

  it('stays in the field with a sentence when it cannot be a reading', async () => {
    const { page, trial } = await atBench();
    await type(page, '1.0.2');
    await page.keyboard.press('Enter');
    expect(await page.locator('#bench-trouble').textContent()).toMatch(/^Found .*; expected /);
    expect(await page.locator('#bench-value').inputValue()).toBe('1.0.2');
    expect(await page.locator('#bench-value').getAttribute('aria-invalid')).toBe('true');
    await page.keyboard.press('Escape');
    expect(await page.locator('#bench-value').inputValue()).toBe('');
    expect(await stored(trial, 'reading', 0)).toHaveLength(0);
  });

  it('may have an exponent, which is no unit: it is kept in the unit beside it, and asked about', async () => {
    const { page, trial } = await atBench();
    await page.locator('#bench-value').fill('1e9');
    await page.keyboard.press('Enter');
    expect(await stored(trial, 'reading', 1)).toMatchObject([{ value: '1e9', unit: 'mohm' }]);
    await page.locator('.question', { hasText: '1e9 mΩ' }).first().waitFor();
  });

  it('takes contacts and temperature along', async () => {
    const { page, trial } = await atBench();
    await page.getByLabel('Between the voltage contacts').fill('1900 mm');
    await page.getByLabel('Copper, among the strands, °C').fill('16.5');
    await page.getByText(/3.5 °C from the 20 °C/).waitFor();
    await page.getByLabel('forward', { exact: true }).check();
    await page.locator('#bench-value').focus();
    await type(page, '1.02');
    await page.keyboard.press('Enter');
    const [row] = await stored(trial, 'reading', 1);
    expect(row).toMatchObject({
      at_length: '1900',
      at_length_unit: 'mm',
      temperature: '16.5',
      temperature_unit: 'C',
      position: 'forward',
    });
  });

  it('tells those who hear the page what was kept', async () => {
    const { page } = await atBench(['KR'], 3);
    await type(page, '1.02');
    await page.keyboard.press('Enter');
    await page.locator('#said', { hasText: 'Kept: 1.02 mΩ, reading 1 of 3 on KR.' }).waitFor({ state: 'attached' });
  });
});

const keypadKey = (page: Page, name: RegExp) => page.locator('.keypad .keys').getByRole('button', { name });

/** Presses Tab until the focus is on a link of that name. */
async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  for (let tries = 0; tries < 60; tries += 1) {
    await page.keyboard.press('Tab');
    const text = await page.evaluate(() => document.activeElement?.textContent ?? '');
    if (typeof name === 'string' ? text === name : name.test(text)) return;
  }
  throw new Error(`Tab never reached ${name}`);
}
