import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { tokenHash } from '../../src/edge/server/share/token.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';

const TRIAL = '/trial/fenwater-2-awg';
const TOKEN = 'a-token-of-a-device-that-only-reads';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
  await bench.store.addDevice({
    id: 'reader-1',
    name: 'Field phone',
    role: 'reader',
    tokenHash: tokenHash(TOKEN),
    at: '2026-11-25T10:00:00Z',
  });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** A phone that was let in to read; over plain http, so without a service worker. */
async function reader(path: string): Promise<{ page: Page; context: BrowserContext; asked: string[] }> {
  const { page, context } = await bench.open('/pair', { width: 390, height: 844, plain: true });
  await page.evaluate((token) => localStorage.setItem('cupel.token', token), TOKEN);
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto(`${bench.address}${path}`);
  return { page, context, asked };
}

const acts = (page: Page) => page.locator('main').locator('button, input, textarea, select').count();

describe('a device that only reads', () => {
  it('is offered nothing on the shelf that it may not do, and is told so', async () => {
    const { page } = await reader('/');
    await page.getByRole('link', { name: /Six 2 AWG/ }).waitFor();
    await page.getByText('This device only reads: it shows what was published.').waitFor();
    expect(await page.locator('h1').textContent()).toBe(
      'One trial is published. Open it, or ask about a single cable.',
    );
    const words = await page.locator('main').textContent();
    expect(words).not.toMatch(/Start a trial|Bring readings in|put away|Add a phone/);
    await page.getByLabel('What the label says').fill('2 AWG');
    expect(await page.getByRole('button', { name: /Keep as the start/ }).count()).toBe(0);
    expect(await accessibilityBreaches(page)).toEqual([]);
  });

  it.each([
    ['plan', 'The plan is not published.'],
    ['bench', 'This device only reads.'],
    ['bend#judge', 'This device only reads.'],
    ['standing', 'Standing is not published.'],
  ])('finds on %s a sentence, and nothing to do', async (place, sentence) => {
    const { page } = await reader(`${TRIAL}/${place}`);
    await page.getByRole('heading', { level: 1, name: sentence }).waitFor();
    await page.getByText(/^Published so far:/).waitFor();
    expect(await acts(page)).toBe(0);
    expect(await page.locator('main').textContent()).not.toMatch(/shortfall|\d\s?%/);
    expect(await page.locator('nav.places li').allTextContents()).not.toContain('Plan');
    expect(await accessibilityBreaches(page)).toEqual([]);
  });

  it('sees the places that a sealed part holds', async () => {
    const { page } = await reader(`${TRIAL}/bench`);
    await page.getByRole('link', { name: 'Bend', exact: true }).last().click();
    await page.waitForURL(/\/bend$/);
    await page.locator('main svg:visible').first().waitFor({ timeout: 60_000 });
    expect(await page.locator('h1').textContent()).not.toMatch(/not published|only reads/);
  });

  it('makes the web page and the cards once the bench computer is gone, with fonts that it read before', async () => {
    const { page } = await reader(`${TRIAL}/publish`);
    await page.locator('.card-frame svg').waitFor({ timeout: 120_000 });
    await page.waitForFunction(() => {
      const read = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
      return read.filter((file) => file.initiatorType === 'fetch' && file.name.endsWith('.woff2')).length >= 6;
    });
    // Every request from here on goes nowhere, and nothing of the browser's own keeping answers in its place.
    await page.route('**/*', (route) => (route.request().url().startsWith('http') ? route.abort() : route.continue()));
    for (const [name, file] of [
      ['Save as a web page', /\.html$/],
      ['Save as PNG', /\.png$/],
    ] as const) {
      const [came] = await Promise.all([
        page.waitForEvent('download', { timeout: 30_000 }),
        page.getByRole('button', { name, exact: true }).click(),
      ]);
      expect(came.suggestedFilename()).toMatch(file);
    }
    await page.getByRole('button', { name: 'PDF, A4', exact: true }).click();
    await page.getByText(/The bench computer makes this file, and it does not answer now/).waitFor();
    expect(await page.locator('main').textContent()).not.toContain('Failed to fetch');
    await page.getByRole('button', { name: 'Save the data package', exact: true }).click();
    await page.locator('.data-package [role="status"]', { hasText: 'does not answer now' }).waitFor();
    expect(await page.getByText('does not answer now').count(), 'one line in all').toBe(1);
    await page.unroute('**/*');
    await page.getByText('does not answer now').waitFor({ state: 'detached', timeout: 30_000 });
  });
});
