import type { Entry } from '../../journal/entry.ts';
import type { DeviceBook } from './devices.ts';

/** One trial as the shelf lists it. */
export interface TrialLine {
  trial: string;
  title: string;
  place: string;
  /** How many cables its journal names. */
  cables: number;
  /** How many entries its journal holds. */
  entries: number;
  /** As typed, usually a date; null when nothing was stated. */
  openedOn: string | null;
  /** Why it was put away; missing while it stands on the shelf. */
  putAway?: string;
}

/** What came of an append: entries that are new, and entries that were there already and stayed as they were. */
export interface Appended {
  added: number;
  known: number;
  /** Arrival number of the trial's last entry; 0 when it has none. */
  last: number;
}

/** A stretch of a journal in the order of arrival. */
export interface Arrived {
  entries: Entry[];
  /** Arrival number of the last of them; where there are none, the number that was asked from. */
  next: number;
}

/** A stretch of a journal as far as it can be read, where the disk may have damaged some of it. */
export interface Readable extends Arrived {
  /** Arrival numbers, in their order, of entries that are not what was written. `next` is past them. */
  damaged: number[];
  /** What to do about them, in a sentence; empty when there are none. */
  advice: string;
}

/**
 * Where journals are kept: entries, blobs, and which devices may ask. An entry is never changed or removed. Everything
 * but the list of trials and the devices names one trial, so a store may be divided by trial.
 *
 * Each entry gets an arrival number when it is first kept: 1, 2, 3 … within its trial. Numbers become visible in their
 * order and without gaps: whoever has read up to `n` has read everything that will ever have a number up to `n`.
 */
export interface Store extends DeviceBook {
  /**
   * Appends entries to a trial's journal and answers once they are on disk. All of them or, when one belongs to another
   * trial, none. An entry whose id is known is left alone, so sending the same entries again changes nothing.
   */
  append(trial: string, entries: readonly Entry[]): Promise<Appended>;
  /** Entries in the order of their ids, those after the id `after` only, at most `limit` of them. */
  entries(trial: string, after?: string, limit?: number): Promise<Entry[]>;
  /** Entries that arrived after the number `seq`, in the order of arrival, at most `limit` of them. */
  entriesSince(trial: string, seq: number, limit?: number): Promise<Arrived>;
  /** The same as far as it can be read: for whoever shows a journal and says what is missing, and for nobody else. */
  readable(trial: string, seq: number, limit?: number): Promise<Readable>;
  /** Which of these ids the trial's journal holds. */
  heldIds(trial: string, ids: readonly string[]): Promise<Set<string>>;
  /** Every trial, the one opened last first. */
  trials(): Promise<TrialLine[]>;
  /** Names of the trials of which anything is kept, entries or blobs, in the order of their bytes in UTF-8. */
  trialNames(): Promise<string[]>;
  has(trial: string): Promise<boolean>;
  /**
   * Keeps a photo or a log and answers its name: the SHA-256 of its content, in hexadecimal.
   *
   * @throws BlobRefusal when it is too large or none of the kinds that are taken (see `blobKind.ts`).
   */
  putBlob(trial: string, bytes: Uint8Array): Promise<string>;
  getBlob(trial: string, name: string): Promise<Uint8Array | null>;
  /** Names of the trial's blobs, in their order. */
  blobNames(trial: string): Promise<string[]>;
  /**
   * The store's own name, drawn at random when it was made, and anew whenever it may hold less than it acknowledged or more
   * than its readers know: put back from a backup, left without a proper end, damaged, mended. A device that meets another
   * name than before must read from the start and send again all that it holds.
   */
  name(): Promise<string>;
  /** Draws another name, so that devices send again all that they hold. */
  rename(): Promise<void>;
  close(): Promise<void>;
}

/** Largest blob that a store takes, bytes: a phone's photo many times over. Ours, to be changed freely. */
export const LARGEST_BLOB = 32 * 1024 * 1024;

/** What a store refuses, in a sentence for the person. */
export class StoreRefusal extends Error {
  override name = 'StoreRefusal';
}

/** What to do where nothing better is known. */
export const USUAL_ADVICE =
  'Stop Cupel and put the last good backup back with cupel restore; whatever can still be read stays.';

/** Something that was kept is not what was written. `found` says what, `advice` what to do about it. */
export class DamagedData extends StoreRefusal {
  override name = 'DamagedData';
  readonly found: string;
  readonly advice: string;
  constructor(found: string, advice: string = USUAL_ADVICE, options?: ErrorOptions) {
    super(`${found} ${advice}`, options);
    this.found = found;
    this.advice = advice;
  }
}

/** A photo or log that no store takes: too large, empty, or of another kind. Sending it again will not help. */
export class BlobRefusal extends StoreRefusal {
  override name = 'BlobRefusal';
}

/** The half of a store that only reads its journals. */
export type ReadingStore = Pick<
  Store,
  'entries' | 'entriesSince' | 'readable' | 'trials' | 'trialNames' | 'has' | 'getBlob' | 'blobNames' | 'name'
>;
