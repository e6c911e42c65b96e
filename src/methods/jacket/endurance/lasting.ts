import { type CommonShape, shapeIsHeld } from '../../../numerics/survival/commonShape.ts';
import { curveMedian, kaplanMeier, type SurvivalStep } from '../../../numerics/survival/kaplanMeier.ts';
import { failures, type Lifetime } from '../../../numerics/survival/lifetime.ts';
import { fitWeibull, medianInterval, medianOf, scaleOf } from '../../../numerics/survival/weibull.ts';

type Ends = [number | null, number | null];

/** A median with its interval; an end or the value itself is null where the pieces set none. */
export interface MedianFound {
  value: number | null;
  interval: Ends;
}

export interface OwnShape {
  shape: number;
  scale: number;
  median: MedianFound;
}

/** How long the pieces of one cable lasted in one test. */
export interface Lasting {
  n: number;
  failed: number;
  survived: number;
  curve: SurvivalStep[];
  curveMedian: MedianFound;
  /** A Weibull distribution of its own; null with too few failures. */
  weibull: OwnShape | null;
  /** Median under the shape common to all cables; null where there is none. */
  withCommonShape: MedianFound | null;
}

/** A shape of its own needs three failures; at three pieces two, the third a survivor. */
const FEWEST_FAILURES = 3;
const FEWEST_OF_THREE = 2;

export function hasOwnShape(lives: readonly Lifetime[]): boolean {
  const fewest = lives.length <= 3 ? FEWEST_OF_THREE : FEWEST_FAILURES;
  return failures(lives) >= fewest && shapeIsHeld([lives]);
}

function ownShape(lives: readonly Lifetime[], level: number): OwnShape | null {
  if (!hasOwnShape(lives)) return null;
  const fit = fitWeibull([lives]);
  if (!fit) return null;
  return {
    shape: fit.shape,
    scale: scaleOf(fit),
    median: { value: medianOf(fit), interval: medianInterval([lives], fit, 0, level) },
  };
}

/** Everything that one cable's pieces say by themselves, and its median under the common shape. */
export function lasting(
  groups: readonly (readonly Lifetime[])[],
  common: CommonShape | null,
  at: number,
  level: number,
): Lasting {
  const lives = groups[at];
  const curve = kaplanMeier(lives, level);
  const median = curveMedian(curve, lives);
  const failed = failures(lives);
  return {
    n: lives.length,
    failed,
    survived: lives.length - failed,
    curve,
    curveMedian: { value: median.median, interval: [median.low, median.high] },
    weibull: ownShape(lives, level),
    withCommonShape: common && {
      value: failed > 0 ? medianOf(common, at) : null,
      interval: medianInterval(groups, common, at, level),
    },
  };
}

/** The median to show first: by its own shape with three failures or more, else by the common one, else off the curve. */
export function shownMedian(of: Lasting): MedianFound & { how: 'own shape' | 'common shape' | 'curve' } {
  if (of.weibull && of.failed >= FEWEST_FAILURES) return { ...of.weibull.median, how: 'own shape' };
  if (of.withCommonShape) return { ...of.withCommonShape, how: 'common shape' };
  return of.weibull ? { ...of.weibull.median, how: 'own shape' } : { ...of.curveMedian, how: 'curve' };
}
