/** What this browser keeps of every trial: its entries, which of them wait, how far was read, and photos to be sent. */
import type { Entry } from '../../../../journal/entry.ts';
import { emptyOutbox, type Outbox } from '../../../../journal/sync/outbox.ts';
import { answered, opened, settled } from './promised.ts';

const NAME = 'cupel';
const VERSION = 1;

/** How far the reading of a trial has come. */
interface TrialRow {
  trial: string;
  after: number;
  store: string;
}

/** A photo or log as it was handed over. It stays here, so that it can be sent again to a store that has lost it. */
export interface KeptBlob {
  trial: string;
  /** SHA-256 of the bytes, in hexadecimal. */
  name: string;
  bytes: Uint8Array<ArrayBuffer>;
  /** Name of the store that is known to have it; empty until one is. */
  sent: string;
}

export type Database = IDBDatabase;

/** @throws when the browser keeps nothing, as in some private windows */
export function openDatabase(): Promise<Database> {
  return opened(NAME, VERSION, (database) => {
    database.createObjectStore('entries', { keyPath: ['trial', 'id'] });
    database.createObjectStore('waiting', { keyPath: ['trial', 'id'] });
    database.createObjectStore('trials', { keyPath: 'trial' });
    database.createObjectStore('blobs', { keyPath: ['trial', 'name'] });
  });
}

/** All keys that begin with a trial's name. */
const ofTrial = (trial: string) => IDBKeyRange.bound([trial], [trial, []]);

/** What is held of a trial; nothing yet gives an empty outbox. */
export async function readOutbox(database: Database, trial: string): Promise<Outbox> {
  const reading = database.transaction(['entries', 'waiting', 'trials']);
  const [journal, waiting, row] = await Promise.all([
    answered<Entry[]>(reading.objectStore('entries').getAll(ofTrial(trial))),
    answered<IDBValidKey[]>(reading.objectStore('waiting').getAllKeys(ofTrial(trial))),
    answered<TrialRow | undefined>(reading.objectStore('trials').get(trial)),
  ]);
  const unacknowledged = waiting.map((key) => (key as [string, string])[1]);
  return { ...emptyOutbox(trial), journal, unacknowledged, after: row?.after ?? 0, store: row?.store ?? '' };
}

/** What changed from one state of the outbox to the next, written in one piece. Settles once it is on disk. */
export async function writeOutbox(database: Database, was: Outbox, is: Outbox): Promise<void> {
  const writing = database.transaction(['entries', 'waiting', 'trials'], 'readwrite', { durability: 'strict' });
  const done = settled(writing);
  const held = new Map(was.journal.map((entry) => [entry.id, entry]));
  const waited = new Set(was.unacknowledged);
  const waits = new Set(is.unacknowledged);
  const holds = new Set(is.journal.map(({ id }) => id));
  for (const id of held.keys()) if (!holds.has(id)) writing.objectStore('entries').delete([is.trial, id]);
  for (const entry of is.journal) if (held.get(entry.id) !== entry) writing.objectStore('entries').put(entry);
  for (const id of waits) if (!waited.has(id)) writing.objectStore('waiting').put({ trial: is.trial, id });
  for (const id of waited) if (!waits.has(id)) writing.objectStore('waiting').delete([is.trial, id]);
  if (is.after !== was.after || is.store !== was.store)
    writing.objectStore('trials').put({ trial: is.trial, after: is.after, store: is.store } satisfies TrialRow);
  await done;
}

/** Keeps a photo until it is sent. */
export async function writeBlob(database: Database, blob: KeptBlob): Promise<void> {
  const writing = database.transaction('blobs', 'readwrite', { durability: 'strict' });
  const done = settled(writing);
  writing.objectStore('blobs').put(blob);
  await done;
}

/** Photos that the store of this name is not known to have. */
export async function blobsToSend(database: Database, trial: string, store: string): Promise<KeptBlob[]> {
  const all = await answered<KeptBlob[]>(database.transaction('blobs').objectStore('blobs').getAll(ofTrial(trial)));
  return all.filter((blob) => blob.sent !== store);
}
