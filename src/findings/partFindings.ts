import type { Entry } from '../journal/entry.ts';
import type { PartPlace } from '../journal/kinds/seal.ts';
import { fold } from '../trial/fold.ts';
import { partEntries } from '../trial/partEntries.ts';
import type { Trial } from '../trial/trial.ts';
import { findingsOf } from './findings.ts';
import type { Findings } from './schema.ts';

export interface PartAsked {
  places: readonly PartPlace[];
  /** Marks of the rows that were sealed (see `trial/heldRows.ts`); null for the journal as it stands now. */
  holds: ReadonlyMap<string, number> | null;
  level: number;
  draws: number | 'auto';
}

/** A part of a trial: its rows as a trial of their own, and what they say. */
export interface PartComputed {
  trial: Trial;
  findings: Findings;
}

/**
 * What a part publishes, computed from its own rows alone: whoever has those gets the same digits, whatever was measured
 * elsewhere or said later.
 */
export function partFindings(entries: readonly Entry[], { places, holds, level, draws }: PartAsked): PartComputed {
  const trial = fold(partEntries(entries, { places, holds }));
  return { trial, findings: withinPlaces(findingsOf(trial, { level, draws }), places) };
}

/** Findings with the parts of other places taken out. */
export function withinPlaces(findings: Findings, places: readonly PartPlace[]): Findings {
  const has = (place: PartPlace) => places.includes(place);
  return {
    ...findings,
    flex: has('bend') ? findings.flex : null,
    jacket: has('jacket') ? findings.jacket : null,
    current: has('amps') ? findings.current : null,
    decide: has('standing') ? findings.decide : null,
  };
}
