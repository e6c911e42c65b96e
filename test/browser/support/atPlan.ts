import type { Page } from 'playwright-core';
import { waitForAllThere } from './atBench.ts';
import type { Bench } from './bench.ts';
import { plannedTrial } from './benchTrial.ts';

/** Waits until the plan says what it would show and what the least work is. */
export async function waitForOutlook(page: Page): Promise<void> {
  await page.locator('.smallest').first().waitFor({ timeout: 60_000 });
  await page.locator('.look-ahead[aria-busy=false]').waitFor({ timeout: 60_000 });
}

/** A fresh trial of two pieces on the shelf, and its plan open. */
export async function openFreshPlan(bench: Bench, trial: string) {
  await bench.store.append(trial, plannedTrial(trial, ['KR', 'VN']));
  const opened = await bench.open(`/trial/${trial}/plan`);
  await waitForOutlook(opened.page);
  await waitForAllThere(opened.page);
  return { trial, ...opened };
}

/** A first trial of so many 2 AWG cables from the shelf, its plan open and worked out. Answers the trial's name. */
export async function startTrial(page: Page, cables = 2, title = 'Winter trial'): Promise<string> {
  const fold = page.locator('.start-trial');
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click();
  await page.getByLabel('Title').fill(title);
  await page.getByLabel('How many cables').fill(String(cables));
  await page.getByLabel('Size on the labels').fill('2 AWG');
  await page.getByLabel('Metal on the labels').fill('OFC');
  await page.getByRole('button', { name: 'Make the plan' }).click();
  await page.waitForURL(/\/trial\/.+\/plan/);
  await waitForOutlook(page);
  await waitForAllThere(page);
  return decodeURIComponent(new URL(page.url()).pathname.split('/')[2]!);
}

/** Puts text on the page's own clipboard event, as a paste from a spreadsheet does. */
export async function paste(page: Page, selector: string, text: string): Promise<void> {
  await page.locator(selector).evaluate((field, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    field.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, text);
}

/** Every page of the file that the printer would get, as its paper's size in points. */
export async function printedPages(page: Page): Promise<string[]> {
  const file = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  return [...file.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)].map(
    ([, width, height]) => `${Math.round(Number(width))}×${Math.round(Number(height))}`,
  );
}
