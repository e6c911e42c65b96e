import type { Page } from 'playwright-core';

/** Opens all that is folded on the page, so that nothing escapes a check. */
export async function openAllFolds(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
}
