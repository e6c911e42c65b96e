import { drawnCurrent } from '../../../findings/current/drawn.ts';
import { runCandidates } from '../../../findings/current/runCables.ts';
import { rowsOfTrial } from '../../../findings/rows/rowsOfTrial.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** What Amps draws beyond the findings, and the measured cables as candidates for a run. */
export function ampsJob({ entries, findings }: Jobs['amps']['ask']): Jobs['amps']['answer'] {
  const trial = fold(entries);
  const rows = rowsOfTrial(trial);
  return { ...drawnCurrent(trial, rows, findings.cables), candidates: runCandidates(trial, rows, findings) };
}
