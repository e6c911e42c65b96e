import { DEFAULT_LEVELS, type OutcomeLevels } from '../methods/assay/conformity.ts';
import { jointAssay } from '../methods/assay/joint.ts';
import { contentHash } from '../trial/content.ts';
import type { Trial } from '../trial/trial.ts';
import { cableFindings } from './cable/cableFindings.ts';
import { comparisonsOf } from './comparisons.ts';
import { controlOf } from './control.ts';
import { currentOf } from './current/current.ts';
import { flexOf } from './flex/flex.ts';
import { jacketOf } from './jacket/jacket.ts';
import { drawsFor, drawsSentence, monteCarloOf } from './monteCarlo.ts';
import { shownNames } from './names.ts';
import { pageSentence } from './pageSentence.ts';
import { rowsOfTrial } from './rows/rowsOfTrial.ts';
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

/** Hexadecimal digits of the content hash that seed the draws: 128 bits. */
const SEED_DIGITS = 32;

/**
 * Everything that a trial's readings say about its cables. Pure and deterministic: the seed of the draws is the trial's own
 * content, so whoever computes a published trial again gets the same digits.
 *
 * @throws RangeError when the level is not between 0 and 1.
 */
export function findingsOf(trial: Trial, options: FindingsOptions = {}): Findings {
  const { level = 0.95, draws = 'auto', levels = DEFAULT_LEVELS, onBlock } = options;
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, got ${level}`);
  const content = contentHash(trial);
  const seed = content.slice(0, SEED_DIGITS);
  const rows = rowsOfTrial(trial);
  const readable = rows.cables.filter((c) => c.rows.length > 0);
  const joint = jointAssay(
    readable.map((c) => c.assay),
    rows.inputs,
  );
  const assayOf = new Map(joint.cables.map((a, at) => [a.cable.cable, { assay: a, at }]));
  const context = { joint, level, levels, fittings: trial.fittings, names: shownNames(trial.cables) };
  const plain = rows.cables.map((c) => cableFindings(c, assayOf.get(c.cable.cable)?.assay ?? null, context));
  const drawn = drawsFor(joint, new Map(plain.map((f) => [f.cable, f])), { seed, level, draws, onBlock });
  const cables = plain.map((f) => {
    const found = assayOf.get(f.cable);
    return { ...f, monte_carlo: found ? monteCarloOf(drawn, found.at, f.conductor_area) : null };
  });
  const control = rows.cables.flatMap((c) =>
    c.cable.role === 'control' ? (controlOf(c, joint.inputs, level) ?? []) : [],
  );
  const { flex, warnings, ground } = flexOf(trial, rows, cables, { level });
  const jacketFound = jacketOf(trial, rows, cables, { level, seed });
  const currentFound = currentOf(trial, rows, cables, { level });
  const standingDraws = options.standingDraws ?? STANDING_DRAWS;
  const further = furtherFigures({ jacket: jacketFound.jacket, current: currentFound.current });
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
      [flex, jacketFound.jacket, currentFound.current].some((part) => part !== null),
    ),
    control,
    cables,
    comparisons: comparisonsOf(joint, level),
    flex,
    jacket: jacketFound.jacket,
    current: currentFound.current,
    decide: standing.decide,
    warnings: [
      ...warningsOf(trial, rows, cables, control),
      ...warnings,
      ...jacketFound.warnings,
      ...currentFound.warnings,
      ...standing.warnings,
    ],
  };
}
