import { copperPerMetre } from '../../methods/decide/conductorSize.ts';
import type { ValueFunction } from '../../methods/decide/standing/valueFunction.ts';
import { type CriterionKind, roundedEnd } from './criteria.ts';

/** A criterion on its scale, before it has a weight. */
export interface Scaled {
  id: string;
  name: string;
  unit: string;
  scale: ValueFunction;
  /** Stated in plan.csv. */
  fixed: boolean;
  /** Suggested from the claimed sizes or the field, so that it is better stated. */
  suggested: boolean;
}

/** The size whose ends are taken where no label gives an area, mm²: 1/0 AWG. */
const USUAL_AREA = 53.5;
/** Copper by weight, money per kg, in the larger currencies; retail cable runs from its metal's worth to about nine times that. Common practice, no source. */
const COPPER_PER_KG = 9;
const DEAREST = 9;
const CURRENCIES_ALIKE = /^(?:|usd|us\$|\$|eur|€|gbp|£|chf|cad|aud)$/i;
const MM2 = 1e-6;

const stated = (id: string, name: string, unit: string, scale: ValueFunction): Scaled => ({
  id,
  name,
  unit,
  scale,
  fixed: true,
  suggested: false,
});

/** A known kind of criterion on the scale that was stated, or on a suggested one. */
export function scaledKind(kind: CriterionKind, area: number | null, typed: ValueFunction | undefined): Scaled {
  if (typed) return stated(kind.id, kind.name, kind.unit, typed);
  const [worst, best] = kind.ends(area ?? USUAL_AREA).map((end) => (kind.bySize ? roundedEnd(end) : end));
  const scale = { shape: kind.shape, worst, best };
  return { id: kind.id, name: kind.name, unit: kind.unit, scale, fixed: false, suggested: kind.bySize };
}

/** Price per metre: from what the copper of the claimed size is worth to about nine times that; from the field in other currencies. */
export function scaledPrice(
  currency: string,
  prices: readonly number[],
  area: number | null,
  typed: ValueFunction | undefined,
): Scaled {
  const unit = `${currency || 'money'}/m`;
  if (typed) return stated('price', 'Price', unit, typed);
  const worth = copperPerMetre((area ?? USUAL_AREA) * MM2) * COPPER_PER_KG;
  const [worst, best] = CURRENCIES_ALIKE.test(currency)
    ? [DEAREST * worth, worth]
    : [1.5 * Math.max(...prices), 0.5 * Math.min(...prices)];
  const scale: ValueFunction = { shape: 'linear', worst: roundedEnd(worst), best: roundedEnd(best) };
  return { id: 'price', name: 'Price', unit, scale, fixed: false, suggested: true };
}

/** How long a test was borne: from nothing to the best end of that test. */
export function scaledEndurance(
  id: string,
  { test, unit, best, suggested }: { test: string; unit: string; best: number; suggested: boolean },
  typed: ValueFunction | undefined,
): Scaled {
  const name = `Endurance: ${test}`;
  if (typed) return stated(id, name, unit, typed);
  return { id, name, unit, scale: { shape: 'linear', worst: 0, best }, fixed: false, suggested };
}
