/** Whatever a reader may ask for tells nothing that is not sealed, not even that it is there. */
import { afterEach, describe, expect, it } from 'vitest';
import { type JournalBook, journalBook } from '../../../../src/edge/server/journalBook.ts';
import { liveHub } from '../../../../src/edge/server/live/liveHub.ts';
import type { PartPlace } from '../../../../src/journal/kinds/seal.ts';
import { unzipPackage } from '../../../../src/report/package/zip.ts';
import { sealRow } from '../../../../src/report/publish/seal.ts';
import { entryOf } from '../../../contract/store.ts';
import { Bench } from '../../../findings/bench.ts';
import { SEAL_ASKED } from '../../../support/sealAsked.ts';
import { tempFolder } from '../../../support/tempFolder.ts';
import { smallPage } from '../bench.ts';
import { ask, fromPhone, paired, type SharedBench, sharedBench } from '../share/shared.ts';

const page = smallPage(tempFolder());
/** Stands in everything that is not sealed. */
const SECRET = 'hushed';
const SHA = /\b[0-9a-f]{64}\b/;

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

function measured(): Bench {
  return new Bench()
    .carefulTools()
    .cable('x', '2 AWG', 'OFC')
    .piece('p', 'x')
    .everything('p', 33.9)
    .read('p', 'overhang', '300', 'mm', { set: 'd', instrument: 'rule', note: SECRET })
    .read('p', 'tip_drop', '120', 'mm', { set: 'd', position: 'up', instrument: 'rule', note: SECRET });
}

function seal(b: Bench, places: PartPlace[], hidden = false): Bench {
  const part = String(b.entries.filter(({ kind }) => kind === 'seal').length + 1);
  const title = hidden ? SECRET : 'First';
  return b.say('seal', sealRow(b.entries, { ...SEAL_ASKED, part, title, places, hidden }));
}

/** One part sealed, another sealed and hidden, and things said after both. */
function halfTold(): Bench {
  const b = seal(seal(measured(), ['inside']), ['bend'], true);
  b.cable(`${SECRET} y`, '4 AWG', 'OFC').piece(`${SECRET} q`, `${SECRET} y`).everything(`${SECRET} q`, 21);
  b.say('note', { note: 'n1', about: 'cable', which: 'x', text: SECRET });
  b.say('trial', { title: SECRET, place: SECRET });
  b.say('reply', { reply: 'r1', cable: `${SECRET} y`, text: SECRET });
  b.say('setting', { setting: 'standing_weights', value: `endurance:${SECRET} 3` });
  return b;
}

interface Read extends SharedBench {
  trial: string;
  token: string;
}

async function shelf(b: Bench): Promise<Read> {
  const bench = sharedBench(page);
  const trial = b.entries[0]!.trial;
  await bench.store.append(trial, b.entries);
  await bench.store.append(SECRET, [entryOf(1, { trial: SECRET, kind: 'trial', body: { title: SECRET } })]);
  await bench.network.open('reader');
  const { token } = await paired(bench, 'reader');
  return { ...bench, trial, token };
}

const asReader = ({ app, token }: Read, path: string) => ask(app, path, fromPhone(token));
const query = (trial: string, more: Record<string, string> = {}) => new URLSearchParams({ trial, ...more }).toString();

/** Everything that an answer says, a package unpacked; without the names of addresses that the question itself held. */
async function saidBy(answer: Response): Promise<string> {
  const bytes = new Uint8Array(await answer.arrayBuffer());
  const type = answer.headers.get('content-type') ?? '';
  const headers = [...answer.headers].join('\n');
  if (!type.includes('zip')) return `${headers}\n${new TextDecoder().decode(bytes)}`;
  const files = [...unzipPackage(bytes)].map(([name, content]) => `${name}\n${new TextDecoder().decode(content)}`);
  return [headers, ...files].join('\n');
}

/** Addresses by which a trial is read, with what must stand in the answer so that it is no empty one. */
const DOORS: [string, RegExp][] = [
  ['/api/trials?', /"title":"/],
  ['/api/entries?', /conductor_mass/],
  ['/api/parts?', /"again":"same"/],
  ['/api/package?', /conductor_mass/],
  ['/api/package?photos=yes&licence=CC0-1.0&', /CC0/],
  ['/api/report?part=1&', /<!DOCTYPE html>/],
  ['/api/report?part=1&places=inside,bend,jacket,amps,standing&', /<!DOCTYPE html>/],
  ['/api/card?part=1&cable=x&form=svg&', /<svg/],
  ['/api/card?part=1&kind=field&form=svg&', /<svg/],
];

describe('a reader', () => {
  it.each(DOORS)('is told by %s what is sealed and nothing else', async (path, wanted) => {
    const bench = await shelf(halfTold());
    const answer = await asReader(bench, `${path}${query(bench.trial)}`);
    expect(answer.status, path).toBe(200);
    const said = await saidBy(answer);
    expect(said).toMatch(wanted);
    expect(said.includes(SECRET), said.slice(Math.max(0, said.indexOf(SECRET) - 200), said.indexOf(SECRET) + 50)).toBe(
      false,
    );
    // The same door tells a recorder more, so that the check above can fail.
    if (path.startsWith('/api/entries') || path.startsWith('/api/trials') || path.startsWith('/api/package')) {
      const { token } = await paired(bench, 'recorder');
      expect(await saidBy(await ask(bench.app, `${path}${query(bench.trial)}`, fromPhone(token)))).toContain(SECRET);
    }
  });

  it.each<[string, Record<string, string>]>([
    ['a part that is hidden', { part: '2' }],
    ['the trial as it stands', {}],
    ['a draft of places', { places: 'bend' }],
    ['a cable for its maker', { part: '1', cable: 'x' }],
  ])('gets no report of %s', async (_what, more) => {
    const bench = await shelf(halfTold());
    const answer = await asReader(bench, `/api/report?${query(bench.trial, more)}`);
    expect([403, 404]).toContain(answer.status);
    expect(await saidBy(answer)).not.toContain(SECRET);
  });

  it('cannot tell a trial without a sealed part from one that is not there', async () => {
    const bench = await shelf(measured());
    const doors = ['entries', 'live', 'parts', 'package', 'report', 'card', `blobs/${'ab'.repeat(32)}`];
    for (const door of doors) {
      const [there, not] = await Promise.all(
        [SECRET, 'nowhere'].map((trial) => asReader(bench, `/api/${door}?${query(trial)}`)),
      );
      expect(there!.status, door).toBe(404);
      expect((await there!.text()).replaceAll(SECRET, 'nowhere'), door).toBe(await not!.text());
    }
    expect(await (await asReader(bench, '/api/trials')).json()).toEqual([]);
  });

  it('finds on the shelf what was sealed of a trial, as it was described then', async () => {
    const b = new Bench().carefulTools().cable('x', '2 AWG', 'OFC').piece('p', 'x').everything('p', 33.9);
    b.say('trial', { title: 'Spring round', place: 'Barn', opened_on: '2026-10-01' });
    const bench = await shelf(seal(b, ['inside']));
    b.cable('y', '4 AWG', 'OFC').say('trial', { title: SECRET });
    await bench.store.append(bench.trial, b.entries);
    const [line, ...others] = (await (await asReader(bench, '/api/trials')).json()) as Record<string, unknown>[];
    expect(others).toEqual([]);
    expect(line).toMatchObject({ title: 'Spring round', place: 'Barn', openedOn: '2026-10-01', cables: 1 });
    const { entries } = (await (await asReader(bench, `/api/entries?${query(bench.trial)}`)).json()) as {
      entries: unknown[];
    };
    expect(line!.entries).toBe(entries.length);
  });

  it('is told what puts sealed readings right, in the journal and in the report', async () => {
    const b = seal(measured(), ['inside']);
    const mass = b.entries.find(({ body }) => body.quantity === 'conductor_mass')!.body;
    b.say('strike', { reading: mass.reading!, why: 'wrong piece' });
    b.read('p', 'conductor_mass', '91', 'g', { replaces: mass.reading!, instrument: mass.instrument!, why: 'tared' });
    b.read('p', 'conductor_mass', '92', 'g', { instrument: mass.instrument!, note: SECRET });
    const struck = b.entries.find(({ body }) => body.quantity === 'overhang')!.body.reading!;
    b.say('strike', { reading: struck, why: SECRET });
    const bench = await shelf(b);
    const told = await saidBy(await asReader(bench, `/api/entries?${query(bench.trial)}`));
    expect(told).toContain('wrong piece');
    expect(told).toContain('tared');
    expect(told).not.toContain(SECRET);
    const report = await saidBy(await asReader(bench, `/api/report?${query(bench.trial, { part: '1' })}`));
    expect(report).toContain('wrong piece');
    expect(report).not.toContain(SECRET);
    const parts = await (await asReader(bench, `/api/parts?${query(bench.trial)}`)).json();
    expect(parts).toMatchObject([{ part: '1', again: 'same' }]);
  });

  it('hears nothing of what is said at the bench until something is sealed', async () => {
    const store = sharedBench(page).store;
    const live = liveHub(store, { beatMs: 60_000, lookMs: 20 });
    closing.push(live.close);
    const b = seal(measured(), ['inside']);
    const trial = b.entries[0]!.trial;
    await store.append(trial, b.entries);
    const journals = journalBook(store);
    const seen = async () => (await journals.seenBy({ role: 'reader' }, trial)).entries.length;
    const ear = (await live.listen(trial, 'phone', seen)).getReader();
    const heard: string[] = [];
    const hear = async () => {
      const { value } = await ear.read();
      heard.push(new TextDecoder().decode(value));
    };
    await hear();
    const before = await seen();
    expect(heard).toEqual([`event: entries\ndata: {"last":${before}}\n\n`]);
    const next = hear();
    for (let at = 0; at < 5; at++) {
      b.read('p', 'overhang', String(200 + at), 'mm', { set: 'e', instrument: 'rule' });
      live.tell(trial, (await store.append(trial, b.entries)).last);
      await new Promise((settle) => setTimeout(settle, 30));
    }
    expect(heard).toHaveLength(1);
    seal(b, ['bend']);
    await store.append(trial, b.entries);
    await next;
    expect(heard).toHaveLength(2);
    expect(await seen()).toBeGreaterThan(before);
    expect(heard[1]).toContain(`"last":${await seen()}`);
  });

  it('gets the photo of a sealed row, and none of another', async () => {
    const b = measured();
    const bench = sharedBench(page);
    const trial = b.entries[0]!.trial;
    const log = (text: string) => bench.store.putBlob(trial, new TextEncoder().encode(text));
    const [shown, kept] = [await log('t,ohm\n1,2\n'), await log('t,ohm\n1,3\n')];
    b.say('note', { note: 'n1', about: 'cable', which: 'x', text: 'receipt', photo: kept });
    b.say('cable', { ...b.entries.find(({ kind }) => kind === 'cable')!.body, photo: shown });
    seal(b, ['inside']);
    b.say('note', { note: 'n2', about: 'cable', which: 'x', text: 'later', photo: kept });
    await bench.store.append(trial, b.entries);
    await bench.network.open('reader');
    const { token } = await paired(bench, 'reader');
    const told = await saidBy(await ask(bench.app, `/api/entries?${query(trial)}`, fromPhone(token)));
    for (const name of [shown, kept]) {
      const answer = await ask(bench.app, `/api/blobs/${name}?${query(trial)}`, fromPhone(token));
      expect(answer.status, name).toBe(told.includes(name) ? 200 : 404);
    }
    expect(told).toMatch(SHA);
  });
});

describe('what is worked out of a journal', () => {
  async function book(most?: number): Promise<{ journals: JournalBook; store: SharedBench['store']; b: Bench }> {
    const { store } = sharedBench(page);
    const b = measured();
    await store.append(b.entries[0]!.trial, b.entries);
    return { journals: journalBook(store, most), store, b };
  }
  const keeper = { role: 'keeper' } as const;

  it('is worked out once until the journal grows, by an entry of any time', async () => {
    const { journals, store, b } = await book();
    const { trial } = b.entries[0]!;
    let times = 0;
    const count = async () =>
      (await journals.seenBy(keeper, trial)).once('count', (entries) => {
        times += 1;
        return entries.length;
      });
    expect(await count()).toBe(b.entries.length);
    expect(await count()).toBe(b.entries.length);
    expect(times).toBe(1);
    const early = entryOf(1, { trial, id: '00000000-0000-7000-8000-000000000000' });
    await store.append(trial, [early]);
    expect(await count()).toBe(b.entries.length + 1);
    expect(times).toBe(2);
    await store.rename();
    await count();
    expect(times).toBe(3);
  });

  it('is let go of when others were used since, and kept apart for readers', async () => {
    const { journals, store, b } = await book(2);
    const { trial } = b.entries[0]!;
    await store.append('fen', [entryOf(1)]);
    await store.append('moor', [entryOf(1, { trial: 'moor' })]);
    const first = await journals.seenBy(keeper, trial);
    expect(await journals.seenBy(keeper, trial)).toBe(first);
    expect((await journals.seenBy({ role: 'reader' }, trial)).entries).toEqual([]);
    await journals.seenBy(keeper, 'fen');
    await journals.seenBy(keeper, 'moor');
    expect(await journals.seenBy(keeper, trial)).not.toBe(first);
    const results = Array.from({ length: 20 }, (_, at) => first.once(String(at), () => ({ at })));
    expect(first.once('19', () => ({ at: -1 }))).toBe(results[19]);
    expect(first.once('0', () => ({ at: -1 }))).toEqual({ at: -1 });
  });
});
