import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type BenchParts, benchApp } from '../../../src/edge/server/app.ts';
import { openMemoryStore } from '../../../src/edge/store/memory/open.ts';
import type { Store } from '../../../src/edge/store/store.ts';

export const PORT = 4870;
export const HOST = `127.0.0.1:${PORT}`;

/** A page folder with one HTML file and one asset, and a secret beside it. */
export function smallPage(folder: string): string {
  const page = join(folder, 'page');
  mkdirSync(join(page, 'assets'), { recursive: true });
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>bench</title>');
  writeFileSync(join(page, 'assets', 'main-1a2b.js'), 'export {};');
  writeFileSync(join(folder, 'secret.txt'), 'not for the page');
  return page;
}

/** The address that a request comes from unless it says otherwise. */
export const THIS_COMPUTER = '127.0.0.1';
/** A phone on the local network, and the address of the bench on it. */
export const PHONE = '192.168.7.20';
export const BENCH_ADDRESS = '192.168.7.1';

export function benchOn(page: string, store: Store = openMemoryStore(), more: Partial<BenchParts> = {}) {
  return benchApp({ store, pageFolder: page, port: () => PORT, ...more });
}

export type BenchOn = ReturnType<typeof benchOn>;

export interface Asked {
  method?: string;
  headers?: Record<string, string>;
  body?: string | Uint8Array<ArrayBuffer>;
  /** Address that it comes from. */
  from?: string;
}

/** Asks the bench like a browser on the same computer does, or like one at the address `from`. */
export async function ask(app: BenchOn, path: string, { from = THIS_COMPUTER, headers, ...init }: Asked = {}) {
  const socket = { remoteAddress: from };
  return app.request(
    `http://${HOST}${path}`,
    { ...init, headers: { host: HOST, ...headers } },
    { incoming: { socket } },
  );
}

export function post(app: BenchOn, body: unknown, headers: Record<string, string> = {}) {
  return postTo(app, '/api/entries', body, { headers });
}

/** Posts JSON to any address. */
export function postTo(app: BenchOn, path: string, body: unknown, { headers, ...asked }: Asked = {}) {
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  return ask(app, path, {
    ...asked,
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: text,
  });
}
