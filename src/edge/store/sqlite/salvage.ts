import { copyFileSync, existsSync, rmSync } from 'node:fs';
import Database from 'libsql';
import { blobName } from '../blobName.ts';
import type { Store } from '../store.ts';
import { getBlob } from './blobs.ts';
import { damageIn, notADatabase, unlessDamaged } from './damage.ts';
import { type Before, heldBefore, type LostEntries } from './heldBefore.ts';
import { looseRows } from './loosePages.ts';
import { type LooseBlob, type LooseEntry, looseBlobOf, looseEntryOf } from './looseRows.ts';
import { migrate } from './migrations.ts';
import { closeDatabase } from './prepared.ts';
import { readReadable } from './readable.ts';
import { releaseClosed } from './release.ts';
import { type Bytes, decoded } from './text.ts';

/** What came over from a shelf, and what did not. */
export interface Salvaged {
  entries: number;
  blobs: number;
  lost: LostEntries[];
  /** Photos and logs that can no longer be read there, and that the other store does not hold either. */
  lostBlobs: number;
  /** Why nothing at all could be read; null when something could. */
  unreadable: string | null;
}

/** Entries that are read at a time. */
const PAGE = 1000;

/**
 * Adds to `into` whatever can still be read of the shelf in `path`, sound or damaged, and it does not hold: the union of both,
 * as between any two journals. The shelf itself is only read; what is looked through is a copy beside it.
 */
export async function salvageInto(path: string, into: Store): Promise<Salvaged> {
  const salvaged: Salvaged = { entries: 0, blobs: 0, lost: [], lostBlobs: 0, unreadable: notADatabase(path) };
  const before = await heldBefore(into);
  const copy = `${path}.salvaging`;
  const remove = () => {
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(`${copy}${ending}`, { force: true });
  };
  remove();
  for (const ending of ['', '-wal'])
    if (existsSync(`${path}${ending}`)) copyFileSync(`${path}${ending}`, `${copy}${ending}`);
  try {
    // What has lost the head of its file is no database any more, and its pages may still be there.
    const damaged = salvaged.unreadable !== null || (await salvageTables(copy, into, salvaged, before));
    if (damaged || before.lost().length + salvaged.lostBlobs > 0) await salvageLoose(copy, into, salvaged, before);
    salvaged.lost = before.lost();
  } finally {
    remove();
  }
  return salvaged;
}

/** What the tables still lead to. Answers whether there is damage, so that there may be more. */
async function salvageTables(copy: string, into: Store, salvaged: Salvaged, before: Before): Promise<boolean> {
  let database: Database.Database | null = null;
  try {
    database = new Database(copy);
    const damage = damageIn(database);
    migrate(database);
    for (const trial of trialsIn(database)) {
      await salvageEntries(database, trial, into, salvaged, before);
      await salvageBlobs(database, trial, into, salvaged);
    }
    return damage !== null;
  } catch (error) {
    salvaged.unreadable = (error as Error).message.split('\n')[0] ?? '';
    return true;
  } finally {
    if (database !== null) closeDatabase(database);
    await releaseClosed();
  }
}

/** What only the pages themselves still hold, where a damaged tree no longer leads to them. */
async function salvageLoose(copy: string, into: Store, salvaged: Salvaged, before: Before): Promise<void> {
  const found = new Map<string, LooseEntry[]>();
  const seen = new Map<string, Set<number>>();
  const add = async (trial: string) => {
    const entries = found.get(trial)!.map(({ entry }) => entry);
    found.delete(trial);
    salvaged.entries += (await into.append(trial, entries)).added;
  };
  for (const row of looseRows(copy)) {
    const loose = looseEntryOf(row);
    const blob = loose === null ? looseBlobOf(row) : null;
    if (blob !== null) await addBlob(blob, into, salvaged);
    if (loose === null) continue;
    const { trial, id } = loose.entry;
    before.compare(trial, loose.seq, id);
    seen.set(trial, (seen.get(trial) ?? new Set()).add(loose.seq));
    const list = found.get(trial) ?? [];
    found.set(trial, list);
    list.push(loose);
    if (list.length >= PAGE) await add(trial);
  }
  for (const trial of [...found.keys()]) await add(trial);
  for (const [trial, numbers] of seen) before.missing(trial, gapsIn(numbers), numbers);
}

/** Numbers from 1 to the greatest that are not among these. */
function gapsIn(numbers: ReadonlySet<number>): number[] {
  let last = 0;
  for (const number of numbers) last = Math.max(last, number);
  const gaps: number[] = [];
  for (let number = 1; number <= last; number += 1) if (!numbers.has(number)) gaps.push(number);
  return gaps;
}

async function addBlob({ trial, bytes }: LooseBlob, into: Store, salvaged: Salvaged): Promise<void> {
  if ((await into.blobNames(trial)).includes(blobName(bytes))) return;
  await into.putBlob(trial, bytes);
  salvaged.blobs += 1;
  salvaged.lostBlobs = Math.max(0, salvaged.lostBlobs - 1);
}

/** The table itself and each index of it: where one cannot be walked, another may. */
const WAYS_TO_ENTRIES = ['NOT INDEXED', 'INDEXED BY entries_by_id', 'INDEXED BY entries_by_kind'].map(
  (way) => `entries ${way}`,
);

/** Every trial that any table still names. */
function trialsIn(database: Database.Database): string[] {
  const names = new Set<string>();
  for (const table of ['trials', ...WAYS_TO_ENTRIES, 'blobs']) {
    // One name after the other, so that a page that cannot be read hides only what comes after it.
    const next = `SELECT CAST(min(trial) AS BLOB) AS name FROM ${table} WHERE trial > ?`;
    for (let last = ''; ; ) {
      const rows = unlessDamaged(() => database.prepare(next).all(last) as { name: Bytes | null }[]);
      const name = rows?.[0]?.name == null ? null : decoded(rows[0].name);
      if (name === null || name <= last) break;
      names.add(name);
      last = name;
    }
  }
  return [...names];
}

async function salvageEntries(
  database: Database.Database,
  trial: string,
  into: Store,
  salvaged: Salvaged,
  before: Before,
): Promise<void> {
  for (let seq = 0; ; ) {
    const { entries, next, damaged } = readReadable(database, trial, seq, PAGE);
    if (next === seq) return;
    const gone = new Set(damaged);
    const numbers = Array.from({ length: next - seq }, (_, n) => seq + n + 1).filter((number) => !gone.has(number));
    entries.forEach(({ id }, n) => {
      before.compare(trial, numbers[n]!, id);
    });
    before.missing(trial, damaged, new Set());
    salvaged.entries += (await into.append(trial, entries)).added;
    seq = next;
  }
}

async function salvageBlobs(
  database: Database.Database,
  trial: string,
  into: Store,
  salvaged: Salvaged,
): Promise<void> {
  const held = new Set(await into.blobNames(trial));
  const query = 'SELECT CAST(min(name) AS BLOB) AS name FROM blobs WHERE trial = ? AND name > ?';
  for (let last = ''; ; ) {
    const rows = unlessDamaged(() => database.prepare(query).all(trial, last) as { name: Bytes | null }[]);
    const name = rows?.[0]?.name == null ? null : decoded(rows[0].name);
    if (name === null || name <= last) return;
    last = name;
    if (held.has(name)) continue;
    const bytes = unlessDamaged(() => getBlob(database, trial, name));
    if (bytes === null) salvaged.lostBlobs += 1;
    else {
      await into.putBlob(trial, bytes);
      salvaged.blobs += 1;
    }
  }
}
