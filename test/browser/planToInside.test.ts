import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { quantityInHand, storedBodies, valueInHand, waitForDone } from './support/atBench.ts';
import { waitForOutlook } from './support/atPlan.ts';
import { type Bench, startBench } from './support/bench.ts';
import { waitForFindings } from './support/findings.ts';

let bench: Bench;

beforeAll(async () => {
  bench = await startBench({ demo: false });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** More steps than any place has controls. */
const MOST_STEPS = 400;

/** Presses Tab until what has the focus is called so. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let steps = 0; steps < MOST_STEPS; steps += 1) {
    await page.keyboard.press('Tab');
    const called = await page.evaluate(() => {
      const at = document.activeElement;
      const label = at instanceof HTMLInputElement ? (at.labels?.[0]?.textContent ?? '') : '';
      return `${at?.getAttribute('aria-label') ?? ''} ${label} ${at?.textContent ?? ''}`.trim();
    });
    if (name.test(called)) return;
  }
  throw new Error(`Tab never comes to ${name}`);
}

async function fill(page: Page, name: RegExp, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}

describe('from an empty shelf over plan and bench to what is inside', () => {
  it('goes by keyboard alone', async () => {
    const { page, troubles } = await bench.open('/');
    await page.locator('.start-trial[open]').waitFor();
    await fill(page, /^Title/, 'By keyboard');
    await fill(page, /^How many cables/, '1');
    await fill(page, /^Size on the labels/, '2 AWG');
    await fill(page, /^Metal on the labels/, 'OFC');
    await fill(page, /^Length bought/, '2 m');
    await tabTo(page, /^Make the plan/);
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/plan$/);
    await waitForOutlook(page);

    // The choice of everything that is ticked stands last; the next one round is the least work.
    await tabTo(page, /^As ticked below/);
    await page.keyboard.press('ArrowRight');
    await page.getByLabel('Droop over an edge').and(page.locator(':not(:checked)')).waitFor();
    await waitForOutlook(page);
    await fill(page, /^Maker, Cable 1/, 'Fenmarsh');
    await page.keyboard.press('Enter');
    await page.locator('.pieces caption', { hasText: 'Fenmarsh' }).waitFor();
    await tabTo(page, /^Accept this cut list/);
    await page.keyboard.press('Enter');
    await page.getByText(/^All \d pieces are on record/).waitFor();

    await tabTo(page, /^Bench/);
    await page.keyboard.press('Enter');
    await page.locator('#bench-value').waitFor();
    const wanted = await page.evaluate(() =>
      Number(/of (\d+)/.exec(document.querySelector('.progress b')?.textContent ?? '')?.[1]),
    );
    expect(wanted).toBeGreaterThan(2);
    for (let done = 0; done < wanted; done += 1) {
      await waitForDone(page, done);
      expect(await quantityInHand(page)).not.toBe('');
      await page.keyboard.type(await valueInHand(page));
      await page.keyboard.press('Enter');
    }
    await waitForDone(page, wanted);

    await tabTo(page, /^Inside/);
    await page.keyboard.press('Enter');
    await waitForFindings(page);
    expect(await page.locator('.faces').textContent()).toContain('Fenmarsh');
    const trial = decodeURIComponent(new URL(page.url()).pathname.split('/')[2]!);
    expect(await storedBodies(bench.store, trial, 'reading', wanted)).toHaveLength(wanted);
    expect(troubles).toEqual([]);
  });
});
