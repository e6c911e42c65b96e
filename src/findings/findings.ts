import { DEFAULT_LEVELS, type OutcomeLevels } from '../methods/assay/conformity.ts';
import type { Trial } from '../trial/trial.ts';
import { comparisonsOf } from './comparisons.ts';
import { controlOf } from './control.ts';
import { groundOf } from './ground.ts';
import { drawsFor, drawsSentence, monteCarloOf } from './monteCarlo.ts';
import { pageSentence } from './pageSentence.ts';
import type { Findings } from './schema.ts';
import { furtherFigures } from './standing/furtherFigures.ts';
import { standingSettings } from './standing/settings.ts';
import { standingOf } from './standing/standing.ts';
import { ENGINE_VERSION } from './version.ts';
import { warningsOf } from './warnings.ts';

export interface FindingsOptions {
  /** Probability that every interval claims; 0.95 unless said otherwise. */
  level?: number;
  /**
   * Monte Carlo beside the closed form: 0 for none, a number, or 'auto' (the default): until the shown digits stand still,
   * for trials of up to 24 cables.
   */
  draws?: number | 'auto';
  /** Joint draws for the standing, where the plan says anything of one; 20 000 unless said otherwise, 0 for none. */
  standingDraws?: number;
  /** When a claim is said to be met or to fall short. */
  levels?: OutcomeLevels;
  /** Called after each block of draws; a return of true stops the draws. */
  onBlock?: (draws: number) => boolean;
}

/** Every chance of a place to ±0.6 %; ten times as many are drawn where a page is at rest. */
export const STANDING_DRAWS = 20_000;

/**
 * Everything that a trial's readings say about its cables. Pure and deterministic: the seed of the draws is the trial's own
 * content, so whoever computes a published trial again gets the same digits.
 *
 * @throws RangeError when the level is not between 0 and 1.
 */
export function findingsOf(trial: Trial, options: FindingsOptions = {}): Findings {
  const { level = 0.95, draws = 'auto', levels = DEFAULT_LEVELS, onBlock } = options;
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, got ${level}`);
  const { content, seed, rows, joint, cables: plain, bending, jackets, currents } = groundOf(trial, level, levels);
  const drawn = drawsFor(joint, new Map(plain.map((f) => [f.cable, f])), { seed, level, draws, onBlock });
  const placeOf = new Map(joint.cables.map((a, at) => [a.cable.cable, at]));
  const cables = plain.map((f) => {
    const at = placeOf.get(f.cable);
    return { ...f, monte_carlo: at === undefined ? null : monteCarloOf(drawn, at, f.conductor_area) };
  });
  const control = rows.cables.flatMap((c) =>
    c.cable.role === 'control' ? (controlOf(c, joint.inputs, level) ?? []) : [],
  );
  const { flex, ground } = bending;
  const { jacket } = jackets;
  const { current } = currents;
  const standingDraws = options.standingDraws ?? STANDING_DRAWS;
  const further = furtherFigures({ jacket, current });
  const standing =
    standingDraws > 0 && standingSettings(trial.settings).stated
      ? standingOf({ trial, rows, cables, joint, flex, ground, further, seed, draws: standingDraws })
      : { decide: null, warnings: [] };
  return {
    trial: trial.trial,
    title: trial.title,
    engine: {
      version: ENGINE_VERSION,
      method: drawn ? 'closed form, with Monte Carlo beside it' : 'closed form',
      level,
      draws: drawn?.draws ?? 0,
      draws_sentence: drawsSentence(drawn, cables),
      seed,
      content,
      meets_above: levels.meetsAbove,
      short_below: levels.shortBelow,
    },
    sentence: pageSentence(
      cables,
      [flex, jacket, current].some((part) => part !== null),
    ),
    control,
    cables,
    comparisons: comparisonsOf(joint, level),
    flex,
    jacket,
    current,
    decide: standing.decide,
    warnings: [
      ...warningsOf(trial, rows, cables, control),
      ...bending.warnings,
      ...jackets.warnings,
      ...currents.warnings,
      ...standing.warnings,
    ],
  };
}
