import type { Page } from 'playwright-core';
import type { Store } from '../../../src/edge/store/store.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { HEADS, READS } from './benchTrial.ts';

/** What is in hand: the quantity by its name in the table. */
export async function quantityInHand(page: Page): Promise<string> {
  const head = (await page.locator('.in-hand .what').textContent()) ?? '';
  const quantity = HEADS[head];
  if (quantity === undefined) throw new Error(`the bench heads a quantity "${head}" that the test does not know`);
  return quantity;
}

/** The value that the quantity in hand reads. */
export async function valueInHand(page: Page): Promise<string> {
  return READS[await quantityInHand(page)]![0];
}

/** Waits until so many readings are told as done. */
export async function waitForDone(page: Page, done: number): Promise<void> {
  await page.waitForFunction(
    (start) => document.querySelector('.progress b')?.textContent?.startsWith(start) ?? false,
    `${done} of `,
  );
}

/** Waits until the head says that everything is on the bench computer. */
export async function waitForAllThere(page: Page): Promise<void> {
  await page
    .locator('.kept-where[data-state="there"]', { hasText: /on the bench computer/ })
    .first()
    .waitFor();
}

export const bodiesOf = (entries: readonly Entry[], kind: string) =>
  entries.filter((entry) => entry.kind === kind).map((entry) => entry.body);

/** Bodies of a kind that the store holds, once there are so many. */
export async function storedBodies(store: Store, trial: string, kind: string, count: number) {
  for (let tries = 0; tries < 200; tries += 1) {
    const bodies = bodiesOf(await store.entries(trial), kind);
    if (bodies.length >= count) return bodies;
    await new Promise((settle) => setTimeout(settle, 50));
  }
  return bodiesOf(await store.entries(trial), kind);
}
