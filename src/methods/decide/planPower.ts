import { median } from '../../numerics/describe.ts';
import { mixtureInterval, mixtureMean } from '../../numerics/mixture.ts';
import { SeededDraws } from '../../numerics/random.ts';
import { DEFAULT_LEVELS, type OutcomeLevels, outcomeOf } from '../assay/conformity.ts';
import { probabilityCopperHeld } from '../assay/copperHeld.ts';
import { lnFigureIf } from '../assay/figures.ts';
import type { AnsweredCable } from '../assay/joint.ts';
import { rereading } from '../assay/reread.ts';
import type { AssayCable, SharedInput } from '../assay/row.ts';
import { COPPER_FAMILY, metalHypotheses } from '../metal/hypotheses.ts';
import { drawCable, drawReadings, drawToolErrors } from './drawReadings.ts';

/** The readings that a plan would take of a cable that really has a given area. */
export interface PlannedReadings {
  /** True metal area of the imagined cable, m². */
  area: number;
  /** Rows with the slopes and doubts that such readings would have; their y are not used. */
  cable: AssayCable;
  /** For a row's own input, how much its readings really scatter (see {@link drawReadings}). */
  scatter: Readonly<Record<string, number>>;
}

export interface OutlookOptions {
  /** Copper that the label asks for, m². */
  required: number;
  /** What the imagined cable may be made of. `either`: bare or tinned, by their starting odds. */
  metal: 'copper' | 'tinned copper' | 'either';
  draws: number;
  /** At least 8 bytes, hexadecimal. The same seed draws the same cables for every plan, so that plans compare fairly. */
  seed: string;
  levels?: OutcomeLevels;
  /** Probability of the interval whose half-width is foretold. */
  level?: number;
}

/** What a plan would say of "copper held", as shares of the draws. */
export interface Outlook {
  draws: number;
  fallsShort: number;
  meets: number;
  notSettled: number;
  /** Median over the draws of the interval's larger half over the area, "if copper"; null when nothing is drawn. */
  halfWidth: number | null;
}

/** Draws whose interval is worked out: the median of so many stands to a few per cent of itself. */
const HALF_WIDTHS = 40;

/**
 * What would be found of imagined copper cables of one true area, read as planned: seeded draws of metal, lay, tool errors
 * and scatter, each answered by the assay's own closed form.
 *
 * Nothing is drawn that the assay does not suppose: no clad metal, no gross error, nothing weighed with the metal. Other
 * cables of the trial would only sharpen what is known of the tools.
 *
 * @throws RangeError for a seed under 8 bytes, or a row that names an input not listed
 */
export function outlookOf(
  planned: PlannedReadings,
  inputs: readonly SharedInput[],
  { required, metal, draws, seed, levels = DEFAULT_LEVELS, level = 0.95 }: OutlookOptions,
): Outlook {
  const source = new SeededDraws(seed);
  const read = rereading(planned.cable, inputs);
  const metals = metalHypotheses().filter((m) =>
    metal === 'either' ? COPPER_FAMILY.includes(m.metal) : m.metal === metal,
  );
  const counts = { 'falls short': 0, meets: 0, 'not settled': 0 };
  const widths: number[] = [];
  for (let i = 0; i < draws; i++) {
    const y = drawReadings(
      planned.cable.rows,
      drawCable(planned.area, metals, source),
      drawToolErrors(inputs, source),
      planned.scatter,
      source,
    );
    const answer = read(y);
    counts[outcomeOf(probabilityCopperHeld(answer, required), levels)]++;
    if (i < HALF_WIDTHS) widths.push(...relativeHalfWidth(answer, level));
  }
  const share = (n: number) => (draws > 0 ? n / draws : 0);
  return {
    draws,
    fallsShort: share(counts['falls short']),
    meets: share(counts.meets),
    notSettled: share(counts['not settled']),
    halfWidth: widths.length > 0 ? median(widths) : null,
  };
}

function relativeHalfWidth(answer: AnsweredCable, level: number): number[] {
  const ln = lnFigureIf(answer, 'area', COPPER_FAMILY);
  if (ln.length === 0) return [];
  const middle = mixtureMean(ln);
  const [low, high] = mixtureInterval(ln, level);
  return [Math.max(Math.expm1(high - middle), -Math.expm1(low - middle))];
}
