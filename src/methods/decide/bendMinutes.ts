import { minutesBy, type StepMinutes } from './workMinutes.ts';

/** Acts of bending in the order in which they are done: what bends a piece furthest comes last. */
export type BendStep = 'cut' | 'droop' | 'push' | 'judge' | 'coil' | 'spring';

/**
 * What each act takes: a droop for every face and repeat, a push for every point, a coil for every winding, judging for every
 * answer. Estimates for one person, common practice, no source.
 */
const USUAL_BEND_MINUTES: Readonly<Record<BendStep, StepMinutes>> = {
  cut: { setUp: 5, piece: 2, repeat: 0 },
  droop: { setUp: 5, piece: 0, repeat: 2 },
  push: { setUp: 5, piece: 2, repeat: 0.75 },
  judge: { setUp: 5, piece: 0, repeat: 0.5 },
  coil: { setUp: 2, piece: 1, repeat: 1.5 },
  spring: { setUp: 2, piece: 2, repeat: 1 },
};

/** Minutes of an act on so many pieces, or pairs, with so many readings each. */
export const bendMinutesOf = (act: BendStep, pieces: number, readings: number): number =>
  minutesBy(USUAL_BEND_MINUTES[act], pieces, readings);
