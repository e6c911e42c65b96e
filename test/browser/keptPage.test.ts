import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { localAddresses } from '../../src/edge/server/share/localAddresses.ts';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** Waits until the browser has kept the page, and answers the names of what it kept. */
async function kept(page: Page): Promise<{ names: string[]; addresses: string[] }> {
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active?.state === 'activated');
  return page.evaluate(async () => {
    const names = await caches.keys();
    const cache = await caches.open(names[0] ?? '');
    return { names, addresses: (await cache.keys()).map(({ url }) => new URL(url).pathname) };
  });
}

describe('the page without the bench computer', () => {
  it('opens all the same, at any of its places, and says that the bench computer does not answer', async () => {
    const { page, context, troubles } = await bench.open('/');
    await kept(page);
    await context.setOffline(true);
    await page.reload();
    await page.waitForSelector('h1');
    expect(await page.title()).toContain('Cupel');
    expect(await page.textContent('body')).toMatch(/does not answer|offline|no network/i);
    await page.goto(`${bench.address}/trial/fenwater-2-awg/inside`);
    await page.waitForSelector('h1');
    await context.setOffline(false);
    await page.goto(`${bench.address}/`);
    await page.getByText('Six 2 AWG battery cables').first().waitFor();
    // The browser itself complains of every request that found no network; nothing else may go wrong.
    expect(troubles.filter((text) => !/ERR_INTERNET_DISCONNECTED|Failed to load resource/.test(text))).toEqual([]);
  });

  it('keeps every file of the page once, and no data', async () => {
    const { page } = await bench.open('/trial/fenwater-2-awg/inside');
    const { names, addresses } = await kept(page);
    expect(names).toHaveLength(1);
    expect(names[0]).toMatch(/^cupel-page-[0-9a-f]{16}$/);
    expect(addresses).toContain('/');
    expect(addresses.filter((path) => path.endsWith('.js')).length).toBeGreaterThan(0);
    expect(addresses.filter((path) => path.startsWith('/api/') || path.endsWith('.woff'))).toEqual([]);
    const asked = await page.evaluate(async () => {
      await fetch('/api/trials');
      return (await caches.match('/api/trials')) === undefined;
    });
    expect(asked).toBe(true);
  });

  it('is not kept, and goes on as before, over plain http from another computer', async () => {
    const [address] = localAddresses();
    const context = await bench.browser.newContext();
    const page = await context.newPage();
    // Any name but a loopback one makes the browser take the page for a foreign computer's; the network is played here.
    const foreign = `http://${address ?? '192.168.7.1'}:4870`;
    await page.route(`${foreign}/**`, async (route) => {
      const path = new URL(route.request().url()).pathname;
      const answer = await fetch(`${bench.address}${path}`);
      const headers = Object.fromEntries(answer.headers);
      await route.fulfill({ status: answer.status, headers, body: Buffer.from(await answer.arrayBuffer()) });
    });
    await page.goto(`${foreign}/`);
    await page.waitForSelector('h1');
    expect(await page.evaluate(() => [isSecureContext, 'serviceWorker' in navigator])).toEqual([false, false]);
  });
});
