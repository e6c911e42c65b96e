import type { Entry } from '../../journal/entry.ts';

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
}

/** What came of an append: entries that are new, and entries that were there already and stayed as they were. */
export interface Appended {
  added: number;
  known: number;
}

/**
 * Where journals are kept: entries and blobs, nothing else. Nothing is ever changed or removed. Everything but the list
 * of trials names one trial, so a store may be divided by trial.
 */
export interface Store {
  /**
   * Appends entries to a trial's journal and answers once they are on disk. All of them or, when one belongs to another
   * trial, none. An entry whose id is known is left alone, so sending the same entries again changes nothing.
   */
  append(trial: string, entries: readonly Entry[]): Promise<Appended>;
  /** Entries in the order of their ids, those after the id `after` only, at most `limit` of them. */
  entries(trial: string, after?: string, limit?: number): Promise<Entry[]>;
  /** Every trial, the one opened last first. */
  trials(): Promise<TrialLine[]>;
  has(trial: string): Promise<boolean>;
  /** Keeps a photo or a log and answers its name: the SHA-256 of its content, in hexadecimal. */
  putBlob(trial: string, bytes: Uint8Array): Promise<string>;
  getBlob(trial: string, name: string): Promise<Uint8Array | null>;
  close(): Promise<void>;
}

/** Largest blob that a store takes, bytes: a phone's photo many times over. Ours, to be changed freely. */
export const LARGEST_BLOB = 32 * 1024 * 1024;

/** What a store refuses, in a sentence for the person. */
export class StoreRefusal extends Error {
  override name = 'StoreRefusal';
}
