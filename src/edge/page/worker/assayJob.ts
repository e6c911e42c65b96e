import { findingsOf } from '../../../findings/findings.ts';
import type { Findings } from '../../../findings/schema.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** Share of cases that a published interval holds the true value in. */
const LEVEL = 0.95;

/** Entries to findings, by the same fold and the same assay as the command line. */
export function assayJob({ entries, draws }: Jobs['assay']['ask'], tell: (drawn: number) => void): Findings {
  const onBlock = (drawn: number) => {
    tell(drawn);
    return false;
  };
  return findingsOf(fold(entries), { level: LEVEL, draws, onBlock });
}
