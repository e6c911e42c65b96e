/**
 * The trial that is open, as this browser holds it. What is said here is written to this browser's own disk first and sent
 * afterwards; whether the bench computer has it is known only once it has said so.
 */
import { computed, signal } from '@preact/signals';
import { checkBody } from '../../../../journal/bodyCheck.ts';
import type { Entry, EntryKind } from '../../../../journal/entry.ts';
import { checkEntry } from '../../../../journal/entryCheck.ts';
import { emptyOutbox, letGo, type Outbox, say as sayInto } from '../../../../journal/sync/outbox.ts';
import { fold } from '../../../../trial/fold.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { readsOnly } from '../devices.ts';
import { type Database, openDatabase, readOutbox, writeOutbox } from './database.ts';
import { deviceName, nextId, noteIds, recorder } from './device.ts';
import { Exchange, type Link } from './exchange.ts';
import { photosFor } from './photos.ts';

export interface Held {
  trial: string;
  outbox: Outbox;
  /** False in a browser that keeps nothing: what waits is lost with the page. */
  keeps: boolean;
  link: Link;
  /** What the bench computer, or the lack of it, said last; empty when all is well. */
  sentence: string;
  /** What of the trial the bench computer can no longer read, and what to do; empty when nothing. */
  damaged: string;
  /** True once the bench computer was asked, whatever came of it. */
  asked: boolean;
}

export const held = signal<Held | null>(null);

/** What the open journal means; null until something is held. */
export const folded = computed<Trial | null>(() => meaningOf(entries.value));

let lastFolded: { journal: readonly Entry[]; trial: Trial | null } = { journal: [], trial: null };

/** The fold of a journal; asking for the same journal again costs nothing. */
function meaningOf(journal: readonly Entry[]): Trial | null {
  if (journal !== lastFolded.journal) lastFolded = { journal, trial: journal.length === 0 ? null : fold(journal) };
  return lastFolded.trial;
}

/** Said to whoever would record on a device that was let in to read. */
const READS_ONLY =
  'This device only reads, so nothing was recorded. Record at the bench computer, or add this device anew.';

/** The entries of the open trial, in order. Changes only when an entry came. */
export const entries = computed<readonly Entry[]>(() => held.value?.outbox.journal ?? []);

/** Those who hear what the journal is about to hold while it is still being written, so that they can work ahead. */
export const ahead = new Set<(journal: readonly Entry[]) => void>();

let database: Promise<Database | null> | null = null;
let exchange: Exchange | null = null;
let others: BroadcastChannel | null = null;
let writing: Promise<void> = Promise.resolve();

/** This browser's own store; null where it keeps none. */
export function ownDatabase(): Promise<Database | null> {
  database ??= openDatabase().catch(() => null);
  return database;
}

/** Opens a trial's journal: what this browser holds at once, then what the bench computer has more. */
export async function openJournal(trial: string): Promise<void> {
  if (held.value?.trial === trial) return exchange?.nudge();
  closeJournal();
  const outbox = emptyOutbox(trial);
  held.value = { trial, outbox, keeps: true, link: 'asking', sentence: '', damaged: '', asked: false };
  const own = await ownDatabase();
  const kept = own === null ? outbox : await readOutbox(own, trial).catch(() => outbox);
  if (held.value?.trial !== trial || exchange !== null) return;
  noteIds(kept.journal);
  alter({ outbox: kept, keeps: own !== null });
  hearOtherTabs(trial);
  exchange = new Exchange({
    outbox: () => held.value?.outbox ?? emptyOutbox(trial),
    change: (step) => change(trial, step),
    sendPhotos: (store) => photosFor(trial, store),
    damaged: (sentence) =>
      held.value?.trial === trial && held.value.damaged !== sentence && alter({ damaged: sentence }),
    tell: (link, sentence) => held.value?.trial === trial && alter({ link, sentence, asked: true }),
  });
}

/** Has the bench computer asked anew, because something found it out of reach: so it is noticed once it is back. */
export const askAgain = (): void => exchange?.nudge();

/** Lets go of the open journal; what it holds stays in this browser. */
function closeJournal(): void {
  exchange?.stop();
  others?.close();
  exchange = null;
  others = null;
  held.value = null;
}

/**
 * Says something: settles with the entry once it is on this browser's disk.
 *
 * @throws when the entry is none, or this browser refuses to keep it
 */
export async function say(kind: EntryKind, body: Readonly<Record<string, string>>): Promise<Entry> {
  const [entry] = await sayAll([{ kind, body }]);
  return entry!;
}

/**
 * Says several things as one, such as the rows of a file: all of them are on this browser's disk once it settles, or none is.
 *
 * @throws as `say`, for the first that is no entry
 */
export async function sayAll(
  things: readonly { kind: EntryKind; body: Readonly<Record<string, string>> }[],
): Promise<Entry[]> {
  const now = held.value;
  if (now === null) throw new Error('No trial is open.');
  // What the bench computer would never take must not wait here either.
  if (readsOnly.peek()) throw new Error(READS_ONLY);
  const said = things.map(({ kind, body }) => entryOf(now.trial, kind, body));
  await change(now.trial, (outbox) => said.reduce(sayInto, outbox));
  others?.postMessage('said');
  exchange?.nudge();
  return said;
}

function entryOf(trial: string, kind: EntryKind, body: Readonly<Record<string, string>>): Entry {
  const filled = Object.fromEntries(Object.entries(body).filter(([, cell]) => cell !== ''));
  const checked = checkEntry({
    id: nextId(),
    trial,
    kind,
    at: new Date().toISOString(),
    by: recorder.value,
    device: deviceName(),
    body: filled,
  });
  if (!checked.ok) throw new Error(`Found ${checked.found}; expected ${checked.expected}.`);
  const problem = checkBody(checked.value, Date.now());
  if (problem !== null)
    throw new Error(
      `Found ${problem.found} as ${problem.column}; expected ${problem.expected}. ${problem.advice ?? ''}`.trim(),
    );
  return checked.value;
}

/** What was said here and the bench computer would not take, with its sentence; the first one said first. */
export const notTaken = computed<readonly { entry: Entry; sentence: string }[]>(() => {
  const refused = held.value?.outbox.refused ?? {};
  return entries.value.flatMap((entry) => {
    const sentence = refused[entry.id];
    return sentence === undefined ? [] : [{ entry, sentence }];
  });
});

/** Takes an entry that the bench computer would not take off this device, where alone it is. */
export async function takeOff(id: string): Promise<void> {
  const trial = held.peek()?.trial;
  if (trial !== undefined) await change(trial, (now) => letGo(now, id));
}

/** One change after the other: each is on disk before the page shows it. */
function change(trial: string, step: (now: Outbox) => Outbox): Promise<void> {
  const done = writing.then(async () => {
    const now = held.value;
    if (now?.trial !== trial) return;
    const next = step(now.outbox);
    if (next === now.outbox) return;
    const own = await ownDatabase();
    const news = next.journal !== now.outbox.journal;
    if (news) for (const hear of ahead) hear(next.journal);
    const written = own === null ? null : writeOutbox(own, now.outbox, next);
    // While the disk is at work, what follows is worked out already.
    if (news) meaningOf(next.journal);
    await written;
    noteIds(next.journal);
    if (held.value?.trial === trial) alter({ outbox: next });
  });
  writing = done.catch(() => {});
  return done;
}

function alter(next: Partial<Held>): void {
  if (held.value !== null) held.value = { ...held.value, ...next };
}

/** Another tab on the same trial writes to the same disk: takes what it said, which it also sends. */
function hearOtherTabs(trial: string): void {
  others = new BroadcastChannel(`cupel ${trial}`);
  others.addEventListener('message', async () => {
    const own = await ownDatabase();
    if (own === null) return;
    const { journal } = await readOutbox(own, trial);
    const known = new Set(entries.peek().map(({ id }) => id));
    const news = journal.filter(({ id }) => !known.has(id));
    await change(trial, (now) => news.reduce(sayInto, now));
  });
}
