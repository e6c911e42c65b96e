import { createHash } from 'node:crypto';
import { ENTRY_KINDS } from '../../src/journal/entry.ts';
import { TABLES } from '../../src/journal/tables.ts';
import { entryOf, idOf } from '../contract/entries.ts';
import { HOST } from '../edge/server/bench.ts';
import { type Chance, NASTY, wounded } from './chance.ts';

export interface MadeRequest {
  method: string;
  path: string;
  headers: Record<string, string>;
  body?: Uint8Array<ArrayBuffer>;
  /** The address that it comes from. */
  from: string;
}

const ENCODER = new TextEncoder();
const TRIALS = ['fen', 'moor', 'ß 電 🧵', 'a/b?c#d'];
const METHODS = ['GET', 'POST', 'PUT', 'DELETE', 'HEAD', 'OPTIONS', 'PATCH', 'BREW'];
const PLACES = ['/', '/trial/fen/bench', '/pair', '/sw.js', '/assets/x.js', '/api', '/api/', '/api/me', '/api/trials'];
/** So deep that whoever walks it by calling itself falls over. */
const DEEP = 50_000;

/** A request as a page sends it, with something wrong about it more often than not. */
export function madeRequest(chance: Chance): MadeRequest {
  const asked = chance.often(60) ? sentEntries(chance) : anyRequest(chance);
  const headers: Record<string, string> = { host: HOST, ...asked.headers };
  if (chance.often(4))
    headers.host = chance.one(['', 'example.org', 'localhost:4870', HOST, '[::1]:4870', '192.168.7.1:4870']);
  if (chance.often(4)) headers.origin = chance.one(['null', 'https://example.org', `http://${HOST}`, '']);
  if (chance.often(4))
    headers.authorization = chance.one(['Bearer ', 'Bearer x', 'Basic eDp5', `Bearer ${'A'.repeat(500)}`]);
  if (chance.often(4)) headers['content-length'] = chance.one(['0', '99999999999', '-1', 'x']);
  return { ...asked, headers, from: chance.often(96) ? '127.0.0.1' : '192.168.7.20' };
}

type Asked = Omit<MadeRequest, 'from'>;

function sentEntries(chance: Chance): Asked {
  const text = sentText(chance);
  const bytes = ENCODER.encode(text);
  const type = chance.often(96)
    ? 'application/json'
    : chance.one(['text/plain', '', 'application/jsonx', 'APPLICATION/JSON; x']);
  return {
    method: 'POST',
    path: '/api/entries',
    headers: { 'content-type': type },
    body: chance.often(20) ? wounded(bytes, chance) : bytes,
  };
}

function sentText(chance: Chance): string {
  const trial = chance.one(TRIALS);
  if (chance.often(1)) {
    const deep = chance.one(['['.repeat(DEEP) + ']'.repeat(DEEP), `${'{"a":'.repeat(DEEP)}1${'}'.repeat(DEEP)}`]);
    return `{"trial":"fen","entries":[${chance.one([deep, `{"id":${deep}}`, `{"body":${deep}}`])}]}`;
  }
  const entries = Array.from({ length: chance.below(4) }, () => madeEntry(chance, trial));
  const sent: Record<string, unknown> = { trial, entries };
  if (chance.often(5)) sent[chance.one(['trial', 'entries', 'extra'])] = madeValue(chance, 0);
  if (chance.often(2)) return JSON.stringify(madeValue(chance, 0)) ?? '';
  return JSON.stringify(sent);
}

function madeEntry(chance: Chance, trial: string): unknown {
  const entry: Record<string, unknown> = {
    id: idOf(chance.below(5000)),
    trial,
    at: '2026-10-03T10:00:00.000Z',
    by: chance.often(50) ? '' : 'J. Marsh',
    device: '',
    ...madeSaying(chance),
  };
  if (chance.often(12)) entry[chance.one([...Object.keys(entry), 'extra'])] = madeValue(chance, 0);
  if (chance.often(2)) delete entry[chance.one(Object.keys(entry))];
  return entry;
}

/** Half of them a reading that every door lets in, with any words in it; the others may be anything. */
function madeSaying(chance: Chance): { kind: string; body: Record<string, string> } {
  if (chance.often(50)) return { kind: 'reading', body: { ...entryOf(1).body, note: chance.one(NASTY) } };
  const kind = chance.often(90) ? chance.one(ENTRY_KINDS) : 'a-kind-from-tomorrow';
  return { kind, body: chance.often(80) ? madeRow(chance) : {} };
}

function madeRow(chance: Chance): Record<string, string> {
  const shape = chance.one(TABLES);
  const row: Record<string, string> = {};
  for (const { name: column } of shape.columns)
    if (chance.often(60))
      row[column] = chance.often(70)
        ? chance.one(['q1', 'quill', '39.27', 'g', 'mm', 'swap', 'r1'])
        : chance.one(NASTY);
  return row;
}

function madeValue(chance: Chance, depth: number): unknown {
  switch (chance.below(depth > 3 ? 5 : 7)) {
    case 0:
      return chance.one(NASTY);
    case 1:
      return chance.one([0, -1, 1.5, 1e308, true, false, null]);
    case 2:
      return `\ud83d${chance.one(NASTY)}`;
    case 3:
      return `a\0${chance.one(NASTY)}`;
    case 4:
      return idOf(chance.below(100));
    case 5:
      return Array.from({ length: chance.below(4) }, () => madeValue(chance, depth + 1));
    default:
      return Object.fromEntries(
        Array.from({ length: chance.below(4) }, () => [chance.one(NASTY), madeValue(chance, depth + 1)]),
      );
  }
}

function anyRequest(chance: Chance): Asked {
  const trial = encodeURIComponent(chance.often(70) ? chance.one(TRIALS) : wellFormed(chance.one(NASTY)));
  const number = encodeURIComponent(chance.one(['0', '1', '7', '-1', '1e3', 'x', '', '99999999999999999999']));
  switch (chance.below(7)) {
    case 0:
      return get(
        `/api/entries?trial=${trial}&after=${number}&limit=${encodeURIComponent(chance.one(['1', '0', '-2', '']))}`,
      );
    case 1:
      return get(`/api/live?trial=${trial}`);
    case 2:
      return sentBlob(chance, trial);
    case 3:
      return json(chance, '/api/pair', { code: chance.one(['AAAAAA', 'K7M 3QX', ...NASTY]), name: chance.one(NASTY) });
    case 4:
      return json(chance, chance.one(['/api/share/open', '/api/share/close', '/api/share/end']), {
        role: chance.one(['keeper', 'reader', ...NASTY]),
      });
    case 5:
      return { ...get(`/api/devices/${trial}`), method: chance.one(['DELETE', 'GET']) };
    default:
      return anyPlace(chance, trial);
  }
}

function anyPlace(chance: Chance, word: string): Asked {
  const path = chance.often(50)
    ? chance.one(PLACES)
    : `/${chance.one(['api', 'trial', 'assets', word])}/${word}?${word}=${word}`;
  const method = chance.one(METHODS);
  if (method === 'GET' || method === 'HEAD' || chance.often(50)) return { ...get(path), method };
  return { method, path, headers: {}, body: ENCODER.encode(sentText(chance)) };
}

function sentBlob(chance: Chance, trial: string): Asked {
  const start = chance.one([
    [0xff, 0xd8, 0xff],
    [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
    [...ENCODER.encode('t,ohm\n1,2\n')],
    [],
  ]);
  const body = wounded(
    Uint8Array.from([...start, ...Array.from({ length: chance.below(200) }, () => chance.below(256))]),
    chance,
  );
  const sha = createHash('sha256').update(body).digest('hex');
  const path = `/api/blobs/${chance.often(70) ? sha : trial}?trial=${trial}`;
  return chance.often(60) ? { method: 'PUT', path, headers: {}, body } : get(path);
}

function json(chance: Chance, path: string, value: unknown): Asked {
  const bytes = ENCODER.encode(JSON.stringify(value));
  return {
    method: 'POST',
    path,
    headers: { 'content-type': 'application/json' },
    body: chance.often(30) ? wounded(bytes, chance) : bytes,
  };
}

function get(path: string): Asked {
  return { method: 'GET', path, headers: {} };
}

/** Only whole characters can stand in an address. */
function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, '?').slice(0, 2000);
}
