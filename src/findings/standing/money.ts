import { pricePerMetre } from '../../methods/decide/lengthToBuy.ts';
import type { Cable } from '../../trial/trial.ts';
import { mapped } from '../measured.ts';
import { priceOf } from '../plan/prices.ts';
import type { CableFindings, Measured } from '../schema.ts';
import type { ValueForMoney } from '../shapes/decide.ts';

/** Price per metre, its currency as the trial's cables tell it; null when the price does not say. */
export function metrePrice(
  cable: Cable,
  cables: readonly Cable[] = [cable],
): { amount: number; currency: string } | null {
  const known = priceOf(cable, cables);
  const amount = known && pricePerMetre(known.price);
  return known && amount !== null ? { amount, currency: known.currency } : null;
}

/** Real copper, mm²: by the claim's own figure where there is one; null when no copper is known of. */
function copperArea(found: CableFindings): Measured | null {
  const claimed = found.label.claimed_area_mm2;
  const area = found.conductor_area;
  if (found.copper_of_claim && claimed !== null)
    return mapped(
      found.copper_of_claim,
      'mm2',
      (x) => x * claimed,
      () => claimed,
    );
  if (!area || area.condition || found.metal_found === 'aluminium') return null;
  const share = found.copper_share;
  if (!share) return area;
  const value = area.value * share.value;
  const relative = Math.hypot(area.u / area.value, share.u / share.value);
  const interval: [number, number] = [area.interval[0] * share.interval[0], area.interval[1] * share.interval[1]];
  return { ...area, value, u: value * relative, interval, from: [...area.from, ...share.from] };
}

/** Price per metre over a figure; null for a figure that may be nothing. */
function over(figure: Measured | null, price: number, unit: string): Measured | null {
  if (!figure || !(figure.interval[0] > 0)) return null;
  return mapped(
    figure,
    unit,
    (x) => price / x,
    (x) => price / (x * x),
  );
}

/** Money in three digits, never in powers of ten. */
export const moneyText = (amount: number): string =>
  Math.abs(amount) >= 100 ? amount.toFixed(0) : amount.toFixed(Math.abs(amount) < 0.1 ? 3 : 2);

function textOf(value: Omit<ValueForMoney, 'text'>, noCopper: boolean): string {
  const { price_per_m, price_per_m_mm2: copper, price_per_m_at_one_mohm: conductance, currency } = value;
  if (price_per_m === null) return 'No price on record that gives money per metre.';
  const of = currency ? ` ${currency}` : '';
  const parts = [`${moneyText(price_per_m)}${of} a metre`];
  if (copper) parts.push(`${moneyText(copper.value)}${of} a metre for each mm² of real copper`);
  else if (noCopper) parts.push('it holds no copper to pay for');
  if (conductance) parts.push(`${moneyText(conductance.value)}${of} for one metre at one milliohm`);
  return `${parts.join('; ')}.`;
}

/** What the money buys: per mm² of real copper, and for one metre at one milliohm. */
export function valueOfCable(cable: Cable, found: CableFindings, cables: readonly Cable[] = [cable]): ValueForMoney {
  const price = metrePrice(cable, cables);
  const unit = price?.currency || 'money';
  const resistance = found.resistance_20C;
  const copper = copperArea(found);
  const value = {
    cable: found.cable,
    name: found.name,
    currency: price?.currency ?? '',
    price_per_m: price?.amount ?? null,
    price_per_m_mm2: price && over(copper, price.amount, `${unit}/(m mm2)`),
    price_per_m_at_one_mohm:
      price && resistance
        ? mapped(
            resistance,
            `${unit} mohm/m2`,
            (x) => price.amount * x,
            () => price.amount,
          )
        : null,
  };
  return { ...value, text: textOf(value, copper?.value === 0 || found.metal_found === 'aluminium') };
}
