import { partFindings } from '../../findings/partFindings.ts';
import type { Entry } from '../../journal/entry.ts';
import { type ChangedSince, changedSince, correctionsAfter } from '../../report/publish/changedSince.ts';
import { unseal } from '../../report/publish/seal.ts';
import { corrections } from '../../trial/corrections.ts';
import { fold } from '../../trial/fold.ts';

/** A sealed part held against the journal as it stands. */
export interface PartChecked {
  part: string;
  /** Whether its rows and every digit come out again; 'lost' where rows as sealed are known no more. */
  again: 'same' | 'other digits' | 'lost';
  changed: ChangedSince | null;
}

/** Every sealed part computed again from its own rows, and held against what the same places would say today. */
export function checkedParts(entries: readonly Entry[]): PartChecked[] {
  const trial = fold(entries);
  const said = corrections(entries, trial);
  return trial.parts.map((part): PartChecked => {
    const again = unseal(entries, part);
    if (again === null) return { part: part.part, again: 'lost', changed: null };
    const { places, level, draws } = part;
    const today = partFindings(entries, { places, holds: null, level, draws }).findings;
    return {
      part: part.part,
      again: again.sameFindings ? 'same' : 'other digits',
      changed: changedSince(again.findings, today, correctionsAfter(said, part, entries)),
    };
  });
}
