import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { demoFolder } from '../../src/edge/files/projectRoot.ts';
import { type Bench, startBench } from './support/bench.ts';
import { waitForFindings } from './support/findings.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const DEMO_FILES = [
  'trial.csv',
  'cables.csv',
  'instruments.csv',
  'specimens.csv',
  'readings.csv',
  'evidence.csv',
  'fittings.csv',
];

/** The demo under another name, so that it is new to the shelf; `change` edits one file's text. */
function packageFiles(
  trial: string,
  change: (file: string, text: string) => string = (_, text) => text,
): Record<string, Uint8Array> {
  return Object.fromEntries(
    DEMO_FILES.map((file) => {
      const text = readFileSync(join(demoFolder(), file), 'utf8');
      const named = file === 'trial.csv' ? text.replace('fenwater-2-awg', trial) : text;
      return [file, new TextEncoder().encode(change(file, named))];
    }),
  );
}

/** Hands files to the page's first file field, as the browser's own dialogue would. */
async function bringIn(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name, mimeType: 'application/zip', buffer: Buffer.from(bytes) });
}

describe('the shelf', () => {
  it('shows the demo trial and leads inside', async () => {
    const { page, troubles } = await bench.open('/');
    const link = page.getByRole('link', { name: /Six 2 AWG battery cables/ });
    await link.click();
    await page.waitForURL(/\/trial\/fenwater-2-awg\/inside/);
    await waitForFindings(page);
    expect(await page.title()).toContain('Six 2 AWG battery cables');
    expect(troubles).toEqual([]);
  });

  it('takes in a .zip and shows the trial', async () => {
    const { page } = await bench.open('/');
    await bringIn(page, 'second.zip', zipSync(packageFiles('second-trial')));
    await page.getByText(/entries are on the shelf now/).waitFor();
    await page.getByRole('link', { name: 'Look inside' }).click();
    await page.waitForURL(/\/trial\/second-trial\/inside/);
  });

  it('says that a trial which was brought twice is there already', async () => {
    const { page } = await bench.open('/');
    const bytes = zipSync(packageFiles('twice'));
    await bringIn(page, 'twice.zip', bytes);
    await page.getByText(/entries are on the shelf now/).waitFor();
    const before = (await bench.store.entries('twice')).length;
    await bringIn(page, 'twice.zip', bytes);
    await page.getByText('Everything in it was on the shelf already.').waitFor();
    expect((await bench.store.entries('twice')).length).toBe(before);
  });

  it('takes a whole folder, and leaves photos aside', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'cupel folder '));
    try {
      for (const [file, bytes] of Object.entries(packageFiles('from-a-folder')))
        writeFileSync(join(folder, file), bytes);
      writeFileSync(join(folder, 'cut face.jpg'), 'not read');
      const { page } = await bench.open('/');
      await page.locator('input[type=file]').nth(1).setInputFiles(folder);
      await page.getByText(/entries are on the shelf now/).waitFor();
      expect(await page.locator('.intake .notes').textContent()).toContain('cut face.jpg');
      expect(await bench.store.has('from-a-folder')).toBe(true);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('takes files that are dropped on the page', async () => {
    const { page } = await bench.open('/');
    const files = Object.entries(packageFiles('dropped')).map(([name, bytes]) => ({
      name,
      text: new TextDecoder().decode(bytes),
    }));
    const transfer = await page.evaluateHandle((list) => {
      const data = new DataTransfer();
      for (const { name, text } of list) data.items.add(new File([text], name, { type: 'text/csv' }));
      return data;
    }, files);
    await page.dispatchEvent('main', 'drop', { dataTransfer: transfer });
    await page.getByText(/entries are on the shelf now/).waitFor();
    expect(await bench.store.has('dropped')).toBe(true);
  });

  it('refuses a .zip that is none, with its sentence, and changes nothing', async () => {
    const { page } = await bench.open('/');
    const before = await bench.store.trials();
    await bringIn(page, 'holiday.zip', new TextEncoder().encode('this is no archive'));
    await page.getByText('Nothing was brought in.').waitFor();
    expect(await page.locator('.intake').textContent()).toMatch(/holiday\.zip|zip/);
    expect(await bench.store.trials()).toEqual(before);
  });

  it('lists a refused row with file, line and column, and keeps the good rows only when asked to', async () => {
    const { page } = await bench.open('/');
    const spoilt = (file: string, text: string) => (file === 'readings.csv' ? spoilFirstValue(text) : text);
    await bringIn(page, 'spoilt.zip', zipSync(packageFiles('spoilt', spoilt)));
    await page.getByText(/could not be read, so nothing was brought in yet/).waitFor();
    const refusals = await page.locator('.refusals tbody').textContent();
    expect(refusals).toContain('readings.csv, line 2, value');
    expect(refusals).toContain('heavy');
    expect(await bench.store.has('spoilt')).toBe(false);
    await page.getByRole('button', { name: /Keep the \d+ good rows/ }).click();
    await page.getByText(/left out/).waitFor();
    expect(await bench.store.has('spoilt')).toBe(true);
  });
});

/** The first reading's value made unreadable. */
function spoilFirstValue(text: string): string {
  const [head, first, ...rest] = text.split('\n');
  const column = head!.split(',').indexOf('value');
  const cells = first!.split(',');
  cells[column] = 'heavy';
  return [head, cells.join(','), ...rest].join('\n');
}

describe('a bench computer that does not answer', () => {
  it('is said to be silent, and can be asked again', async () => {
    const { page } = await bench.open('/');
    await page.route('**/api/trials', (route) => route.abort());
    await page.reload();
    await page.getByText(/The bench computer does not answer/).waitFor();
    await page.unroute('**/api/trials');
    await page.getByRole('button', { name: 'Ask again' }).click();
    await page
      .getByRole('link', { name: /Six 2 AWG battery cables/ })
      .first()
      .waitFor();
  });
});

describe('an empty shelf', () => {
  it('says what to do', async () => {
    const empty = await startBench({ demo: false });
    try {
      const { page } = await empty.open('/');
      await page.getByRole('heading', { level: 1, name: /The shelf is empty/ }).waitFor();
      expect(await page.getByText(/Drop a folder, a .zip or CSV files/).count()).toBe(1);
    } finally {
      await empty.stop();
    }
  });
});
