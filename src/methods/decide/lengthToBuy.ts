/** One foot, m. Exact: international yard and pound agreement, 1959. */
export const FOOT = 0.3048;

/** How a seller cuts: only whole feet or metres, and never less than so much. */
export interface SellersRule {
  /** m; 0 when any length is sold. */
  step: number;
  /** m */
  least: number;
}

export interface Purchase {
  /** m */
  length: number;
  /** m, left over after cutting. */
  leftover: number;
}

/**
 * The least length that a seller will cut and that holds what is needed, m.
 *
 * @param needed m
 * @example lengthToBuy(1.5, { step: FOOT, least: 0 }).length // 1.524, five feet
 */
export function lengthToBuy(needed: number, { step, least }: SellersRule): Purchase {
  const wanted = Math.max(needed, least);
  const length = step > 0 ? Math.ceil(wanted / step - 1e-9) * step : wanted;
  return { length, leftover: Math.max(0, length - needed) };
}

/** A price as people have it. */
export interface Price {
  amount: number;
  per: 'piece' | 'metre' | 'foot' | 'spool';
  /** m: what the piece or the spool holds; null when nobody said. */
  length: number | null;
}

/** Money per metre, in the currency of the price; null for a piece or spool of unknown length. */
export function pricePerMetre({ amount, per, length }: Price): number | null {
  if (per === 'metre') return amount;
  if (per === 'foot') return amount / FOOT;
  return length !== null && length > 0 ? amount / length : null;
}

/**
 * What a length costs. A piece or a spool is bought whole, as many as it takes; null when its length is unknown.
 *
 * @param length m
 */
export function costOf(price: Price, length: number): number | null {
  const perMetre = pricePerMetre(price);
  if (perMetre === null) return null;
  if (price.per === 'metre' || price.per === 'foot') return perMetre * length;
  return price.amount * Math.max(1, Math.ceil(length / price.length! - 1e-9));
}
