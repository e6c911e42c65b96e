import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'libsql';
import { describe, expect, it } from 'vitest';
import { noteBackup, notedBackups } from '../../../src/edge/store/backup/list.ts';
import { takeBackup } from '../../../src/edge/store/backup/take.ts';
import { openShelf } from '../../../src/edge/store/openShelf.ts';
import { openSqliteStore } from '../../../src/edge/store/sqlite/open.ts';
import { releaseClosed } from '../../../src/edge/store/sqlite/release.ts';
import { restoreSqlite } from '../../../src/edge/store/sqlite/restore.ts';
import { type Store, StoreRefusal } from '../../../src/edge/store/store.ts';
import { entryOf, idOf } from '../../contract/entries.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
const NOW = new Date('2026-11-25T10:15:30.000Z');
const PHONE = { id: 'p', name: 'phone', role: 'recorder', tokenHash: '5e'.repeat(32), at: NOW.toISOString() } as const;
let homes = 0;

/** A shelf of its own with some entries, a photo and a phone. */
async function shelf(entries = 300) {
  const home = join(folder, `home ${homes++}`);
  const path = join(home, 'shelf.sqlite');
  const store = openSqliteStore(path);
  await store.append(
    'fen',
    Array.from({ length: entries }, (_, n) => entryOf(entries - n)),
  );
  await store.append('moor', [entryOf(1, { trial: 'moor', body: { value: "it's" } })]);
  const photo = await store.putBlob('fen', Uint8Array.from([0xff, 0xd8, 0xff, ...Array(9000).keys()]));
  await store.addDevice(PHONE);
  const list = join(home, 'backups.jsonl');
  const to = join(home, "club's backup.cupel");
  const take = (file = to, now = NOW) => takeBackup({ kind: 'sqlite', path }, file, list, now);
  return { home, path, store, photo, list, to, take };
}

async function closed(store: Store): Promise<void> {
  await store.close();
  await releaseClosed();
}

describe('a backup', () => {
  it('holds everything of one moment while the shelf is written to, and says how much', async () => {
    const { store, take, to, path, list, photo } = await shelf();
    const writing = Promise.all(Array.from({ length: 50 }, (_, n) => store.append('fen', [entryOf(1000 + n)])));
    const line = await take();
    await writing;
    expect(line).toMatchObject({ file: to, of: path, trials: 2, blobs: 1, takenAt: NOW.toISOString() });
    expect(line.entries).toBeGreaterThanOrEqual(301);
    expect(notedBackups(list, path)).toEqual([line]);
    const copy = openSqliteStore(`${to}`);
    expect((await copy.entriesSince('fen', 0)).entries).toHaveLength(line.entries - 1);
    expect(await copy.getBlob('fen', photo)).toEqual(await store.getBlob('fen', photo));
    await copy.close();
    await store.close();
  });

  it('tells nothing of the devices', async () => {
    const { store, take, to } = await shelf();
    await take();
    expect(readFileSync(to).includes(PHONE.tokenHash)).toBe(false);
    expect(await store.devices()).toHaveLength(1);
    await store.close();
  });

  it('is never written over, and leaves nothing behind where it was not taken', async () => {
    const { store, take, to, home, list } = await shelf();
    writeFileSync(to, 'mine');
    await expect(take()).rejects.toThrow(/is there already, and a backup is never written over/);
    expect(readFileSync(to, 'utf8')).toBe('mine');
    await expect(take(join(to, 'under a file'))).rejects.toThrow(/club's backup\.cupel/);
    expect(readdirSync(home).filter((name) => name.includes('.part'))).toEqual([]);
    expect(existsSync(list)).toBe(false);
    await store.close();
  });

  it('is not taken where there is nothing, or of a damaged shelf', async () => {
    const home = join(folder, 'nothing');
    mkdirSync(home);
    const place = { kind: 'sqlite', path: join(home, 'shelf.sqlite') } as const;
    const take = () => takeBackup(place, join(home, 'b'), join(home, 'l'), NOW);
    await expect(take()).rejects.toThrow(/no shelf .* yet/);
    writeFileSync(place.path, 'a letter');
    await expect(take()).rejects.toThrow(/is damaged/);
    expect(existsSync(join(home, 'b'))).toBe(false);
  });
});

describe('the list of backups', () => {
  it('passes over lines that are none, and tells shelves apart', () => {
    const list = join(folder, 'list.jsonl');
    const line = { file: 'f', of: 'a', takenAt: '', trials: 1, entries: 1, blobs: 0, digest: '' };
    noteBackup(list, line);
    writeFileSync(list, '{"file": "cut o\nnull\n[1]\n', { flag: 'a' });
    noteBackup(list, { ...line, file: 'g' });
    noteBackup(list, { ...line, of: 'b' });
    expect(notedBackups(list, 'a').map(({ file }) => file)).toEqual(['g', 'f']);
    expect(notedBackups(join(folder, 'no list'), 'a')).toEqual([]);
  });
});

describe('a restore', () => {
  it('brings back exactly what was backed up when asked to, and keeps what was there under a dated name', async () => {
    const { store, take, to, path, photo } = await shelf();
    const name = await store.name();
    const before = await store.entriesSince('fen', 0);
    await take();
    await store.append('fen', [entryOf(5000)]);
    await closed(store);
    const restored = await restoreSqlite(to, path, NOW, true);
    expect(restored).toMatchObject({ sealed: true, held: { trials: 2, entries: 301, blobs: 1 } });
    expect(restored.aside).toBe(path.replace('.sqlite', '-until-2026-11-25-101530.sqlite'));
    const now = openSqliteStore(path);
    expect(await now.entriesSince('fen', 0)).toEqual(before);
    expect(await now.getBlob('fen', photo)).not.toBeNull();
    expect(await now.devices()).toEqual([]);
    expect(await now.name()).not.toBe(name);
    expect(await now.append('fen', [entryOf(6000)])).toMatchObject({ added: 1, last: 301 });
    await closed(now);
    const aside = openSqliteStore(restored.aside!);
    expect((await aside.entries('fen')).map((entry) => entry.id)).toContain(idOf(5000));
    await closed(aside);
    // Once more within the same second: both are kept.
    const again = await restoreSqlite(to, path, NOW);
    expect(again.aside).toBe(path.replace('.sqlite', '-until-2026-11-25-101530-2.sqlite'));
  });

  it('leaves the backup as it is', async () => {
    const { store, take, to, path, home } = await shelf();
    await take();
    await closed(store);
    const bytes = readFileSync(to);
    await restoreSqlite(to, path, NOW);
    expect(readFileSync(to).equals(bytes)).toBe(true);
    expect(readdirSync(home).filter((name) => /restoring|-wal|-shm|-journal/.test(name))).toEqual([]);
  });

  it('is refused while the bench has the shelf', async () => {
    const { store, take, to, path, home } = await shelf();
    await take();
    await store.append('fen', [entryOf(7000)]);
    await expect(restoreSqlite(to, path, NOW)).rejects.toThrow(/is in use: stop the bench/);
    expect(await store.append('fen', [entryOf(7001)])).toMatchObject({ added: 1 });
    expect(readdirSync(home).filter((name) => /until|restoring/.test(name))).toEqual([]);
    await store.close();
  });

  it('takes a plain copy of a shelf too, with the log that lies beside it, and says that it has no seal', async () => {
    const { store, path } = await shelf();
    const copy = join(folder, 'copied by hand.sqlite');
    for (const ending of ['', '-wal']) copyFileSync(`${path}${ending}`, `${copy}${ending}`);
    await store.close();
    const elsewhere = join(folder, 'elsewhere', 'shelf.sqlite');
    expect(await restoreSqlite(copy, elsewhere, NOW)).toMatchObject({
      sealed: false,
      aside: null,
      held: { entries: 301, blobs: 1 },
    });
  });

  it.each([
    ['not there', /is not there/, () => {}],
    ['a folder', /is no file/, (file: string) => mkdirSync(file)],
    ['empty', /the file is empty/, (file: string) => writeFileSync(file, '')],
    ['a letter', /it is not a database/, (file: string) => writeFileSync(file, 'Dear all, '.repeat(500))],
    [
      'a database of another program',
      /it is a database of another program/,
      (file: string) => {
        const other = new Database(file);
        other.exec('CREATE TABLE trials (name TEXT); PRAGMA user_version = 3;');
        other.close();
      },
    ],
  ])('refuses what is %s', async (name, sentence, make) => {
    const { store, path } = await shelf(3);
    await closed(store);
    const bytes = readFileSync(path);
    const file = join(folder, `unfit, ${name}`);
    make(file);
    await expect(restoreSqlite(file, path, NOW)).rejects.toThrow(sentence);
    expect(readFileSync(path).equals(bytes)).toBe(true);
  });

  it('refuses a backup that was changed since, wherever the change is', async () => {
    const { store, take, to, path } = await shelf();
    await take();
    await closed(store);
    const kept = readFileSync(path);
    const whole = readFileSync(to);
    const file = join(folder, 'changed.cupel');
    const refusedWith = async (bytes: Uint8Array) => {
      writeFileSync(file, bytes);
      const outcome = await restoreSqlite(file, path, NOW, true).catch((error: unknown) => error);
      if (outcome instanceof StoreRefusal) return outcome.message;
      // What may change without a refusal is what means nothing: the restored shelf then says the same to the letter.
      const restored = openSqliteStore(path);
      expect((await restored.entriesSince('fen', 0)).entries).toEqual(
        Array.from({ length: 300 }, (_, n) => entryOf(300 - n)),
      );
      await closed(restored);
      writeFileSync(path, kept);
      return null;
    };
    const refused: string[] = [];
    for (let place = 0.04; place < 1; place += 0.06) {
      const bytes = Buffer.from(whole);
      const at = Math.floor(place * bytes.length);
      for (let n = 0; n < 16; n += 1) bytes[at + n] = bytes[at + n]! ^ 0x15;
      const message = await refusedWith(bytes);
      if (message !== null) refused.push(message);
    }
    expect(refused.length).toBeGreaterThanOrEqual(8);
    // One digit of one reading, which no check of the structure can see.
    const digit = Buffer.from(whole.toString('latin1').replaceAll('39.27', '39.28'), 'latin1');
    expect(await refusedWith(digit)).toMatch(/cannot be put back: a part of it is not what was written/);
    for (const share of [0.3, 0.7, 0.99]) {
      expect(await refusedWith(whole.subarray(0, Math.floor(share * whole.length)))).toMatch(/cannot be put back/);
    }
    expect(readFileSync(path).equals(kept)).toBe(true);
  });
});

describe('a shelf in which the disk changed something that no check of the structure sees', () => {
  it('tells it instead of a wrong reading, and does not end the program', async () => {
    const { store, path, photo } = await shelf(40);
    await closed(store);
    const whole = readFileSync(path);
    const opened = async (bytes: Uint8Array) => {
      writeFileSync(path, bytes);
      return openSqliteStore(path);
    };
    const changed = (from: string, to: string) =>
      Buffer.from(
        whole.toString('latin1').replaceAll(from, () => to),
        'latin1',
      );
    const digit = await opened(changed('39.27', '39.28'));
    await expect(digit.entries('fen')).rejects.toThrow(/Entry number \d+ of trial "fen" is not what was written/);
    await expect(digit.entriesSince('fen', 0)).rejects.toThrow(/cupel restore/);
    expect(await digit.entries('moor')).toHaveLength(1);
    await closed(digit);
    const noText = await opened(changed('39.27', '39.\xff7'));
    await expect(noText.entries('fen')).rejects.toThrow(/is not what was written/);
    await closed(noText);
    const picture = await opened(changed('\x20\x21\x22\x23\x24\x25', '\x20\x21\x22\x23\x24\x26'));
    await expect(picture.getBlob('fen', photo)).rejects.toThrow(/is not what was kept/);
    await closed(picture);
    const device = await opened(changed('recorder', 'rec\xc3rder'));
    await expect(device.devices()).rejects.toThrow(/a text in it can no longer be read/);
    await closed(device);
  });
});

describe('a shelf that is damaged', () => {
  const spoilt: [string, (path: string) => void][] = [
    ['empty', (path) => truncateSync(path, 0)],
    ['cut off', (path) => truncateSync(path, Math.floor(readFileSync(path).length / 2))],
    ['no database', (path) => writeFileSync(path, 'x'.repeat(5000))],
    [
      'overwritten in the middle',
      (path) => {
        const bytes = readFileSync(path);
        bytes.fill(0xa5, bytes.length / 2, bytes.length / 2 + 8192);
        writeFileSync(path, bytes);
      },
    ],
  ];

  it.each(spoilt)('because it is %s is told with the last good backup, which can be put back', async (_, spoil) => {
    const { store, take, path, home, to } = await shelf();
    const later = join(home, 'later.cupel');
    const gone = join(home, 'gone.cupel');
    await take(to, new Date('2026-11-23T08:00:00.000Z'));
    await take(later, new Date('2026-11-24T08:30:00.000Z'));
    await take(gone);
    await closed(store);
    writeFileSync(gone, 'spoilt as well');
    spoil(path);
    const bytes = readFileSync(path);
    const place = { kind: 'sqlite', path } as const;
    const refusal = (await openShelf(place, join(home, 'backups.jsonl')).catch((error: unknown) => error)) as Error;
    expect(refusal).toBeInstanceOf(StoreRefusal);
    expect(refusal.message).toContain(`The shelf in ${path} is damaged (`);
    expect(refusal.message).toContain('The last good backup is of 2026-11-24 08:30 UTC with 301 entries');
    expect(refusal.message).toContain(`cupel restore "${later}"`);
    expect(readFileSync(path).equals(bytes)).toBe(true);
    const { aside } = await restoreSqlite(later, path, NOW);
    expect(readFileSync(aside!).equals(bytes)).toBe(true);
    const again = await openShelf(place);
    expect(await again.entries('fen')).toHaveLength(300);
    await again.close();
  });

  it('without a backup is told what else can be done', async () => {
    const { store, path, list } = await shelf(3);
    await closed(store);
    truncateSync(path, 0);
    await expect(openShelf({ kind: 'sqlite', path }, list)).rejects.toThrow(
      /everything that can still be read with: cupel restore/,
    );
  });
});

describe('a shelf whose file is moved away under it', () => {
  it('acknowledges nothing more', async () => {
    const { store, path, take, to } = await shelf(3);
    await take();
    const { renameSync } = await import('node:fs');
    renameSync(path, `${path}.moved`);
    await expect(store.append('fen', [entryOf(90)])).rejects.toThrow(/was moved or replaced/);
    copyFileSync(to, path);
    await expect(store.append('fen', [entryOf(90)])).rejects.toThrow(/was moved or replaced/);
    await store.close();
  });
});
