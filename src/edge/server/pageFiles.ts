import { readFile, stat } from 'node:fs/promises';
import { extname, join, resolve, sep } from 'node:path';
import type { Handler } from 'hono';
import { refuse } from './refusal.ts';

const CONTENT_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.webmanifest': 'application/manifest+json',
  '.txt': 'text/plain; charset=utf-8',
};

/** Addresses that the page itself shows places for: they all get the one HTML file. */
const PLACES = /^\/($|trial\/|(cables|pair|phones)$)/;

/** Addresses that programs ask, and files of the page: whoever asks for one that is not there wants no page for it. */
const NO_PAGE = /^\/(api|assets)(\/|$)/;

/** True for somebody at a browser who went to an address that is none: the page itself tells them so. */
function wantsPage(accept: string | undefined, path: string): boolean {
  return (accept ?? '').includes('text/html') && !NO_PAGE.test(path);
}

/**
 * Hands out the built page from `folder`: its files by name, and its one HTML file at every place it has. A browser gets
 * that file at an unknown address too, with status 404; a program gets the refusal as data.
 */
export function pageFiles(folder: string): Handler {
  return async (c) => {
    const path = URL.canParse(c.req.url) ? decoded(new URL(c.req.url).pathname) : null;
    if (path !== null && !PLACES.test(path)) {
      const bytes = await fileWithin(folder, path);
      if (bytes !== null) return fileAnswer(path, bytes);
    }
    if (path !== null && PLACES.test(path)) {
      const bytes = await fileWithin(folder, '/index.html');
      if (bytes !== null) return fileAnswer('/index.html', bytes);
    }
    if (wantsPage(c.req.header('accept'), c.req.path)) {
      const bytes = await fileWithin(folder, '/index.html');
      if (bytes !== null) return fileAnswer('/index.html', bytes, 404);
    }
    return refuse(c, 404, {
      found: `the address ${(path ?? c.req.path).slice(0, 200)}`,
      expected: 'the shelf (/) or a place of a trial (/trial/…)',
      advice: 'Start from the shelf.',
    });
  };
}

function fileAnswer(path: string, bytes: Uint8Array<ArrayBuffer>, status = 200): Response {
  const type = CONTENT_TYPES[extname(path)] ?? 'application/octet-stream';
  // Names under /assets/ hold a hash of their content and so never change their meaning.
  const keep = path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
  return new Response(bytes, { status, headers: { 'content-type': type, 'cache-control': keep } });
}

/** A file's bytes, or null when there is none, or when the name would lead out of the folder. */
async function fileWithin(folder: string, path: string): Promise<Uint8Array<ArrayBuffer> | null> {
  const top = resolve(folder);
  const full = join(top, path);
  if (!full.startsWith(top + sep) || path.includes('\0')) return null;
  try {
    return (await stat(full)).isFile() ? new Uint8Array(await readFile(full)) : null;
  } catch {
    return null;
  }
}

function decoded(path: string): string | null {
  try {
    return decodeURIComponent(path);
  } catch {
    return null;
  }
}
