import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, startBench } from './support/bench.ts';
import { waitForFindings } from './support/findings.ts';

let bench: Bench;
const INSIDE = '/trial/fenwater-2-awg/inside';

beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

const handle = (page: Page, name: RegExp) => page.getByRole('button', { name });

async function waitForOpen(page: Page, names: readonly string[]): Promise<void> {
  await page.waitForFunction(
    (wanted) =>
      [...document.querySelectorAll('.turn[aria-expanded=true]')].map((each) => each.textContent).join() === wanted,
    names.join(),
  );
}

describe('the browser’s own buttons', () => {
  it('back closes an opened sheet, and forward opens it', async () => {
    const { page, troubles } = await bench.open(INSIDE);
    await waitForFindings(page);
    const [first, second] = await page.locator('.turn').allTextContents();
    await page.locator('.turn').nth(0).click();
    await page.locator('.turn').nth(1).click();
    await waitForOpen(page, [first!, second!]);
    await page.goBack();
    await waitForOpen(page, [first!]);
    await page.goBack();
    await waitForOpen(page, []);
    expect(new URL(page.url()).pathname + new URL(page.url()).hash).toBe(INSIDE);
    await page.goForward();
    await waitForOpen(page, [first!]);
    await page.goForward();
    await waitForOpen(page, [first!, second!]);
    expect(troubles).toEqual([]);
  });

  it('closing by hand takes the step back, so that the next back leaves the place', async () => {
    const { page } = await bench.open('/');
    await page.getByRole('link', { name: /Six 2 AWG/ }).click();
    await waitForFindings(page);
    await handle(page, /Quill/).click();
    await page.locator('.sheet').waitFor();
    await handle(page, /Quill/).click();
    await page.waitForURL(new RegExp(`${INSIDE}$`));
    expect(await page.locator('.sheet').count()).toBe(0);
    await page.goBack();
    await page.getByRole('heading', { name: 'One cable, six fields' }).waitFor();
  });

  it('several open sheets outlive a reload', async () => {
    const { page } = await bench.open(INSIDE);
    await waitForFindings(page);
    await page.locator('.turn').nth(0).click();
    await page.locator('.turn').nth(2).click();
    const open = [await page.locator('.turn').nth(0).textContent(), await page.locator('.turn').nth(2).textContent()];
    await page.reload();
    await waitForFindings(page);
    await waitForOpen(page, open as string[]);
  });

  it('the link past the head of the page closes nothing', async () => {
    const { page } = await bench.open(`${INSIDE}#quill`);
    await waitForFindings(page);
    await page.locator('.sheet').waitFor();
    await page.getByRole('link', { name: 'To the content' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/#main$/);
    expect(await page.locator('.sheet').count()).toBe(1);
  });
});
