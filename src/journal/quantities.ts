/** What can be measured on a piece: the closed list of `quantity` in readings.csv. */
import type { Dimension } from '../units/dimension.ts';
import type { Least } from './tableShape.ts';

export interface Quantity {
  /** null: a number on a scale of its own (hardness), whose unit is kept as words. */
  dimension: Dimension | null;
  /** Plain words, lower case, as used in a sentence. */
  name: string;
  /** Must be a whole number. */
  whole: boolean;
  /** Smallest possible value: zero where nothing may have fallen out, any where the sign has a meaning (polarity, turned over). */
  least: Least;
  /** Kinds of piece that it is usually taken from; empty: any. */
  pieces: readonly string[];
}

const of = (dimension: Dimension | null, name: string, pieces: readonly string[] = []): Quantity => ({
  dimension,
  name,
  whole: false,
  least: 'positive',
  pieces,
});
const counted = (name: string, pieces: readonly string[] = []): Quantity => ({
  ...of('count', name, pieces),
  whole: true,
});
const maybeNone = (quantity: Quantity): Quantity => ({ ...quantity, least: 'not negative' });
const signed = (quantity: Quantity): Quantity => ({ ...quantity, least: 'any' });

const WHOLE_OR_APART = ['whole', 'apart'];
const APART = ['apart'];
const BEND = ['bend', 'whole'];
const ABUSE = ['abuse'];

export const QUANTITIES = {
  specimen_length: of('length', 'length of the piece'),
  conductor_length: of('length', 'length of the bare conductor', APART),
  specimen_mass: of('mass', 'mass of the whole piece'),
  conductor_mass: of('mass', 'mass of the conductor', APART),
  jacket_mass: of('mass', 'mass of the jacket', APART),
  separator_mass: maybeNone(of('mass', 'mass of the separator', APART)),
  strands_lost: maybeNone(of('mass', 'mass of strands lost in stripping', APART)),
  residue: maybeNone(of('mass', 'mass of jacket that will not come off the strands', APART)),
  submerged_mass: of('mass', 'mass under water'),
  outer_diameter: of('length', 'outer diameter'),
  conductor_diameter: of('length', 'diameter of the bundle of strands'),
  strand_count: counted('number of strands', APART),
  bundle_count: counted('number of bundles', APART),
  strands_in_bundle: counted('number of strands in one bundle', APART),
  strand_diameter: of('length', 'diameter of one strand', APART),
  strand_row_width: of('length', 'width of a row of turns side by side', APART),
  strand_row_count: counted('number of turns side by side', APART),
  strand_sample_mass: of('mass', 'mass of a sample of strands', APART),
  strand_sample_count: counted('number of strands in the sample', APART),
  strand_sample_length: of('length', 'length of the strands in the sample', APART),
  wall_thickness: of('length', 'thickness of the jacket wall', WHOLE_OR_APART),
  lay_length: of('length', 'lay length', APART),
  resistance: of('resistance', 'resistance', ['whole']),
  test_voltage: signed(of('voltage', 'voltage between the contacts')),
  test_current: signed(of('current', 'test current')),
  overhang: of('length', 'free length', BEND),
  tip_drop: signed(of('length', 'drop of the tip', BEND)),
  chord_angle: signed(of('angle', 'angle of the chord', BEND)),
  coil_turns: of('count', 'turns of the tightest coil', BEND),
  coil_diameter: of('length', 'diameter of the tightest coil', BEND),
  push_force: maybeNone(of('force', 'pushing force', BEND)),
  push_deflection: maybeNone(of('length', 'deflection under the push', BEND)),
  push_span: of('length', 'span between the supports', BEND),
  spring_back: maybeNone(of('ratio', 'share of the bend that springs back', BEND)),
  mass_before: of('mass', 'mass of the piece before a fluid or heat', ABUSE),
  mass_after: of('mass', 'mass of the piece after a fluid or heat', ABUSE),
  diameter_before: of('length', 'outer diameter before a fluid or heat', ABUSE),
  diameter_after: of('length', 'outer diameter after a fluid or heat', ABUSE),
  hardness: maybeNone(of(null, 'hardness of the jacket')),
} as const satisfies Record<string, Quantity>;

export type QuantityName = keyof typeof QUANTITIES;

export const QUANTITY_NAMES = Object.keys(QUANTITIES) as QuantityName[];

const BY_NAME: ReadonlyMap<string, Quantity> = new Map(Object.entries(QUANTITIES));

/** Quantities that are read in one act of bending, by what the act is. */
export const BEND_ACTS = {
  droop: ['overhang', 'tip_drop', 'chord_angle'],
  push: ['push_span', 'push_deflection', 'push_force'],
  coil: ['coil_diameter', 'coil_turns'],
  spring: ['spring_back'],
} as const satisfies Record<string, readonly QuantityName[]>;

/** Everything that is read by bending. */
export const BEND_QUANTITIES: readonly QuantityName[] = Object.values(BEND_ACTS).flat();

/** The quantity of that name, or null when there is none. */
export function quantityNamed(name: string): Quantity | null {
  return BY_NAME.get(name) ?? null;
}
