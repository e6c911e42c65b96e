import { placesAtWeights } from '../../methods/decide/standing/places.ts';
import { cannotBeToldFrom, cleanCutBands } from '../../methods/flex/pairs/bands.ts';
import type { CableStanding, WeightOf } from '../shapes/decide.ts';
import { STANDING_CUT_ABOVE } from './decide.ts';
import type { PreparedStanding } from './prepare.ts';
import type { Weighting } from './weighting.ts';
import { orderSentence } from './words.ts';

export type OrderedCable = Pick<
  CableStanding,
  'cable' | 'name' | 'place_probability' | 'probability_first' | 'band' | 'cannot_be_told_from'
>;

/** The order alone: what can be shown while somebody moves a weight. */
export interface OrderNow {
  draws: number;
  weights: WeightOf[];
  cables: OrderedCable[];
  sentence: string;
}

/**
 * The order of the cables at some weights, from draws made once, without the tastes about them: what `decideBy` says of places,
 * in less than half its time.
 */
export function orderBy({ drawn, cables, criteria }: PreparedStanding, { weights }: Weighting): OrderNow {
  const n = cables.length;
  const counting = criteria.flatMap((_, k) => (weights[k]! > 0 ? [k] : []));
  const at = placesAtWeights(
    { ...drawn, values: counting.map((k) => drawn.values[k]!) },
    counting.map((k) => weights[k]!),
  );
  const { order, band } = cleanCutBands(at.mean, at.before, STANDING_CUT_ABOVE);
  const near = cannotBeToldFrom(at.before, n, STANDING_CUT_ABOVE);
  const ordered = order.map((i) => ({
    cable: cables[i]!.cable,
    name: cables[i]!.name,
    place_probability: [...at.places.subarray(i * n, (i + 1) * n)],
    probability_first: at.places[i * n]!,
    band: band[i]!,
    cannot_be_told_from: near[i]!.map((j) => cables[j]!.cable),
  }));
  return {
    draws: drawn.draws,
    weights: criteria.map(({ id }, k) => ({ criterion: id, weight: weights[k]! })),
    cables: ordered,
    sentence: orderSentence(ordered),
  };
}
