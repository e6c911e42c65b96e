/** Which pieces are judged, and what was judged already: from the open journal, with nothing said. */
import { enoughJudged } from '../../../../findings/flex/enoughJudged.ts';
import { readJudgements } from '../../../../findings/flex/readJudgements.ts';
import { connectedGroups } from '../../../../methods/flex/pairs/connection.ts';
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
  /** Groups of cables that answers join, by name; more than one says nothing across them. Empty while nobody answered. */
  groups: string[][];
}

/** What was judged of these pieces, and how much of it is still to come: by the same rule as in the findings. */
export function judgedSoFar(trial: Trial, pieces: readonly JudgedPiece[]): JudgedSoFar {
  const read = readJudgements(trial);
  const number = (place: number) => pieces.findIndex(({ cable }) => cable === read.cables[place]?.cable);
  const handed = read.pairs
    .map(({ left, right, judge }) => ({ left: number(left), right: number(right), judge }))
    .filter(({ left, right }) => left >= 0 && right >= 0);
  const { wanted, left } = enoughJudged(trial, read);
  const groups = connectedGroups(read.pairs, read.cables.length).map((group) => group.map((i) => read.cables[i]!.name));
  return { handed, judges: read.judges, done: read.pairs.length, wanted, left, groups };
}
