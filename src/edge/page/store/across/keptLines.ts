/** The lines of the shelf that this browser keeps: apart from the journals, because they can be had again at any time. */
import type { ShelfCable } from '../../../../findings/shapes/shelf.ts';
import { answered, opened, settled } from '../journal/promised.ts';

/** Lines of one trial, with the mark by which the bench computer knows whether they are still right. */
export interface KeptTrial {
  trial: string;
  mark: string;
  cables: ShelfCable[];
}

const NAME = 'cupel lines';
const VERSION = 1;
const STORE = 'trials';

let database: Promise<IDBDatabase | null> | null = null;

function ownLines(): Promise<IDBDatabase | null> {
  database ??= opened(NAME, VERSION, (made) => {
    made.createObjectStore(STORE, { keyPath: 'trial' });
  }).catch(() => null);
  return database;
}

/** What is kept; nothing in a browser that keeps nothing. */
export async function readKeptLines(): Promise<KeptTrial[]> {
  const own = await ownLines();
  if (own === null) return [];
  return answered<KeptTrial[]>(own.transaction(STORE).objectStore(STORE).getAll()).catch(() => []);
}

/** Keeps news, and lets go of trials that are gone. What cannot be kept is asked for again next time. */
export async function keepLines(news: readonly KeptTrial[], gone: readonly string[]): Promise<void> {
  const own = await ownLines();
  if (own === null || news.length + gone.length === 0) return;
  const writing = own.transaction(STORE, 'readwrite');
  const done = settled(writing).catch(() => {});
  for (const trial of gone) writing.objectStore(STORE).delete(trial);
  for (const each of news) writing.objectStore(STORE).put(each);
  await done;
}
