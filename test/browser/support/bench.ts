import type { Browser, BrowserContext, Page } from 'playwright-core';
import { demoFolder, pageFolder } from '../../../src/edge/files/projectRoot.ts';
import { readFolder } from '../../../src/edge/files/readFolder.ts';
import { REST_BEFORE_DRAWS_MS } from '../../../src/edge/page/store/restBeforeDraws.ts';
import { type BenchParts, benchApp } from '../../../src/edge/server/app.ts';
import { listen } from '../../../src/edge/server/listen.ts';
import { openMemoryStore } from '../../../src/edge/store/memory/open.ts';
import type { Store } from '../../../src/edge/store/store.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { theChromium } from './chromium.ts';

/** A bench with the demo on its shelf, and a browser to look at it. */
export interface Bench {
  address: string;
  store: Store;
  browser: Browser;
  /** A fresh page. Errors of the page end up in `troubles`. */
  open(path: string, look?: Look): Promise<Opened>;
  /** Closes every page, and with it whatever it still computes. */
  closePages(): Promise<void>;
  stop(): Promise<void>;
}

export interface Look {
  width?: number;
  height?: number;
  colorScheme?: 'light' | 'dark';
  /** No service worker, as over plain http from another computer; requests can then be held up or turned away. */
  plain?: boolean;
  /** Let random draws begin as they do for everybody. Without it the page never comes to rest before them, which spares seconds. */
  draws?: boolean;
}

export interface Opened {
  page: Page;
  context: BrowserContext;
  /** Uncaught errors, and what the browser itself complained of. */
  troubles: string[];
}

/** Serves the built page over a forgetful store, and has the browser look at it. */
export async function startBench({
  demo = true,
  parts = () => ({}),
}: {
  demo?: boolean;
  /** What else the server is made of; it is given the port once there is one. */
  parts?: (port: () => number) => Partial<BenchParts>;
} = {}): Promise<Bench> {
  const store = openMemoryStore();
  if (demo) {
    const read = readPackage(readFolder(demoFolder()), { now: new Date().toISOString() });
    await store.append(read.trial, read.entries);
  }
  let port = 0;
  const server = await listen(benchApp({ store, pageFolder: pageFolder(), port: () => port, ...parts(() => port) }), 0);
  port = server.port;
  const browser = await theChromium();
  const closePages = async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
  };
  return {
    address: server.address,
    store,
    browser,
    open: (path, look = {}) => openPage(browser, `${server.address}${path}`, look),
    closePages,
    async stop() {
      await closePages();
      await server.stop();
    },
  };
}

async function openPage(browser: Browser, address: string, look: Look): Promise<Opened> {
  const context = await browser.newContext({
    viewport: { width: look.width ?? 1440, height: look.height ?? 1000 },
    colorScheme: look.colorScheme ?? 'light',
    reducedMotion: 'reduce',
    acceptDownloads: true,
    serviceWorkers: look.plain ? 'block' : 'allow',
  });
  if (!look.draws) await context.addInitScript(neverRest, REST_BEFORE_DRAWS_MS);
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  await page.goto(address);
  await page.waitForSelector('h1');
  return { page, context, troubles };
}

/** Runs in the page: timers of just this length never ring. */
function neverRest(rest: number): void {
  const later = globalThis.setTimeout;
  const unlessRest = (act: TimerHandler, wait?: number, ...more: unknown[]) =>
    wait === rest ? 0 : later(act, wait, ...more);
  globalThis.setTimeout = unlessRest as typeof setTimeout;
}
