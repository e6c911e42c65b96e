import { DEFAULT_LEVELS } from '../../methods/assay/conformity.ts';
import { jointAssay } from '../../methods/assay/joint.ts';
import { contentHash } from '../../trial/content.ts';
import type { Trial } from '../../trial/trial.ts';
import { cableFindings } from '../cable/cableFindings.ts';
import { currentOf } from '../current/current.ts';
import { flexOf } from '../flex/flex.ts';
import { jacketOf } from '../jacket/jacket.ts';
import { shownNames } from '../names.ts';
import { rowsOfTrial } from '../rows/rowsOfTrial.ts';
import { furtherFigures } from './furtherFigures.ts';
import { type PreparedStanding, prepareStanding, type StandingGround } from './prepare.ts';

/** Probability that the intervals claim from which the figures are drawn. */
const LEVEL = 0.95;
/** Hexadecimal digits of the content hash that seed the draws, as in the findings. */
const SEED_DIGITS = 32;

/** Everything that a standing is drawn from: the slow reading of the trial, done once. */
export function standingGroundOf(trial: Trial): Omit<StandingGround, 'draws'> {
  const seed = contentHash(trial).slice(0, SEED_DIGITS);
  const rows = rowsOfTrial(trial);
  const joint = jointAssay(
    rows.cables.filter((c) => c.rows.length > 0).map((c) => c.assay),
    rows.inputs,
  );
  const assayOf = new Map(joint.cables.map((a) => [a.cable.cable, a]));
  const context = {
    joint,
    level: LEVEL,
    levels: DEFAULT_LEVELS,
    fittings: trial.fittings,
    names: shownNames(trial.cables),
  };
  const cables = rows.cables.map((c) => cableFindings(c, assayOf.get(c.cable.cable) ?? null, context));
  const { flex, ground } = flexOf(trial, rows, cables, { level: LEVEL });
  const { jacket } = jacketOf(trial, rows, cables, { level: LEVEL, seed });
  const { current } = currentOf(trial, rows, cables, { level: LEVEL });
  return { trial, rows, cables, joint, flex, ground, further: furtherFigures({ jacket, current }), seed };
}

export interface DrawnAtHand {
  draws: number;
  /** Scales tried out, by the names that plan.csv gives them; they stand before the trial's own. */
  scales?: Readonly<Record<string, string>>;
  /** Called after each block; a return of true stops. */
  onBlock?: (draws: number) => boolean;
}

/**
 * Draws for a standing whether or not the plan speaks of one, from the trial's own seed: the same draws as in the findings, and
 * the same again when a scale is tried out, so that only what was changed moves.
 */
export function prepareAtHand(
  ground: Omit<StandingGround, 'draws'>,
  { draws, scales = {}, onBlock }: DrawnAtHand,
): PreparedStanding | null {
  const trial = { ...ground.trial, settings: { ...ground.trial.settings, ...scales } };
  return prepareStanding({ ...ground, trial, draws, onBlock });
}
