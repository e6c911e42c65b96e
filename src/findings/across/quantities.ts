import type { Measured } from '../schema.ts';
import type { ShelfCable } from '../shapes/shelf.ts';

/** A figure by which cables of several trials can be put side by side. */
export interface AcrossQuantity {
  id: string;
  name: string;
  /** True for a ratio that people read in per cent. */
  percent: boolean;
  of: (cable: ShelfCable) => Measured | null;
  /** The figure of the linking piece that tells this figure's error between trials; null where trials bring none, as to a price. */
  linkedBy: ((cable: ShelfCable) => Measured | null) | null;
  /** Under what it was measured. */
  conditions: (cable: ShelfCable) => readonly [number, number] | null;
}

const taken = (cable: ShelfCable) => cable.temperature_C;
const bent = ({ bent_at_C: t }: ShelfCable): [number, number] | null => (t === null ? null : [t, t]);
const anywhere = () => null;

function measured(
  id: string,
  name: string,
  of: AcrossQuantity['of'],
  more: Partial<AcrossQuantity> = {},
): AcrossQuantity {
  return { id, name, percent: false, of, linkedBy: of, conditions: taken, ...more };
}

/** A price has no doubt of its own. */
function priceOf({ price_per_m: price, currency }: ShelfCable): Measured | null {
  if (price === null) return null;
  const unit = `${currency || 'money'}/m`;
  return { value: price, unit, u: 0, interval: [price, price], level: 0.95, from: ['price'] };
}

/** In the order in which they are offered. */
export const QUANTITIES: readonly AcrossQuantity[] = [
  measured('area', 'Metal area', (c) => c.conductor_area),
  measured('copper', 'Of the label’s copper', (c) => c.copper_of_claim, {
    percent: true,
    // The same error as of the area, and no label of the linking piece in it.
    linkedBy: (c) => c.conductor_area,
  }),
  measured('resistance', 'Resistance at 20 °C', (c) => c.resistance_20C),
  measured('stiffness', 'Bending stiffness', (c) => c.bending_stiffness, { conditions: bent }),
  measured('outer_diameter', 'Outer diameter', (c) => c.outer_diameter),
  measured('wall', 'Jacket wall', (c) => c.wall),
  measured('price_per_m', 'Price of a metre', priceOf, { linkedBy: null, conditions: anywhere }),
  measured('price_at_one_mohm', 'Price of a metre at one milliohm', (c) => c.price_at_one_mohm, {
    linkedBy: (c) => c.resistance_20C,
  }),
];

/** The quantity of that name; the first one for a name that is none. */
export const quantityOf = (id: string): AcrossQuantity => QUANTITIES.find((each) => each.id === id) ?? QUANTITIES[0]!;

/** The name of a quantity within a line; all but its first letter stays, for °c is no degree. */
export const nameWithin = ({ name }: Pick<AcrossQuantity, 'name'>): string =>
  name.charAt(0).toLowerCase() + name.slice(1);
