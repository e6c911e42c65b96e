import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it } from 'vitest';
import { openMemoryStore } from '../../../src/edge/store/memory/open.ts';
import type { Store } from '../../../src/edge/store/store.ts';
import { entryOf } from '../../contract/store.ts';
import { tempFolder } from '../../support/tempFolder.ts';
import { ask, type BenchOn, benchOn, smallPage } from './bench.ts';

const page = smallPage(tempFolder());
let store: Store;
let app: BenchOn;
beforeEach(async () => {
  store = openMemoryStore();
  app = benchOn(page, store);
  await store.append('fen', [entryOf(1)]);
});

const nameOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const put = (bytes: Uint8Array<ArrayBuffer>, name = nameOf(bytes), trial = 'fen') =>
  ask(app, `/api/blobs/${name}?trial=${trial}`, { method: 'PUT', body: bytes });
const bytesOf = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'));

const PHOTO = bytesOf('\xff\xd8\xff\xe0 a photo, as far as its first bytes say');
const LOG = bytesOf('time_s,ohm\n0,0.00051\n');

describe('a photo or a log', () => {
  it.each([
    ['a photo', PHOTO, 'image/jpeg', 'jpg'],
    ['a log', LOG, 'text/csv; charset=utf-8', 'csv'],
  ])('%s is kept under its SHA-256 and given back as what it is', async (_what, bytes, type, ending) => {
    const name = nameOf(bytes);
    expect(await (await put(bytes)).json()).toEqual({ name, bytes: bytes.length });
    expect((await put(bytes)).status).toBe(200);
    const got = await ask(app, `/api/blobs/${name}?trial=fen`);
    expect(new Uint8Array(await got.arrayBuffer())).toEqual(bytes);
    expect(got.headers.get('content-type')).toBe(type);
    expect(got.headers.get('content-disposition')).toBe(`attachment; filename="${name}.${ending}"`);
    expect(got.headers.get('cache-control')).toBe('private, max-age=31536000, immutable');
    expect(got.headers.get('x-content-type-options')).toBe('nosniff');
    const head = await ask(app, `/api/blobs/${name}?trial=fen`, { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
  });

  it('may come before the first entry of its trial', async () => {
    expect((await put(PHOTO, nameOf(PHOTO), 'new')).status).toBe(200);
    expect(await store.blobNames('new')).toEqual([nameOf(PHOTO)]);
  });
});

describe('what is refused', () => {
  it.each([
    ['another name than its content has', PHOTO, nameOf(LOG), 400],
    ['no SHA-256 for a name', PHOTO, 'photo.jpg', 400],
    ['a page', bytesOf('<html><script>alert(1)</script>'), undefined, 415],
    ['a drawing with a script in it', bytesOf('<svg xmlns="http://www.w3.org/2000/svg"/>'), undefined, 415],
    ['a program', bytesOf('\x7fELF\x02\x01\x01\0'), undefined, 415],
    ['nothing', bytesOf(''), undefined, 415],
    ['too much', new Uint8Array(32 * 1024 * 1024 + 1), undefined, 413],
  ])('%s', async (_what, bytes, name, status) => {
    const answer = await put(bytes, name);
    expect(answer.status).toBe(status);
    expect(await answer.json()).toHaveProperty('error.advice');
    expect(await store.blobNames('fen')).toEqual([]);
  });

  it('no trial', async () => {
    expect((await ask(app, `/api/blobs/${nameOf(LOG)}`, { method: 'PUT', body: LOG })).status).toBe(400);
    expect((await ask(app, `/api/blobs/${nameOf(LOG)}`)).status).toBe(400);
  });

  it.each([nameOf(LOG), 'x', '..%2fsecret.txt'])('nobody kept %s', async (name) => {
    expect((await ask(app, `/api/blobs/${name}?trial=fen`)).status).toBe(404);
  });
});
