/** What was measured with, and how wrong it may be. */
import type { TypedRow } from './typedRow.ts';

export interface Instrument extends TypedRow {
  instrument: string;
  /** As typed: 'kitchen scale', 'digital caliper', 'four-wire meter' … */
  kind: string;
  /** SI unit of what it reads. */
  resolution: number;
  limit: ErrorLimit;
  /** As stated or assumed, before any check; only on a tool that was checked. */
  ownLimit?: ErrorLimit;
  /** K; the span in which the limit holds, null when the box does not say. */
  validFrom: number | null;
  validTo: number | null;
}

/** Limit of error at reading x: ±(absolute + fraction · x), taken as uniform. `absolute` has counts already folded in. */
export interface ErrorLimit {
  /** SI unit of what it reads. */
  absolute: number;
  fraction: number;
  /** True when nothing was stated and the usual limit for the kind of tool was taken; every finding that leans on it says so. */
  assumed: boolean;
  /** True when the limit comes from a check against something known; findings that lean on it say so. */
  checked?: boolean;
}

/** One check of a tool. SI units of what the tool reads. */
export interface Check extends TypedRow {
  check: string;
  instrument: string;
  /** In lower case; `zero` shows drift, everything else is a known value; empty when not stated. */
  against: string;
  zero: boolean;
  known: number;
  /** How far the known thing may be from `known`. */
  knownError: number;
  read: number;
  /** K */
  temperature: number | null;
}
