import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { sharing } from '../../src/edge/server/share/sharing.ts';
import { accessibilityBreaches } from './support/axe.ts';
import { type Bench, startBench } from './support/bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench({
    // Nothing is listened at: the phone of this test comes over loopback, passed on as by a proxy.
    parts: (port) => ({
      sharing: sharing({
        port,
        addresses: () => ['192.168.7.1'],
        listenAt: async (address) => ({ port: port(), address, stop: async () => {} }),
      }),
    }),
  });
});
afterEach(() => bench.closePages());
afterAll(() => bench.stop());

/** A page as a phone sees it, which the bench computer does not take for itself. */
async function onPhone(path: string): Promise<Page> {
  const context = await bench.browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    extraHTTPHeaders: { 'x-forwarded-for': '192.168.7.20' },
  });
  const page = await context.newPage();
  await page.goto(`${bench.address}${path}`);
  await page.waitForSelector('h1');
  return page;
}

describe('adding a phone', () => {
  it('leads from the shelf to the code, and from the code to the shelf on the phone', async () => {
    const { page, troubles } = await bench.open('/');
    await page.getByRole('link', { name: 'Add a phone' }).click();
    await page.getByRole('heading', { name: 'Only this computer reaches the bench.' }).waitFor();
    await page.getByRole('button', { name: 'Show a code' }).click();
    const code = (await page.locator('.code b').textContent()) ?? '';
    expect(code).toMatch(/^[3-9A-Y]{3} [3-9A-Y]{3}$/);
    await page.getByRole('img', { name: 'QR code of http://192.168.7.1' }).waitFor();
    expect(await accessibilityBreaches(page)).toEqual([]);

    const phone = await onPhone('/');
    await phone.getByRole('link', { name: 'Add this phone with a code' }).click();
    await phone.getByLabel('Code that the bench computer shows').fill('AAA AAA');
    await phone.getByLabel('Name by which it stands in the list').fill('Field phone');
    await phone.getByRole('button', { name: 'Add this phone' }).click();
    await phone.getByRole('alert').waitFor();
    expect(await phone.getByRole('alert').textContent()).toContain('another code than the one that is shown');
    expect(await accessibilityBreaches(phone)).toEqual([]);
    await phone.getByLabel('Code that the bench computer shows').fill(code.toLowerCase());
    await phone.getByRole('button', { name: 'Add this phone' }).click();
    await phone.getByRole('link', { name: /Six 2 AWG/ }).waitFor();
    expect(await phone.getByRole('link', { name: 'Add a phone' }).count()).toBe(0);
    await phone.reload();
    await phone.getByRole('link', { name: /Six 2 AWG/ }).waitFor();

    await page.getByRole('row', { name: /Field phone/ }).waitFor();
    expect(await page.locator('.code').count()).toBe(0);
    await page.getByRole('button', { name: 'Take off Field phone' }).click();
    await page.getByRole('cell', { name: 'taken off' }).waitFor();
    await phone.goto(`${bench.address}/`);
    await phone.getByRole('link', { name: 'Add this phone with a code' }).waitFor();
    expect(troubles).toEqual([]);
  });

  it('takes the code from the address that the QR code holds', async () => {
    const { page } = await bench.open('/phones');
    await page.getByRole('radio', { name: 'reads', exact: true }).check();
    await page.getByRole('button', { name: /Show a/ }).click();
    const code = ((await page.locator('.code b').textContent()) ?? '').replace(' ', '');
    const phone = await onPhone(`/pair#${code}`);
    expect(await phone.getByLabel('Code that the bench computer shows').inputValue()).toBe(code);
    await phone.getByRole('button', { name: 'Add this phone' }).click();
    await phone.getByRole('link', { name: /Six 2 AWG/ }).waitFor();
    const devices = await bench.store.devices();
    expect(devices.find((device) => device.revokedAt === null)?.role).toBe('reader');
  });

  it.each([360, 1440])('fits a screen of %d px', async (width) => {
    for (const path of ['/phones', '/pair']) {
      const { page } = await bench.open(path, { width });
      if (path === '/phones') await page.getByRole('button', { name: /Show/ }).click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    }
  });
});
