import { type BendStep, bendMinutesOf } from '../../methods/decide/bendMinutes.ts';
import { FEWEST_A_PAIR } from '../flex/enoughJudged.ts';
import type { PlannedPiece } from './cablePieces.ts';
import type { PlanSettings } from './settings.ts';

/** Faces of a piece that droops: as it lies, and turned over. */
const FACES = 2;
/** Points of a push: fewer make no line that could bend. Ours. */
export const PUSHES = 4;
/** A coil is wound and measured so often. Common practice, no source. */
export const COILS = 2;

/** One act of bending with what it takes. */
export interface BendPart {
  act: BendStep;
  words: string;
  minutes: number;
}

/** Droops wanted on each piece: both faces at least. */
export const droopsWanted = ({ repeats }: Pick<PlanSettings, 'repeats'>): number => Math.max(FACES, repeats);

const pairsText = (pairs: number): string => (pairs === 1 ? 'the one pair' : `${pairs} pairs`);

/** The acts of bending that a plan asks for on its pieces to bend, each with its minutes; none where no bending is wanted. */
export function bendParts(pieces: readonly PlannedPiece[], settings: PlanSettings): BendPart[] {
  const { methods, bendWishes } = settings;
  const bent = pieces.filter((p) => p.kind === 'bend');
  const cables = new Set(bent.map((p) => p.cable)).size;
  const pairs = (cables * (cables - 1)) / 2;
  const part = (act: BendStep, words: string, on: number, readings: number): BendPart[] =>
    on === 0 ? [] : [{ act, words, minutes: bendMinutesOf(act, on, readings) }];
  const acts = [
    ...(methods.has('bend') ? part('droop', 'let them droop, turned over', bent.length, droopsWanted(settings)) : []),
    ...(bendWishes.has('push') ? part('push', 'push them', bent.length, PUSHES) : []),
    ...(bendWishes.has('judge')
      ? part('judge', `judge ${pairsText(pairs)} by hand, ${FEWEST_A_PAIR} answers each`, pairs, FEWEST_A_PAIR)
      : []),
    ...(bendWishes.has('coil') ? part('coil', 'wind them as tight as they go', bent.length, COILS) : []),
    ...(bendWishes.has('spring') ? part('spring', 'see what springs back', bent.length, 1) : []),
  ];
  return acts.length === 0 ? [] : [...part('cut', 'cut the pieces to bend', bent.length, 0), ...acts];
}
