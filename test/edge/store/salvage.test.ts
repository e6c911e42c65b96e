import { copyFileSync, existsSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'libsql';
import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../src/edge/store/backup/take.ts';
import { openBenchShelf, openShelf } from '../../../src/edge/store/openShelf.ts';
import { openSqliteStore } from '../../../src/edge/store/sqlite/open.ts';
import { releaseClosed } from '../../../src/edge/store/sqlite/release.ts';
import { restoreSqlite } from '../../../src/edge/store/sqlite/restore.ts';
import type { Store } from '../../../src/edge/store/store.ts';
import { entryOf, idOf } from '../../contract/entries.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
const NOW = new Date('2026-11-25T10:15:30.000Z');
const PAGE = 4096;
let homes = 0;

const BEFORE = 300;
const AFTER = 60;
/** Found in no other entry. */
const MARK = 'a word apart';

/** A shelf with a backup of its first 300 entries, and 60 more and a photo that came afterwards. */
async function shelf() {
  const home = join(folder, `home ${homes++}`);
  const path = join(home, 'shelf.sqlite');
  const list = join(home, 'backups.jsonl');
  const to = join(home, 'yesterday.cupel');
  const store = openSqliteStore(path);
  await store.append('fen', numbered(1, BEFORE));
  await takeBackup({ kind: 'sqlite', path }, to, list, NOW);
  await store.append('fen', numbered(BEFORE + 1, AFTER));
  await store.append('moor', [entryOf(1, { trial: 'moor' })]);
  const photo = await store.putBlob('fen', Uint8Array.from([0xff, 0xd8, 0xff, ...Array(9000).keys()]));
  await closed(store);
  return { home, path, list, to, photo };
}

const numbered = (from: number, count: number) =>
  Array.from({ length: count }, (_, n) =>
    entryOf(from + n, { body: { ...entryOf(1).body, note: `${MARK} ${from + n} ` } }),
  );

async function closed(store: Store): Promise<void> {
  await store.close();
  await releaseClosed();
}

/** Changes one letter in some rows, which no check of the structure sees. */
function spoilRows(path: string, ...numbers: number[]): void {
  let text = readFileSync(path).toString('latin1');
  for (const n of numbers) text = text.replaceAll(`${MARK} ${n} `, `${MARK} ${n}!`);
  writeFileSync(path, Buffer.from(text, 'latin1'));
}

const idsOf = async (path: string, trial = 'fen') => {
  const store = openSqliteStore(path);
  const ids = (await store.entries(trial)).map(({ id }) => id);
  await closed(store);
  return ids;
};
const allIds = Array.from({ length: BEFORE + AFTER }, (_, n) => idOf(n + 1));

describe('a shelf of which some rows are damaged', () => {
  it('is read as far as it can be, and says which are not and what to do', async () => {
    const { path, list, to } = await shelf();
    spoilRows(path, 17, 310, 311);
    const store = await openShelf({ kind: 'sqlite', path }, list);
    const { entries, next, damaged, advice } = await store.readable('fen', 0);
    expect(damaged).toEqual([17, 310, 311]);
    expect(next).toBe(BEFORE + AFTER);
    expect(entries.map(({ id }) => id)).toEqual(allIds.filter((_, n) => ![17, 310, 311].includes(n + 1)));
    expect(advice).toContain(`Stop Cupel. The last good backup is of 2026-11-25 10:15 UTC with 300 entries`);
    expect(advice).toContain(`cupel restore "${to}"`);
    expect(await store.readable('fen', 16, 1)).toMatchObject({ next: 17, damaged: [17], entries: [] });
    expect(await store.readable('fen', 311, 2)).toMatchObject({ next: 313, damaged: [], advice: '' });
    // Whoever must have it whole is refused, with the same advice.
    await expect(store.entries('fen')).rejects.toThrow(/Entry number 17 .* cupel restore "/);
    expect(await store.append('fen', [entryOf(900)])).toMatchObject({ added: 1, last: BEFORE + AFTER + 1 });
    expect((await store.trials()).map(({ trial, entries: count }) => [trial, count])).toContainEqual(['fen', 361]);
    await store.close();
  });

  it('is not backed up as if it were whole; the backup that is good is named', async () => {
    const { path, home, list, to } = await shelf();
    spoilRows(path, 17);
    const now = join(home, 'now.cupel');
    const refused = takeBackup({ kind: 'sqlite', path }, now, list, NOW);
    await expect(refused).rejects.toThrow(`cupel restore "${to}"`);
    expect(existsSync(now)).toBe(false);
  });

  it('names what to do where there is no backup', async () => {
    const { path, home } = await shelf();
    spoilRows(path, 17);
    const store = await openShelf({ kind: 'sqlite', path }, join(home, 'no list'));
    expect((await store.readable('fen', 0)).advice).toMatch(/with cupel restore, without a file/);
    await store.close();
  });

  it('is mended by a device that sends the entry again, and takes another name then', async () => {
    const { path } = await shelf();
    spoilRows(path, 17, 20);
    const store = openSqliteStore(path);
    const name = await store.name();
    await store.append('fen', numbered(18, 1));
    expect(await store.name()).toBe(name);
    expect(await store.append('fen', numbered(17, 1))).toEqual({ added: 0, known: 1, last: BEFORE + AFTER });
    expect(await store.name()).not.toBe(name);
    expect(await store.readable('fen', 0)).toMatchObject({ damaged: [20] });
    await store.append('fen', numbered(20, 1));
    expect(await store.entries('fen')).toEqual(numbered(1, BEFORE + AFTER));
    await closed(store);
  });

  it('gets a damaged photo back from the device that took it', async () => {
    const { path, photo } = await shelf();
    const bytes = readFileSync(path);
    const place = bytes.indexOf(Buffer.from([0x41, 0x42, 0x43, 0x44, 0x45, 0x46, 0x47]));
    bytes[place] = 0;
    writeFileSync(path, bytes);
    const store = openSqliteStore(path);
    await expect(store.getBlob('fen', photo)).rejects.toThrow(/is not what was kept/);
    await store.putBlob('fen', Uint8Array.from([0xff, 0xd8, 0xff, ...Array(9000).keys()]));
    expect(await store.getBlob('fen', photo)).not.toBeNull();
    await closed(store);
  });
});

describe('a restore over a shelf that was recorded into after the backup', () => {
  it('loses nothing of what can still be read, and says what cannot', async () => {
    const { path, to, photo, home } = await shelf();
    spoilRows(path, 17, 310, 311, 330);
    const restored = await restoreSqlite(to, path, NOW);
    expect(restored).toMatchObject({
      sealed: true,
      backup: { entries: BEFORE, blobs: 0 },
      held: { trials: 2, entries: BEFORE + AFTER - 3 + 1, blobs: 1 },
      // 17 is damaged in the shelf and whole in the backup.
      salvaged: { entries: AFTER - 3 + 1, blobs: 1, lost: [{ trial: 'fen', numbers: [310, 311, 330] }], lostBlobs: 0 },
    });
    expect(await idsOf(path)).toEqual(allIds.filter((_, n) => ![310, 311, 330].includes(n + 1)));
    expect(await idsOf(path, 'moor')).toEqual([idOf(1)]);
    const store = openSqliteStore(path);
    expect(await store.getBlob('fen', photo)).not.toBeNull();
    await closed(store);
    expect(readdirSync(home).filter((name) => /salvag|restoring/.test(name))).toEqual([]);
  });

  it('puts exactly the backup back when that is asked for', async () => {
    const { path, to } = await shelf();
    expect(await restoreSqlite(to, path, NOW, true)).toMatchObject({ salvaged: null, held: { entries: BEFORE } });
    expect(await idsOf(path)).toEqual(allIds.slice(0, BEFORE));
  });

  it('makes a new shelf without any backup', async () => {
    const { path } = await shelf();
    spoilRows(path, 17);
    const restored = await restoreSqlite(null, path, NOW);
    expect(restored).toMatchObject({ backup: null, salvaged: { lost: [{ trial: 'fen', numbers: [17] }] } });
    expect(await idsOf(path)).toEqual(allIds.filter((_, n) => n !== 16));
    expect(existsSync(restored.aside!)).toBe(true);
  });

  it.each<[string, (bytes: Buffer) => void]>([
    ['its head', (bytes) => bytes.fill(0, 0, 100)],
    ['the whole first page, which names the tables', (bytes) => bytes.fill(0x5a, 0, PAGE)],
  ])('finds the entries in the pages themselves when the file has lost %s', async (_what, spoil) => {
    const { path, photo } = await shelf();
    const bytes = readFileSync(path);
    spoil(bytes);
    writeFileSync(path, bytes);
    const { salvaged } = await restoreSqlite(null, path, NOW);
    const store = openSqliteStore(path);
    expect(await store.entries('fen')).toEqual(numbered(1, BEFORE + AFTER));
    expect(await store.getBlob('fen', photo)).not.toBeNull();
    await closed(store);
    expect(salvaged).toMatchObject({ lost: [], lostBlobs: 0 });
  });

  it('finds nearly all of them when the pages are lost that lead to the others, and names the rest', async () => {
    const { path } = await shelf();
    const bytes = readFileSync(path);
    bytes.fill(0x5a, PAGE, 10 * PAGE);
    writeFileSync(path, bytes);
    const { salvaged } = await restoreSqlite(null, path, NOW);
    const there = await idsOf(path);
    // A page that leads to others holds some rows itself.
    expect(there.length).toBeGreaterThanOrEqual(BEFORE + AFTER - 3);
    const lost = allIds.flatMap((id, n) => (there.includes(id) ? [] : [n + 1]));
    expect(salvaged?.lost).toEqual([{ trial: 'fen', numbers: lost }]);
  });

  it('says so when nothing can be read and there is no backup either', async () => {
    const { path } = await shelf();
    writeFileSync(path, 'x'.repeat(9000));
    await expect(restoreSqlite(null, path, NOW)).rejects.toThrow(/^Nothing can be read .* \(it is not a database\)/);
    await expect(restoreSqlite(null, join(folder, 'none', 'shelf.sqlite'), NOW)).rejects.toThrow(/There is no shelf/);
  });

  it('lists every number where the backup is of another shelf', async () => {
    const { path } = await shelf();
    const other = await shelf();
    const strange = openSqliteStore(other.path);
    await strange.append('heath', [entryOf(1, { trial: 'heath' })]);
    await closed(strange);
    const elsewhere = join(folder, 'strange.cupel');
    const foreign = openSqliteStore(join(folder, 'foreign', 'shelf.sqlite'));
    await foreign.append('fen', [...numbered(1, 40)].reverse());
    await closed(foreign);
    await takeBackup(
      { kind: 'sqlite', path: join(folder, 'foreign', 'shelf.sqlite') },
      elsewhere,
      join(folder, 'l'),
      NOW,
    );
    spoilRows(path, 30);
    const { salvaged } = await restoreSqlite(elsewhere, path, NOW);
    expect(salvaged?.lost).toEqual([{ trial: 'fen', numbers: [30] }]);
    // It is in the other backup under another number, and so it is there.
    expect(await idsOf(path)).toEqual(allIds);
  });
});

/** Numbers from 0 to 1 that a seed determines: the linear congruential generator of POSIX `rand` (from memory). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state / 2 ** 32;
  };
}

/** Overwrites up to two pages' length anywhere in the file, with noise, zeros, or one changed bit. */
function wound(path: string, chance: () => number): void {
  const bytes = readFileSync(path);
  const at = Math.floor(chance() * bytes.length);
  const way = chance();
  const length = way < 0.3 ? 1 : Math.floor(chance() * 2 * PAGE);
  for (let n = at; n < Math.min(at + length, bytes.length); n += 1)
    bytes[n] = way < 0.3 ? bytes[n]! ^ (1 << Math.floor(chance() * 8)) : way < 0.5 ? 0 : Math.floor(chance() * 256);
  writeFileSync(path, bytes);
}

describe('a shelf that is overwritten anywhere', () => {
  const WOUNDS = 30;

  it('comes back with its backup and all that can be read: nothing made up, and what is missing is told', async () => {
    const { path, to } = await shelf();
    const whole = readFileSync(path);
    const chance = seeded(20261125);
    const wanted = new Map(numbered(1, BEFORE + AFTER).map((entry) => [entry.id, entry]));
    let saved = 0;
    let missing = 0;
    for (let round = 0; round < WOUNDS; round += 1) {
      writeFileSync(path, whole);
      wound(path, chance);
      const { salvaged } = await restoreSqlite(to, path, new Date(NOW.getTime() + round * 1000));
      const store = openSqliteStore(path);
      const { entries } = await store.entriesSince('fen', 0);
      await closed(store);
      for (const entry of entries) expect(entry).toEqual(wanted.get(entry.id));
      expect(entries.length).toBeGreaterThanOrEqual(BEFORE);
      const told = salvaged?.lost.find(({ trial }) => trial === 'fen')?.numbers.length ?? 0;
      const gone = wanted.size - entries.length;
      if (salvaged?.unreadable === null) expect(told, `round ${round}`).toBe(gone);
      saved += entries.length - BEFORE;
      missing += gone;
    }
    // Most of what came after the backup is saved each time, and sometimes something is beyond reading.
    expect(saved).toBeGreaterThan(0.9 * WOUNDS * AFTER);
    expect(missing).toBeGreaterThan(0);
  }, 120_000);
});

describe('a log that the disk damaged after a crash', () => {
  /** The files of a shelf as a crash leaves them: everything of the log, nothing of it folded into the file. */
  async function crashed() {
    const home = join(folder, `crash ${homes++}`);
    const live = join(home, 'live.sqlite');
    const path = join(home, 'shelf.sqlite');
    const store = openSqliteStore(live);
    for (let n = 1; n <= 60; n += 1) await store.append('fen', numbered(n, 1));
    await store.append('fen', [entryOf(61, { body: { ...entryOf(1).body, note: 'long '.repeat(1500) } })]);
    const photo = await store.putBlob('fen', Uint8Array.from([0xff, 0xd8, 0xff, ...Array(9000).keys()]));
    for (let n = 62; n <= 70; n += 1) await store.append('fen', numbered(n, 1));
    for (const ending of ['', '-wal']) copyFileSync(`${live}${ending}`, `${path}${ending}`);
    await closed(store);
    return { path, list: join(home, 'backups.jsonl'), photo };
  }
  const spoilLog = (path: string, change: (bytes: Buffer) => void) => {
    const bytes = readFileSync(`${path}-wal`);
    change(bytes);
    writeFileSync(`${path}-wal`, bytes);
  };
  const FRAME = 24 + PAGE;
  const told = Array.from({ length: 70 }, (_, n) => idOf(n + 1));

  it.each<[string, (bytes: Buffer) => void, RegExp?]>([
    ['not at all', () => {}],
    ['in its head', (bytes) => bytes.fill(0, 0, 12), /: 70 entries and 1 photo or log could/],
    [
      'in its first frame',
      (bytes) => bytes.fill(0x5a, 32 + 24 + 100, 32 + 24 + 200),
      /: 70 entries and 1 photo or log could/,
    ],
    [
      'in its middle',
      (bytes) => bytes.fill(0x5a, 32 + 60 * FRAME + 500, 32 + 61 * FRAME),
      /: \d+ entries and 1 photo or log could/,
    ],
    [
      'in the sum of a frame',
      (bytes) => bytes.fill(1, 32 + 80 * FRAME + 16, 32 + 80 * FRAME + 24),
      /: \d+ entries and 1 photo or log could/,
    ],
  ])('%s loses nothing that it still holds further on', async (_what, change, sentence) => {
    const { path, list, photo } = await crashed();
    spoilLog(path, change);
    const said: string[] = [];
    const store = await openShelf({ kind: 'sqlite', path }, list, (text) => void said.push(text));
    expect(said).toHaveLength(sentence === undefined ? 0 : 1);
    if (sentence !== undefined) expect(said[0]).toMatch(sentence);
    expect((await store.entries('fen')).map(({ id }) => id)).toEqual(told);
    expect(await store.getBlob('fen', photo)).not.toBeNull();
    await closed(store);
  });

  it('is read by a restore, too', async () => {
    const { path } = await crashed();
    spoilLog(path, (bytes) => bytes.fill(0x5a, 32 + 40 * FRAME + 500, 32 + 41 * FRAME));
    expect(await restoreSqlite(null, path, NOW)).toMatchObject({ salvaged: { entries: 70, blobs: 1, lost: [] } });
    expect(await idsOf(path)).toEqual(told);
  });

  it('is passed over when only its end is torn, as by a power cut', async () => {
    const { path, list } = await crashed();
    truncateSync(`${path}-wal`, readFileSync(`${path}-wal`).length - 1000);
    const store = await openShelf({ kind: 'sqlite', path }, list);
    expect((await store.entries('fen')).map(({ id }) => id)).toEqual(told.slice(0, 69));
    await closed(store);
  });
});

describe('a bench that was not stopped', () => {
  it('takes another name at its next start, and only then', async () => {
    const { path, list } = await shelf();
    const place = { kind: 'sqlite', path } as const;
    const first = await openBenchShelf(place, list);
    const name = await first.name();
    await first.append('fen', [entryOf(901)]);
    // Its log lies beside the file as after a crash.
    const second = await openBenchShelf(place, list);
    expect(await second.name()).not.toBe(name);
    const after = await second.name();
    await closed(second);
    await closed(first);
    const raw = new Database(path);
    raw.pragma('wal_checkpoint(TRUNCATE)');
    raw.close();
    const third = await openBenchShelf(place, list);
    expect(await third.name()).toBe(after);
    await closed(third);
  });
});
