/**
 * Keeps the page itself on the device, so that it opens when the bench computer cannot be reached. It holds no data: what
 * goes to /api passes by untouched and is never kept here.
 */
export {};

/** Addresses of all files of the page, and a hash over their content; the build puts both in. */
declare const SHELL_FILES: readonly string[];
declare const SHELL_HASH: string;

const worker = self as unknown as ServiceWorkerGlobalScope;
/** One cache for each build of the page. */
const CACHE = `cupel-page-${SHELL_HASH}`;
/** The one HTML file, which every place of the page is shown by. */
const HTML = '/';
/** Once, so that the list stands once in what is built. */
const FILES = SHELL_FILES;
/** How long the bench computer may take before the page is opened from what is kept, ms. A computer that is gone never answers. */
const PATIENCE_MS = 3000;

worker.addEventListener('install', (event) => event.waitUntil(keepPage()));
worker.addEventListener('activate', (event) => event.waitUntil(forgetOlder()));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== worker.location.origin || pathname.startsWith('/api/')) return;
  if (request.mode === 'navigate') event.respondWith(freshOrKept(request));
  else if (FILES.includes(pathname)) event.respondWith(keptOrFresh(request));
});

async function keepPage(): Promise<void> {
  const cache = await caches.open(CACHE);
  await cache.addAll(FILES.map((path) => new Request(path, { cache: 'reload' })));
}

async function forgetOlder(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/** Files whose names hold a hash of their content cannot be out of date. */
async function keptOrFresh(request: Request): Promise<Response> {
  return (await caches.match(request, { cacheName: CACHE })) ?? fetch(request);
}

async function freshOrKept(request: Request): Promise<Response> {
  const fresh = fetch(request);
  const tooLate = new Promise<null>((settle) => setTimeout(() => settle(null), PATIENCE_MS));
  const first = await Promise.race([fresh.catch(() => null), tooLate]);
  return first ?? (await caches.match(HTML, { cacheName: CACHE })) ?? fresh;
}
