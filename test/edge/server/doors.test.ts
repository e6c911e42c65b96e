import { describe, expect, it } from 'vitest';
import { SECURITY_HEADERS } from '../../../src/edge/server/headers.ts';
import { openMemoryStore } from '../../../src/edge/store/memory/open.ts';
import { entryOf } from '../../contract/store.ts';
import { tempFolder } from '../../support/tempFolder.ts';
import { ask, benchOn, HOST, PORT, post, smallPage } from './bench.ts';

const page = smallPage(tempFolder());
const app = benchOn(page);

describe('who may ask', () => {
  it.each([HOST, `localhost:${PORT}`, `LOCALHOST:${PORT}`, `[::1]:${PORT}`])('%s may', async (host) => {
    expect((await ask(app, '/api/trials', { headers: { host } })).status).toBe(200);
  });

  it.each(['', 'example.org', `example.org:${PORT}`, '127.0.0.1', '127.0.0.1:80', `127.0.0.1.example.org:${PORT}`])(
    'the host "%s" may not',
    async (host) => {
      for (const path of ['/', '/api/trials', '/assets/main-1a2b.js']) {
        const answer = await ask(app, path, { headers: { host } });
        expect(answer.status).toBe(403);
        expect(((await answer.json()) as { error: { expected: string } }).error.expected).toContain(HOST);
      }
    },
  );

  const changes = { trial: 'fen', entries: [entryOf(1)] };
  it.each([`http://${HOST}`, `http://localhost:${PORT}`])('a change from the page at %s is kept', async (origin) => {
    expect((await post(benchOn(page), changes, { origin })).status).toBe(200);
  });

  it.each(['https://example.org', 'null', `https://${HOST}`, 'http://127.0.0.1:9', `http://${HOST}.example.org`])(
    'a change from the page at %s is not',
    async (origin) => {
      const store = openMemoryStore();
      expect((await post(benchOn(page, store), changes, { origin })).status).toBe(403);
      expect(await store.has('fen')).toBe(false);
    },
  );
});

describe('the page', () => {
  it.each(['/', '/trial/fen/inside', '/trial/a%20b/inside', '/trial/'])('is the one HTML file at %s', async (path) => {
    const answer = await ask(app, path);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(answer.headers.get('cache-control')).toBe('no-cache');
    expect(await answer.text()).toContain('<title>bench</title>');
  });

  it('keeps what is named by its content', async () => {
    const answer = await ask(app, '/assets/main-1a2b.js');
    expect(answer.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
    expect(answer.headers.get('cache-control')).toContain('immutable');
  });

  it.each([
    '/nowhere',
    '/assets/',
    '/assets/gone.js',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/assets/..%2f..%2fsecret.txt',
    '/..%5csecret.txt',
    '/%00',
    '/%',
    '//etc/passwd',
  ])('is not at %s', async (path) => {
    const answer = await ask(app, path);
    expect(answer.status).toBe(404);
    expect(await answer.text()).not.toContain('not for the page');
  });

  it.each(['/nonsense', '/trials', '/%'])('tells a browser at %s itself that there is nothing', async (path) => {
    const answer = await ask(app, path, { headers: { accept: 'text/html,application/xhtml+xml' } });
    expect(answer.status).toBe(404);
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(await answer.text()).toContain('<title>bench</title>');
  });

  it.each(['/assets/gone.js', '/api/nothing'])('is no page at %s, even for a browser', async (path) => {
    const answer = await ask(app, path, { headers: { accept: 'text/html' } });
    expect(answer.status).toBe(404);
    expect(answer.headers.get('content-type')).toContain('json');
  });

  it('is not changed by a POST', async () => {
    expect((await ask(app, '/', { method: 'POST' })).status).toBe(405);
  });

  it.each(['/', '/assets/main-1a2b.js', '/api/trials', '/nowhere', '/api/nothing'])(
    '%s has every security header',
    async (path) => {
      const answer = await ask(app, path);
      for (const [name, value] of Object.entries(SECURITY_HEADERS)) expect(answer.headers.get(name)).toBe(value);
      expect(answer.headers.get('content-security-policy')).not.toContain('unsafe');
    },
  );
});
