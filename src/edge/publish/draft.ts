import { partFindings } from '../../findings/partFindings.ts';
import type { Entry } from '../../journal/entry.ts';
import type { PartPlace } from '../../journal/kinds/seal.ts';
import { entriesByCode } from '../../trial/byCode.ts';
import { fold } from '../../trial/fold.ts';
import type { Published } from './published.ts';

/** What a part of these places would say if it were sealed now; by codes while names are hidden. */
export function draftOf(
  entries: readonly Entry[],
  places: readonly PartPlace[],
  { level, draws }: { level: number; draws: number | 'auto' },
): Published {
  const trial = fold(entries);
  const shown = trial.blinding.blind ? entriesByCode(entries, trial) : entries;
  const computed = partFindings(shown, { places, holds: null, level, draws });
  return {
    entries: shown,
    trial: { ...computed.trial, replies: trial.blinding.blind ? [] : trial.replies },
    findings: computed.findings,
    part: null,
    changed: null,
  };
}
