import type { Page } from 'playwright-core';
import type { Store } from '../../../src/edge/store/store.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import type { Bench, Look } from './bench.ts';
import { HEADS, plannedTrial, READS } from './benchTrial.ts';

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

/** Longest that an entry may take to the store, ms: it is told as kept before it is there. */
const PATIENCE = 30_000;

/** Bodies of a kind that the store holds, once there are so many. @throws when there never are */
export async function storedBodies(store: Store, trial: string, kind: string, count: number) {
  for (const end = Date.now() + PATIENCE; ; ) {
    const bodies = bodiesOf(await store.entries(trial), kind);
    if (bodies.length >= count) return bodies;
    if (Date.now() > end)
      throw new Error(`the store has ${bodies.length} ${kind} entries of ${trial}, expected ${count}`);
    await new Promise((settle) => setTimeout(settle, 50));
  }
}

let trials = 0;

/** A trial that no test has used yet, on the shelf. */
export async function freshTrial(bench: Bench, codes: readonly string[], repeats = 1): Promise<string> {
  trials += 1;
  const trial = `t${trials}`;
  await bench.store.append(trial, plannedTrial(trial, codes, repeats));
  return trial;
}

/** A fresh trial with its bench open, and everything told as being on the bench computer. */
export async function freshBench(bench: Bench, codes: readonly string[] = ['KR', 'VN'], repeats = 1, look: Look = {}) {
  const trial = await freshTrial(bench, codes, repeats);
  const opened = await bench.open(`/trial/${trial}/bench`, look);
  await opened.page.locator('#bench-value').waitFor();
  await waitForAllThere(opened.page);
  return { trial, ...opened };
}
