import { findingsOf } from '../../../findings/findings.ts';
import { fold } from '../../../trial/fold.ts';
import type { Assayed, Jobs } from './jobs.ts';

/** Share of cases that a published interval holds the true value in. */
const LEVEL = 0.95;

/** Entries to findings, by the same fold and the same assay as the command line. */
export function assayJob({ entries, draws }: Jobs['assay']['ask'], tell: (drawn: number) => void): Assayed {
  const trial = fold(entries);
  const onBlock = (drawn: number) => {
    tell(drawn);
    return false;
  };
  const findings = findingsOf(trial, { level: LEVEL, draws, onBlock });
  return { findings, place: trial.place, readings: trial.readings };
}
