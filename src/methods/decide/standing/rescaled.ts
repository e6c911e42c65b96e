import type { DrawnStanding, ScaledCriterion } from './drawValues.ts';
import { unknownWorth, type ValueFunction, worthOf } from './valueFunction.ts';

const same = (a: ValueFunction, b: ValueFunction) => a.shape === b.shape && a.worst === b.worst && a.best === b.best;

/**
 * The same draws on other scales: digit for digit what drawing again would give, without drawing. Only what has another scale is
 * worked out anew.
 *
 * @param before the scales that the draws are on
 * @throws RangeError where the draws did not keep their figures, or there are other criteria
 */
export function rescaled(
  drawn: DrawnStanding,
  before: readonly ValueFunction[],
  criteria: readonly ScaledCriterion[],
): DrawnStanding {
  const { raw, count } = drawn;
  if (raw === null) throw new RangeError('draws that did not keep their figures cannot be put on another scale');
  if (before.length !== criteria.length || raw.length !== criteria.length)
    throw new RangeError(`${raw.length} criteria were drawn, ${before.length} and ${criteria.length} are given`);
  const values = criteria.map(({ scale, sources }, k) => {
    if (same(before[k]!, scale)) return drawn.values[k]!;
    const of = new Float32Array(drawn.draws * count);
    const figures = raw[k]!;
    for (let i = 0; i < count; i++) {
      const worth = sources[i]!.from === 'unknown' ? unknownWorth : worthOf;
      for (let at = i; at < of.length; at += count) of[at] = worth(scale, figures[at]!);
    }
    return of;
  });
  return { ...drawn, values };
}
