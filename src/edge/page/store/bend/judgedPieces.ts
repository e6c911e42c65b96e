/** Which pieces are judged, and what was judged already: from the open journal, with nothing said. */
import { FEWEST_A_PAIR } from '../../../../findings/flex/judgedSentence.ts';
import { readJudgements } from '../../../../findings/flex/readJudgements.ts';
import type { HandedPair } from '../../../../methods/flex/pairs/nextPair.ts';
import type { Specimen, Trial } from '../../../../trial/trial.ts';

/** One cable as it is handed over: by its first piece to bend. */
export interface JudgedPiece {
  cable: string;
  piece: Specimen;
}

/** The pieces to judge, one for each cable, and the cables that have none. */
export function piecesToJudge({ cables, specimens }: Trial): { pieces: JudgedPiece[]; without: string[] } {
  const wanted = cables.filter((cable) => cable.role !== 'control');
  const pieces = wanted.flatMap(({ cable }) => {
    const piece = specimens.find((each) => each.cable === cable && each.kind === 'bend');
    return piece ? [{ cable, piece }] : [];
  });
  const without = wanted.filter(({ cable }) => pieces.every((each) => each.cable !== cable)).map((each) => each.name);
  return { pieces, without };
}

export interface JudgedSoFar {
  /** What was handed over, as numbers of the pieces, in the order of time. */
  handed: HandedPair[];
  judges: string[];
  /** Judgements that count; how many make an order to be spoken of; and how many of those are left. */
  done: number;
  wanted: number;
  left: number;
}

/**
 * What was judged of these pieces. An order is spoken of from `FEWEST_A_PAIR` answers for each pair of cables, by all judges
 * together.
 */
export function judgedSoFar(trial: Trial, pieces: readonly JudgedPiece[]): JudgedSoFar {
  const read = readJudgements(trial);
  const number = (place: number) => pieces.findIndex(({ cable }) => cable === read.cables[place]?.cable);
  const handed = read.pairs
    .map(({ left, right, judge }) => ({ left: number(left), right: number(right), judge }))
    .filter(({ left, right }) => left >= 0 && right >= 0);
  const wanted = (FEWEST_A_PAIR * pieces.length * (pieces.length - 1)) / 2;
  return { handed, judges: read.judges, done: handed.length, wanted, left: Math.max(0, wanted - handed.length) };
}
