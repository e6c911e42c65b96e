import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { freshBench, freshTrial, storedBodies, valueInHand, waitForAllThere, waitForDone } from './support/atBench.ts';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const atPlainBench = () => freshBench(bench, ['KR'], 1, { plain: true });
const record = async (page: Page) => {
  await page.keyboard.type(await valueInHand(page));
  await page.keyboard.press('Enter');
};

describe('what the bench computer would not take', () => {
  /** A server of another version, which finds something wrong with the next entry. */
  async function refuseTheNext({ page, context }: { page: Page; context: import('playwright-core').BrowserContext }) {
    let sent = 0;
    const store = await bench.store.name();
    await context.route('**/api/entries', async (route) => {
      const { entries } = route.request().postDataJSON() as { entries: { id: string }[] };
      sent += 1;
      const why = { entry: 1, found: '"1.02 mohm" as value', expected: 'no ohms', advice: 'It was not kept.' };
      const refused = entries.map(({ id }) => ({ ...why, id }));
      await route.fulfill({ status: 400, json: { error: why, accepted: [], refused, last: 0, store } });
    });
    await record(page);
    await page.getByRole('heading', { name: 'The bench computer would not take this' }).waitFor();
    return { sent: () => sent };
  }

  it('stays in sight with the reason, is not sent for ever, and holds nothing else back', async () => {
    const { page, context, trial, troubles } = await atPlainBench();
    const { sent } = await refuseTheNext({ page, context });
    await page.getByText('Found "1.02 mohm" as value; expected no ohms. It was not kept.').waitFor();
    await page.getByText('1 was not taken and is in this browser').first().waitFor();
    expect(sent()).toBe(1);
    await context.unroute('**/api/entries');
    await record(page);
    expect(await storedBodies(bench.store, trial, 'reading', 1)).toHaveLength(1);
    // It is offered once more to whatever version answers when the page is opened anew.
    await page.reload();
    await waitForAllThere(page);
    expect(await storedBodies(bench.store, trial, 'reading', 2)).toHaveLength(2);
    expect(await page.locator('.not-taken').count()).toBe(0);
    expect(troubles.filter((text) => !text.includes('400'))).toEqual([]);
  });

  it('is gone from this device when somebody takes it off, and from there only', async () => {
    const { page, context, trial } = await atPlainBench();
    await refuseTheNext({ page, context });
    await waitForDone(page, 1);
    await page.getByRole('button', { name: 'Take it off this device' }).click();
    await waitForDone(page, 0);
    await context.unroute('**/api/entries');
    await page.reload();
    await waitForAllThere(page);
    await waitForDone(page, 0);
    expect(await storedBodies(bench.store, trial, 'reading', 0)).toEqual([]);
  });
});

describe('what the disk of the bench computer damaged', () => {
  it('is told above the figures that lack it, and no more once a device has sent it again', async () => {
    const trial = await freshTrial(bench, ['KR']);
    const { readable } = bench.store;
    let spoilt = true;
    bench.store.readable = async (...asked) => {
      const read = await readable(...asked);
      if (!spoilt || asked[0] !== trial || read.entries.length === 0 || asked[1] > 0) return read;
      return { ...read, entries: read.entries.slice(1), damaged: [1], advice: 'Stop Cupel there.' };
    };
    try {
      const { page } = await bench.open(`/trial/${trial}/bench`, { plain: true });
      await page.getByRole('heading', { name: 'A part of this trial cannot be read' }).waitFor();
      await page.getByText(/One entry of this trial \(number 1\).*Stop Cupel there\./).waitFor();
      spoilt = false;
      await page.reload();
      await waitForAllThere(page);
      await page.locator('.damaged-here').waitFor({ state: 'detached' });
    } finally {
      bench.store.readable = readable;
    }
  });
});

describe('a photo', () => {
  /** Pixels of noise, which no compression makes small. */
  function noisePhoto(width: number, height: number): Buffer {
    const picture = new PNG({ width, height });
    for (let n = 0; n < picture.data.length; n += 1) picture.data[n] = n % 4 === 3 ? 255 : (n * 7919 + (n >> 5)) & 255;
    return PNG.sync.write(picture);
  }

  /** Waits until this browser has noted of every photo that the store of this name has it. */
  const noted = async (page: Page, photos: number) =>
    page.waitForFunction(
      ([store, count]) =>
        new Promise<boolean>((settle, fail) => {
          const opening = indexedDB.open('cupel');
          opening.onerror = () => fail(opening.error);
          opening.onsuccess = () => {
            const reading = opening.result.transaction('blobs').objectStore('blobs').getAll();
            reading.onerror = () => fail(reading.error);
            reading.onsuccess = () => {
              opening.result.close();
              const kept = reading.result as { sent: string }[];
              settle(kept.length === count && kept.every(({ sent }) => sent === store));
            };
          };
        }),
      [await bench.store.name(), photos] as const,
    );

  it('is shown small from a small copy of its own; the whole one is fetched when it is opened', async () => {
    const { page, trial } = await atPlainBench();
    const buffer = noisePhoto(1200, 800);
    await page.keyboard.press('p');
    await page.getByLabel('The photo').setInputFiles({ name: 'scale.png', mimeType: 'image/png', buffer });
    await page.getByRole('button', { name: 'Keep the photo' }).click();
    const [note] = await storedBodies(bench.store, trial, 'note', 1);
    await expect.poll(() => bench.store.blobNames(trial)).toHaveLength(2);
    expect(await bench.store.blobNames(trial)).toEqual([note!.photo!, note!.thumbnail!].sort());
    const small = await bench.store.getBlob(trial, note!.thumbnail!);
    expect([...small!.subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
    expect(small!.length).toBeLessThan(buffer.length / 10);

    // Another device, which holds neither.
    const other = await bench.open(`/trial/${trial}/history`, { plain: true });
    const fetched: string[] = [];
    other.page.on('request', (request) => fetched.push(request.url()));
    const shown = other.page.locator('.journal .photo img');
    await shown.waitFor();
    await expect
      .poll(() => shown.evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]))
      .toEqual([320, 213]);
    const whole = () => fetched.filter((url) => url.includes(note!.photo!)).length;
    expect(whole()).toBe(0);
    await other.page.locator('.journal .photo').click();
    await other.page.locator('.photo-large').waitFor();
    expect(whole()).toBe(1);
  });

  it.each([
    ['x.gif', 'image/gif', 'GIF89a\x01\0\x01\0'],
    ['README.md', 'text/markdown', '# Words\n\nthat may be kept as a log.\n'],
    ['meter.csv', 'text/csv', 'time_s,ohm\n0,0.00051\n'],
    ['receipt.pdf', 'application/pdf', '%PDF-1.7\n'],
  ])('of no kind that a photo has is refused at once, in a sentence: %s', async (name, mimeType, content) => {
    const { page, trial } = await atPlainBench();
    await page.keyboard.press('p');
    await page.getByLabel('The photo').setInputFiles({ name, mimeType, buffer: Buffer.from(content) });
    await page.getByRole('button', { name: 'Keep the photo' }).click();
    const refusal = `Found "${name}", which is no picture; expected a photo (JPEG, PNG, WebP, HEIC).`;
    await page.getByRole('dialog').getByText(refusal).waitFor();
    expect(await storedBodies(bench.store, trial, 'note', 0)).toEqual([]);
    expect(await bench.store.blobNames(trial)).toEqual([]);
  });

  it('goes again to a store that was put back from an older copy', async () => {
    const { page, trial } = await atPlainBench();
    await page.keyboard.press('p');
    const buffer = noisePhoto(40, 30);
    await page.getByLabel('The photo').setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer });
    await page.getByRole('button', { name: 'Keep the photo' }).click();
    const [note] = await storedBodies(bench.store, trial, 'note', 1);
    // A picture of few pixels may have no smaller copy of its own.
    const names = [...new Set([note!.photo!, note!.thumbnail ?? ''])].filter((name) => name !== '').sort();
    await expect.poll(() => bench.store.blobNames(trial)).toEqual(names);
    await noted(page, names.length);
    const { getBlob } = bench.store;
    const put: string[] = [];
    page.on('request', (request) => request.method() === 'PUT' && put.push(request.url()));
    bench.store.getBlob = async () => null;
    try {
      await bench.store.rename();
      await page.reload();
      // What was noted before may still stand for a moment: the sending itself is waited for.
      await expect.poll(() => put.length, { timeout: 30_000 }).toBe(names.length);
      await noted(page, names.length);
    } finally {
      bench.store.getBlob = getBlob;
    }
    // The next time it is there, and is not sent.
    await bench.store.rename();
    await page.reload();
    await noted(page, names.length);
    expect(put).toHaveLength(names.length);
  });
});
