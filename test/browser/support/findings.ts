import type { Page } from 'playwright-core';

/** Waits until the computing has ended, random draws included. */
export async function waitForFindings(page: Page): Promise<void> {
  await page.waitForSelector('.faces');
  await page.waitForFunction(() => document.querySelector('main .working') === null, undefined, { timeout: 60_000 });
}
