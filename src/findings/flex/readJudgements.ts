import { cellQuantity } from '../../journal/cellQuantity.ts';
import type { JudgedPair } from '../../methods/flex/pairs/judgement.ts';
import type { Cable, Judgement, Trial } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';

/** Judgements as pairs of cables, and those that say nothing. */
export interface JudgementsRead {
  /** Cables that were judged, in the order of the trial. */
  cables: Cable[];
  pairs: JudgedPair[];
  judges: string[];
  /** How judges were kept from knowing, each once. */
  blinded: string[];
  /** °C, of the judgements that note one. */
  temperatures: number[];
  /** Judgements of two pieces of one cable, by name. */
  againstItself: string[];
  /** Judgements that name a piece nobody described, or give no result. */
  unreadable: string[];
}

const cellOf = ({ row }: Judgement, column: string) => (row[column] ?? '').trim();

function temperatureOf(judgement: Judgement): number | null {
  const typed = cellOf(judgement, 'temperature');
  if (typed === '') return null;
  const outcome = cellQuantity(typed, 'temperature', cellOf(judgement, 'temperature_unit') || 'C');
  return outcome.ok ? outcome.value.value - ZERO_CELSIUS : null;
}

const RESULTS: ReadonlySet<string> = new Set(['left', 'right', 'same']);

/** Reads a trial's judgements. Several pieces of one cable stand for that cable. */
export function readJudgements(trial: Trial): JudgementsRead {
  const cableOf = new Map(trial.specimens.map((s) => [s.specimen, s.cable]));
  const known = new Set(trial.cables.map((c) => c.cable));
  const kept: { left: string; right: string; result: JudgedPair['result']; by: string; judgement: Judgement }[] = [];
  const againstItself: string[] = [];
  const unreadable: string[] = [];
  for (const judgement of trial.judgements) {
    const left = cableOf.get(judgement.left);
    const right = cableOf.get(judgement.right);
    const result = cellOf(judgement, 'result').toLowerCase();
    if (!left || !right || !known.has(left) || !known.has(right) || !RESULTS.has(result))
      unreadable.push(judgement.judgement);
    else if (left === right) againstItself.push(judgement.judgement);
    else kept.push({ left, right, result: result as JudgedPair['result'], by: cellOf(judgement, 'by'), judgement });
  }
  const judgedOnes = new Set(kept.flatMap(({ left, right }) => [left, right]));
  const cables = trial.cables.filter((c) => judgedOnes.has(c.cable));
  const number = new Map(cables.map((c, i) => [c.cable, i]));
  const judges = [...new Set(kept.map((k) => k.by))];
  return {
    cables,
    pairs: kept.map(({ left, right, result, by }) => ({
      left: number.get(left)!,
      right: number.get(right)!,
      result,
      judge: judges.indexOf(by),
    })),
    judges,
    blinded: [...new Set(kept.map(({ judgement }) => cellOf(judgement, 'blinded') || 'open'))],
    temperatures: kept.flatMap(({ judgement }) => temperatureOf(judgement) ?? []),
    againstItself,
    unreadable,
  };
}
