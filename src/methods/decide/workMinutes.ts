/** The steps of the work in the order that is a rule: what a later step needs untouched comes first. */
export const STEPS = ['ohms', 'bend', 'cut', 'strip', 'weigh', 'strands', 'eye', 'wall', 'abuse'] as const;
export type Step = (typeof STEPS)[number];

/** What a step takes, in minutes: once to set up, once for each piece, and for each repeat on a piece. */
export interface StepMinutes {
  setUp: number;
  piece: number;
  repeat: number;
}

/**
 * Estimates for one person at a bench, to be changed by whoever knows better. Common practice, no source. Bending is counted by
 * its acts where they are known (`bendMinutes.ts`); here stands a droop alone.
 */
export const USUAL_MINUTES: Readonly<Record<Step, StepMinutes>> = {
  ohms: { setUp: 10, piece: 5, repeat: 1.5 },
  bend: { setUp: 10, piece: 2, repeat: 2 },
  cut: { setUp: 5, piece: 2, repeat: 0 },
  strip: { setUp: 5, piece: 6, repeat: 0 },
  weigh: { setUp: 3, piece: 1.5, repeat: 0.75 },
  strands: { setUp: 5, piece: 10, repeat: 5 },
  eye: { setUp: 1, piece: 2, repeat: 0 },
  wall: { setUp: 3, piece: 3, repeat: 0.5 },
  abuse: { setUp: 10, piece: 6, repeat: 0 },
};

/** Minutes on so many pieces with so many repeats each: `setUp + pieces · (piece + repeats · repeat)`; none without a piece. */
export function minutesBy({ setUp, piece, repeat }: StepMinutes, pieces: number, repeats: number): number {
  return pieces === 0 ? 0 : setUp + pieces * (piece + repeats * repeat);
}

/** Minutes of a step on so many pieces with so many repeats each. */
export const minutesOf = (step: Step, pieces: number, repeats: number, minutes = USUAL_MINUTES): number =>
  minutesBy(minutes[step], pieces, repeats);
