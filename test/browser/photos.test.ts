import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { readPackage } from '../../src/report/package/readPackage.ts';
import { unzipPackage } from '../../src/report/package/zip.ts';
import { freshBench } from './support/atBench.ts';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** A picture of two colours, so that a small one of it can be told from nothing. */
function picture(): Buffer {
  const png = new PNG({ width: 900, height: 600 });
  for (let at = 0; at < png.data.length; at += 4)
    png.data.set(at % 3600 < 1800 ? [180, 98, 58, 255] : [47, 52, 54, 255], at);
  return PNG.sync.write(png);
}

describe('a photo', () => {
  it('is seen small where it belongs, opens large, goes out with the data and comes in again', async () => {
    const { page, trial, troubles } = await freshBench(bench, ['KR']);
    await page.locator('.proof-shots > summary').click();
    await page
      .getByLabel(/Photo of the print of/)
      .setInputFiles({ name: 'print.png', mimeType: 'image/png', buffer: picture() });
    const small = page.locator('.proof-shots .photo').first();
    await small.locator('img').waitFor();
    await small.click();
    await page.locator('dialog img.photo-large').waitFor();
    await page.getByRole('button', { name: 'Close' }).click();

    await page.goto(`${bench.address}/trial/${trial}/history`);
    await page.locator('.journal .photo img').first().waitFor();
    await page.goto(`${bench.address}/trial/${trial}/plan`);
    await page.locator('.shots > summary').click();
    await page.locator('.shots .photo img').first().waitFor();

    await page.goto(`${bench.address}/trial/${trial}/inside`);
    await page.getByText(/With the photo, \d+\skB/).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the data as .zip' }).click(),
    ]);
    const file = join(mkdtempSync(join(tmpdir(), 'cupel-photos-')), 'out.zip');
    await download.saveAs(file);
    const read = readPackage(unzipPackage(new Uint8Array(readFileSync(file))), { now: new Date().toISOString() });
    expect(read.refusals).toEqual([]);
    const [large, ...more] = read.photos.filter(({ small }) => small !== true);
    expect([Buffer.from(large!.bytes).equals(picture()), more.length]).toEqual([true, 0]);
    expect(troubles).toEqual([]);

    const elsewhere = await startBench({ demo: false });
    const shelf = await elsewhere.open('/');
    await shelf.page.locator('input[type=file]').first().setInputFiles(file);
    await shelf.page.getByText('One photo came along.').waitFor();
    expect(await elsewhere.store.getBlob(trial, large!.name)).toEqual(new Uint8Array(picture()));
    await elsewhere.stop();
  });
});
