import { DEFAULT_LEVELS } from '../../methods/assay/conformity.ts';
import type { Trial } from '../../trial/trial.ts';
import { groundOf } from '../ground.ts';
import { furtherFigures } from './furtherFigures.ts';
import { type PreparedStanding, prepareStanding, type StandingGround } from './prepare.ts';

/** Probability that the intervals claim from which the figures are drawn. */
const LEVEL = 0.95;

/** Everything that a standing is drawn from: the slow reading of the trial, done once. */
export function standingGroundOf(trial: Trial): Omit<StandingGround, 'draws'> {
  const { seed, rows, joint, cables, bending, jackets, currents } = groundOf(trial, LEVEL, DEFAULT_LEVELS);
  const { flex, ground } = bending;
  const further = furtherFigures({ jacket: jackets.jacket, current: currents.current });
  return { trial, rows, cables, joint, flex, ground, further, seed };
}

export interface DrawnAtHand {
  draws: number;
  /** Scales tried out, by the names that plan.csv gives them; they stand before the trial's own. */
  scales?: Readonly<Record<string, string>>;
  /** True where a scale may be tried out later without drawing again. */
  keepRaw?: boolean;
  /** The same ground as it was prepared last, with as many draws and its figures kept: put on these scales instead of drawn again. */
  before?: PreparedStanding | null;
  /** Called after each block; a return of true stops. */
  onBlock?: (draws: number) => boolean;
}

/**
 * Draws for a standing whether or not the plan speaks of one, from the trial's own seed: the same draws as in the findings, and
 * the same again when a scale is tried out, so that only what was changed moves.
 */
export function prepareAtHand(
  ground: Omit<StandingGround, 'draws'>,
  { scales = {}, ...how }: DrawnAtHand,
): PreparedStanding | null {
  const trial = { ...ground.trial, settings: { ...ground.trial.settings, ...scales } };
  return prepareStanding({ ...ground, ...how, trial });
}
