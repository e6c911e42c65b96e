import type { Page } from 'playwright-core';

/**
 * How many px the page is wider than a window that was made this wide, once it has been laid out anew. From narrow to wide: what
 * measures itself is then never wider than its place for a moment.
 */
export async function overAt(page: Page, width: number): Promise<number> {
  await page.setViewportSize({ width, height: 1000 });
  return page.evaluate(
    () =>
      new Promise<number>((settle) => {
        const measure = () => settle(Math.max(0, document.documentElement.scrollWidth - innerWidth));
        requestAnimationFrame(() => requestAnimationFrame(measure));
      }),
  );
}
