import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'libsql';
import { describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../../src/edge/store/sqlite/open.ts';
import { entryOf, idOf, storeContract } from '../../contract/store.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
let files = 0;
const nextFile = () => join(folder, `shelf ${files++}`, 'shelf.sqlite');

storeContract('SQLite', async () => openSqliteStore(nextFile()));

describe('the SQLite file', () => {
  it('is the whole shelf once it is closed: no log beside it', async () => {
    const path = nextFile();
    const store = openSqliteStore(path);
    await store.append('fen', [entryOf(1)]);
    await store.close();
    await store.close();
    expect(existsSync(`${path}-wal`) ? readFileSync(`${path}-wal`).length : 0).toBe(0);
    const again = openSqliteStore(path);
    expect(await again.entries('fen')).toEqual([entryOf(1)]);
    await again.close();
  });

  it('writes ahead', async () => {
    const path = nextFile();
    const store = openSqliteStore(path);
    await store.close();
    const raw = new Database(path);
    expect(raw.pragma('journal_mode')).toEqual([{ journal_mode: 'wal' }]);
    raw.close();
  });

  it('serves two that hold it at once', async () => {
    const path = nextFile();
    const [one, two] = [openSqliteStore(path), openSqliteStore(path)];
    await one.append('fen', [entryOf(1)]);
    expect(await one.entriesSince('fen', 0)).toMatchObject({ next: 1 });
    expect(await two.append('fen', [entryOf(1), entryOf(2)])).toEqual({ added: 1, known: 1, last: 2 });
    expect(await one.entries('fen')).toHaveLength(2);
    expect(await one.entriesSince('fen', 1)).toMatchObject({ next: 2 });
    expect(await one.append('fen', [entryOf(3)])).toMatchObject({ last: 3 });
    // Nobody who has read holds the log back: it can be folded into the file whole.
    const raw = new Database(path);
    expect(raw.pragma('wal_checkpoint(TRUNCATE)')).toMatchObject([{ busy: 0 }]);
    raw.close();
    await one.close();
    await two.close();
  });

  it('keeps what still waited when it was closed', async () => {
    const path = nextFile();
    const store = openSqliteStore(path);
    const waiting = [store.append('fen', [entryOf(1)]), store.append('moor', [entryOf(2, { trial: 'moor' })])];
    await store.close();
    expect(await Promise.all(waiting)).toMatchObject([{ last: 1 }, { last: 1 }]);
    const again = openSqliteStore(path);
    expect(await again.trialNames()).toEqual(['fen', 'moor']);
    await again.close();
  });

  it('keeps lists that came together in their order, and refuses a stranger alone', async () => {
    const store = openSqliteStore(nextFile());
    const outcomes = await Promise.allSettled([
      store.append('fen', [entryOf(3), entryOf(1)]),
      store.append('fen', [entryOf(1), entryOf(2)]),
      store.append('fen', [entryOf(4, { trial: 'moor' })]),
      store.append('moor', [entryOf(4, { trial: 'moor' })]),
    ]);
    expect(outcomes.map((outcome) => (outcome.status === 'fulfilled' ? outcome.value : 'refused'))).toEqual([
      { added: 2, known: 0, last: 2 },
      { added: 1, known: 1, last: 3 },
      'refused',
      { added: 1, known: 0, last: 1 },
    ]);
    expect((await store.entriesSince('fen', 0)).entries.map((entry) => entry.id)).toEqual([3, 1, 2].map(idOf));
    await store.close();
  });

  it('acknowledges none of what came together when the disk takes none of it', async () => {
    const path = nextFile();
    const store = openSqliteStore(path);
    await store.append('fen', [entryOf(1)]);
    const other = new Database(path);
    other.exec('DROP TABLE trials');
    const outcomes = await Promise.allSettled([
      store.append('fen', [entryOf(2)]),
      store.append('moor', [entryOf(3, { trial: 'moor' })]),
    ]);
    expect(outcomes.map((outcome) => outcome.status)).toEqual(['rejected', 'rejected']);
    expect(other.prepare('SELECT count(*) AS n FROM entries').all()).toEqual([{ n: 1 }]);
    other.close();
    await store.close();
  });

  it('says so when it is no database', () => {
    const path = join(folder, 'letter.sqlite');
    writeFileSync(path, 'Dear all, this is a letter and nothing else. '.repeat(50));
    expect(() => openSqliteStore(path)).toThrow(
      /^The shelf in .* is damaged \(it is not a database\); nothing was changed\. No good backup of it is known\. .*cupel restore \(/,
    );
  });

  it('says so when a page of it is damaged', async () => {
    const path = nextFile();
    const store = openSqliteStore(path);
    await store.append(
      'fen',
      Array.from({ length: 400 }, (_, n) => entryOf(n)),
    );
    await store.close();
    const bytes = readFileSync(path);
    // Leaves the first page, which holds the header and the list of tables, as it is.
    bytes.fill(7, 4096);
    writeFileSync(path, bytes);
    expect(() => openSqliteStore(path)).toThrow(/is damaged/);
  });

  it('says so when a newer Cupel wrote it, and leaves it alone', async () => {
    const path = nextFile();
    await openSqliteStore(path).close();
    const raw = new Database(path);
    raw.exec('PRAGMA user_version = 9999');
    raw.close();
    expect(() => openSqliteStore(path)).toThrow(/newer Cupel/);
  });

  it('says so when the folder cannot be made', () => {
    const file = join(folder, 'a file');
    writeFileSync(file, '');
    expect(() => openSqliteStore(join(file, 'shelf.sqlite'))).toThrow(
      /a file cannot be made: there is a file of that name; name another place for the shelf in CUPEL_HOME\.$/,
    );
  });
});
