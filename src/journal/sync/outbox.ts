/**
 * One device's side of keeping a trial on several devices: what it holds, what the bench computer has not acknowledged yet,
 * and how far it has read. Plain data and pure functions; sending, storing and timing belong to the edge.
 *
 * What the server must do (the other side, held by the store):
 * - `POST /api/entries` {trial, entries} keeps an entry once, by its id, and answers after it is on disk. Sending again is
 *   harmless: an entry that is there stays as it is, with the arrival number that it had. An entry that is impossible is named
 *   in the answer and holds no other back ({@link refused}); one that was acknowledged is acknowledged ever after.
 * - Every entry gets an arrival number when it is first kept: 1, 2, 3 … within its trial. `GET /api/entries?trial=&after=N`
 *   answers {entries, next}: entries that arrived after number N, in order of arrival, at most so many, and the arrival number
 *   of the last of them (N when there are none). The cursor is the arrival number and never an id, because ids are made by the
 *   writers: what a phone wrote without a network carries an older id than what others have read past already.
 * - Arrival numbers must become visible in their order. Two transactions that write to one trial at once must not let a
 *   reader see number 7 before number 6 is there, or 6 is never read: number them under a lock on the trial's own row.
 * - A store that is put back from an older copy loses what came later, though it was acknowledged. So a store has a name that
 *   is drawn when it is made and drawn anew when it is restored, and stands as `store` in every answer to POST and GET. A device
 *   calls {@link met} with it before it takes anything else from the answer, and sends all that it holds to a new one.
 */
import type { Entry } from '../entry.ts';
import { find, joined } from './idOrder.ts';

export interface Outbox {
  trial: string;
  /** Everything this device holds, its own and what it read, each once, in the order of their ids. */
  journal: readonly Entry[];
  /** Ids of entries that the server is not known to have, in the order in which they were said. */
  unacknowledged: readonly string[];
  /**
   * Those of them that the server would not take, with its sentence by id. They stay here and are not sent again by themselves:
   * not before the page is opened anew or another store is met, either of which may come with another version.
   */
  refused: Readonly<Record<string, string>>;
  /** Arrival number up to which the server's journal was read. */
  after: number;
  /** Name of the store that was met; empty before the first meeting. */
  store: string;
}

/** Most entries, and most characters of them, in one batch. One entry may be larger than that, and then goes alone. */
export const MOST_IN_BATCH = 200;
export const MOST_CHARACTERS = 1_000_000;

export function emptyOutbox(trial: string): Outbox {
  return { trial, journal: [], unacknowledged: [], refused: {}, after: 0, store: '' };
}

function refuseStranger(state: Outbox, entry: Entry): void {
  if (entry.trial !== state.trial)
    throw new RangeError(`an entry of trial "${entry.trial}" does not belong to "${state.trial}"`);
}

/** Holds an entry said on this device; one that is held already changes nothing. Keep the new state on disk before saying so. */
export function say(state: Outbox, entry: Entry): Outbox {
  refuseStranger(state, entry);
  if (find(state.journal, entry.id) !== null) return state;
  const journal = joined(state.journal, [entry]);
  return { ...state, journal, unacknowledged: [...state.unacknowledged, entry.id] };
}

const lengthOf = (entry: Entry): number => JSON.stringify(entry).length;

/**
 * What to send next, in the order in which it was said; empty when the server has everything that it takes. Does not change the
 * state: what is neither acknowledged nor refused is sent again.
 */
export function toSend(state: Outbox, most = MOST_IN_BATCH, mostCharacters = MOST_CHARACTERS): Entry[] {
  const batch: Entry[] = [];
  let characters = 0;
  for (const id of state.unacknowledged) {
    if (batch.length === most) break;
    if (Object.hasOwn(state.refused, id)) continue;
    const entry = find(state.journal, id)!;
    characters += lengthOf(entry);
    if (batch.length > 0 && characters > mostCharacters) break;
    batch.push(entry);
  }
  return batch;
}

/** The server said that these are on its disk. Ids that did not wait change nothing. */
export function acknowledged(state: Outbox, ids: Iterable<string>): Outbox {
  const done = new Set(ids);
  const unacknowledged = state.unacknowledged.filter((id) => !done.has(id));
  if (unacknowledged.length === state.unacknowledged.length) return state;
  return { ...state, unacknowledged, refused: without(state.refused, done) };
}

/** The server would not take these, and said why. They wait on, and are shown with its sentence. Ids that do not wait change nothing. */
export function refused(state: Outbox, why: ReadonlyMap<string, string>): Outbox {
  const news = state.unacknowledged.filter((id) => why.has(id) && state.refused[id] !== why.get(id));
  if (news.length === 0) return state;
  return { ...state, refused: { ...state.refused, ...Object.fromEntries(news.map((id) => [id, why.get(id)!])) } };
}

/**
 * A person lets go of an entry that the server would not take: it is gone from this device, and no other ever had it. Any other
 * entry stays.
 */
export function letGo(state: Outbox, id: string): Outbox {
  if (!Object.hasOwn(state.refused, id)) return state;
  return {
    ...state,
    journal: state.journal.filter((entry) => entry.id !== id),
    unacknowledged: state.unacknowledged.filter((each) => each !== id),
    refused: without(state.refused, new Set([id])),
  };
}

function without(refused: Outbox['refused'], ids: ReadonlySet<string>): Outbox['refused'] {
  const left = Object.entries(refused).filter(([id]) => !ids.has(id));
  return left.length === Object.keys(refused).length ? refused : Object.fromEntries(left);
}

/**
 * The server's answer to a reading. Entries held already are not held twice, and one's own that come back are acknowledged:
 * the server has them, even if its answer to the sending was lost. The journal stays the same object when nothing was new.
 *
 * Should the server hold another entry under an id of ours, which no honest writer makes, the server's is kept, so that all
 * devices agree.
 *
 * @param next arrival number of the last of `entries`; an older answer that comes late does not turn the cursor back
 * @param asked the cursor that was asked with. An answer that begins beyond `state.after` leaves a gap, as after a store was
 *   put back ({@link met}): its entries are kept, and the cursor stays
 */
export function received(state: Outbox, entries: readonly Entry[], next: number, asked: number): Outbox {
  for (const entry of entries) refuseStranger(state, entry);
  const heard = acknowledged(
    state,
    entries.map(({ id }) => id),
  );
  const journal = joined(heard.journal, entries);
  const after = asked > heard.after ? heard.after : Math.max(heard.after, next);
  return journal === heard.journal && after === heard.after ? heard : { ...heard, journal, after };
}

/**
 * The name of the store that answers. A new one was made or put back from an older copy: reading begins again, and
 * everything held here waits to be sent again, because the store may have lost it.
 */
export function met(state: Outbox, store: string): Outbox {
  if (store === state.store) return state;
  if (state.store === '') return { ...state, store };
  return { ...state, store, after: 0, unacknowledged: state.journal.map(({ id }) => id), refused: {} };
}

/** Ids of what is not known to be on the bench computer, refused or not, in the order in which it was said: shown until it is empty. */
export const waiting = (state: Outbox): readonly string[] => state.unacknowledged;
