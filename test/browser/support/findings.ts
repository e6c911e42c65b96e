import type { Page } from 'playwright-core';

/** Waits until the cables stand on the page; the random draws behind them may still go on. */
export async function waitForFindings(page: Page): Promise<void> {
  await page.waitForSelector('.faces li', { timeout: 60_000 });
}

/** Waits until the figures have been held against random draws. */
export async function waitForDraws(page: Page): Promise<void> {
  await page.locator('.held').waitFor({ timeout: 120_000 });
}
