import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Hono } from 'hono';
import { benchApp } from '../../../src/edge/server/app.ts';
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

export function benchOn(page: string, store: Store = openMemoryStore()): Hono {
  return benchApp({ store, pageFolder: page, port: () => PORT });
}

/** Asks the bench like a browser on the same computer does. */
export function ask(
  app: Hono,
  path: string,
  init: { method?: string; headers?: Record<string, string>; body?: string } = {},
) {
  return app.request(`http://${HOST}${path}`, { ...init, headers: { host: HOST, ...init.headers } });
}

export function post(app: Hono, body: unknown, headers: Record<string, string> = {}) {
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  return ask(app, '/api/entries', {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: text,
  });
}
