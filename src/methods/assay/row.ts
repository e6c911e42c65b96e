/**
 * What one group of readings says about one cable, as a linear equation in logarithms:
 *
 *     y = g · (ln A, ln k, ln ρm, ln ρe) + shared instrument errors + what is this row's own + [temperature]
 *
 * A metal area square to the strands (m²), k lay factor, ρm density (kg/m³), ρe resistivity at 20 °C (Ω·m).
 *
 * | row | y | g |
 * | --- | --- | --- |
 * | mass | ln(mass / length) | 1 1 1 0 |
 * | resistance | ln(ohms / contact distance) | −1 1 0 1 |
 * | strands | ln(count · π d² / 4) | 1 0 0 0 |
 * | strand mass | ln(count · strand mass / strand length) | 1 0 1 0 |
 * | lay | ln k | 0 1 0 0 |
 * | density | ln ρm | 0 0 1 0 |
 */
export type RowKind = 'mass' | 'resistance' | 'strands' | 'strand mass' | 'lay' | 'density';

/** Groups of rows that one gross error would spoil together: a wrong unit, poor clamps, a bundle left out of the count. */
export const FAULTS = ['mass', 'resistance', 'strands'] as const;
export type Fault = (typeof FAULTS)[number];

/** Coefficients of (ln A, ln k, ln ρm, ln ρe) for each kind of row. */
export const COEFFICIENTS: Readonly<Record<RowKind, readonly [number, number, number, number]>> = {
  mass: [1, 1, 1, 0],
  resistance: [-1, 1, 0, 1],
  strands: [1, 0, 0, 0],
  'strand mass': [1, 0, 1, 0],
  lay: [0, 1, 0, 0],
  density: [0, 0, 1, 0],
};

const FAULT_OF: Readonly<Record<RowKind, Fault | null>> = {
  mass: 'mass',
  resistance: 'resistance',
  strands: 'strands',
  'strand mass': 'strands',
  lay: null,
  density: null,
};

/** Which gross error would spoil a row of this kind. */
export function faultOf(kind: RowKind): Fault | null {
  return FAULT_OF[kind];
}

/**
 * An unknown that several rows, and several cables, have in common: one instrument's zero or gain, the thermometer.
 * In the assay it is scaled to standard deviation 1.
 */
export interface SharedInput {
  input: string;
  /** Plain words: 'Pocket scale, its limit'. */
  label: string;
  /** Limit of error in `unit`; its standard deviation is limit/√3 when uniform. */
  limit: number;
  unit: string;
  shape: 'uniform' | 'normal';
  /** Standard deviation, SI unit of the input. */
  sd: number;
  /** True for a limit of error that nobody stated. */
  assumed: boolean;
}

/** ln y moves by power · ln(1 + slope · b) when the shared input is off by b (SI unit of the input). */
export interface SharedEffect {
  input: string;
  slope: number;
  power: number;
}

/** What is not shared with other cables: scatter of repeats, cutting, counting. The same `input` in two rows of one cable is one unknown. */
export interface OwnEffect {
  input: string;
  label: string;
  slope: number;
  /** Variance of ln y at slope 1. */
  variance: number;
  /** Degrees of freedom of that variance; Infinity for a stated limit. */
  dof: number;
}

export interface AssayRow {
  kind: RowKind;
  /** Plain words: 'Conductor mass over 150 mm'. */
  text: string;
  specimen: string | null;
  y: number;
  shared: readonly SharedEffect[];
  own: readonly OwnEffect[];
  /** Resistance only: K above 20 °C of the copper, and the shared input that the thermometer's error is. */
  temperature: { above20: number; input: string } | null;
}

/** One cable's readings, ready for the assay. */
export interface AssayCable {
  cable: string;
  rows: readonly AssayRow[];
  /** ln likelihood of what eyes and magnet saw, per metal (0 for the likeliest). */
  sight: Readonly<Record<string, number>>;
  /** A control piece is one solid copper wire: no lay, no tin, no doubt about the metal. */
  control: boolean;
}
