import { CIRCULAR_MIL, INCH } from './exactFactors.ts';

/**
 * What published standards ask of a size: printed tables, each with its source and how it is known here. SI throughout.
 *
 * `verified: false` marks figures that come from uncertain memory: show them as unverified and never judge a cable by them.
 * Figures that are merely `from memory` were recalled with confidence and agree with an independent computation.
 */
export interface TableSource {
  standard: string;
  table: string;
  /** How these figures came to be here. */
  known: 'read in reproductions of the table' | 'from memory' | 'from memory, uncertain' | 'by definition';
  verified: boolean;
}

/** A figure together with where it stands. */
export interface StandardLimit {
  value: number;
  source: TableSource;
}

const OHM_PER_KM = 1 / 1000;
const MILLIMETRE = 1 / 1000;

const IEC_CLASS_5: TableSource = {
  standard: 'IEC 60228:2004, third edition (kept in the fourth, 2023)',
  table: 'Table 3: class 5 flexible copper conductors, maximum resistance at 20 °C',
  known: 'read in reproductions of the table',
  verified: true,
};

/** mm² (a name, not an area), plain and metal-coated maximum, Ω/km. */
const IEC_CLASS_5_ROWS: readonly (readonly [mm2: number, plain: number, coated: number])[] = [
  [4, 4.95, 5.09],
  [6, 3.3, 3.39],
  [10, 1.91, 1.95],
  [16, 1.21, 1.24],
  [25, 0.78, 0.795],
  [35, 0.554, 0.565],
  [50, 0.386, 0.393],
  [70, 0.272, 0.277],
  [95, 0.206, 0.21],
  [120, 0.161, 0.164],
];

const ISO_BARE: TableSource = {
  standard: 'ISO 6722-1:2011 and ISO 19642-3:2019',
  table: 'maximum conductor resistance at 20 °C, bare copper',
  known: 'from memory',
  verified: true,
};
const ISO_TINNED: TableSource = {
  standard: 'ISO 6722-1:2011',
  table: 'maximum conductor resistance at 20 °C, tinned copper',
  known: 'from memory, uncertain',
  verified: false,
};
const ISO_WALL: TableSource = {
  standard: 'ISO 6722-1:2011 and ISO 19642-3:2019',
  table: 'least wall thickness, thick-wall and thin-wall cable',
  known: 'from memory, uncertain',
  verified: false,
};

/** mm², maximum Ω/km bare and tinned (null: not known here), least wall thick and thin, mm. */
const ISO_ROWS: readonly (readonly [mm2: number, bare: number, tinned: number | null, thick: number, thin: number])[] =
  [
    [6, 3.14, null, 0.64, 0.32],
    [10, 1.82, 1.85, 0.8, 0.48],
    [16, 1.16, 1.18, 0.8, 0.52],
    [25, 0.743, 0.757, 1.04, 0.52],
    [35, 0.527, 0.538, 1.04, 0.64],
    [50, 0.368, 0.375, 1.2, 0.71],
    [70, 0.259, 0.264, 1.2, 0.8],
    [95, 0.196, 0.2, 1.28, 0.9],
    [120, 0.153, 0.156, 1.28, 0.96],
  ];

const SAE: TableSource = {
  standard: 'SAE J1127',
  table: 'minimum conductor area of battery cable',
  known: 'from memory, uncertain',
  verified: false,
};

/** Gauge number (4/0 is −3) and least area, cmil. Size 8 is left out: it is not remembered to better than 5 %. */
const SAE_ROWS: readonly (readonly [awg: number, cmil: number])[] = [
  [6, 24_538],
  [4, 37_360],
  [2, 62_450],
  [1, 77_790],
  [0, 98_980],
  [-1, 125_100],
  [-2, 158_600],
  [-3, 205_500],
];

const ASTM_B33: TableSource = {
  standard: 'ASTM B33-04',
  table: 'Table 2: tinned soft copper wire, maximum resistivity at 20 °C',
  known: 'read in reproductions of the table',
  verified: true,
};

/** Thinnest diameter of the row (in, included), maximum mass resistivity, Ω·g/m². The first row begins at 0.460 in. */
const ASTM_B33_ROWS: readonly (readonly [thinnest: number, ohmGramPerSquareMetre: number])[] = [
  [0.29, 0.15695],
  [0.103, 0.15776],
  [0.0201, 0.1594],
  [0.0111, 0.16279],
  [0.003, 0.16454],
];
const ASTM_B33_THICKEST = 0.46;

/** Size names of the resistance tables, mm². */
export const METRIC_SIZES: readonly number[] = IEC_CLASS_5_ROWS.map(([mm2]) => mm2);

/**
 * Maximum resistance of an IEC 60228 class 5 conductor at 20 °C, Ω/m, by its size name in mm²; null for other sizes.
 * `coated` for tinned strands.
 *
 * @example iec60228Class5Maximum(35, false)?.value // 0.000554
 */
export function iec60228Class5Maximum(mm2: number, coated: boolean): StandardLimit | null {
  const row = IEC_CLASS_5_ROWS.find(([size]) => size === mm2);
  return row ? { value: (coated ? row[2] : row[1]) * OHM_PER_KM, source: IEC_CLASS_5 } : null;
}

/** Maximum resistance of a road-vehicle cable at 20 °C, Ω/m, by its size name in mm²; null where it is not known here. */
export function iso6722Maximum(mm2: number, tinned: boolean): StandardLimit | null {
  const row = ISO_ROWS.find(([size]) => size === mm2);
  const ohmPerKm = row && (tinned ? row[2] : row[1]);
  return ohmPerKm ? { value: ohmPerKm * OHM_PER_KM, source: tinned ? ISO_TINNED : ISO_BARE } : null;
}

/** Least wall of a road-vehicle cable, m, by its size name in mm². Unverified. */
export function iso6722LeastWall(mm2: number, wall: 'thick' | 'thin'): StandardLimit | null {
  const row = ISO_ROWS.find(([size]) => size === mm2);
  return row ? { value: (wall === 'thick' ? row[3] : row[4]) * MILLIMETRE, source: ISO_WALL } : null;
}

/** Least conductor area of an SAE battery-cable size, m², by gauge number (4/0 is −3). Unverified; 3 to 11 % below AWG. */
export function saeMinimumArea(awg: number): StandardLimit | null {
  const row = SAE_ROWS.find(([size]) => size === awg);
  return row ? { value: row[1] * CIRCULAR_MIL, source: SAE } : null;
}

/**
 * Maximum mass resistivity of a tinned copper wire of this finished diameter (m) at 20 °C, Ω·kg/m²; null outside the table's
 * 0.0030 to 0.460 in. Copper at 100 % IACS is 1.5328e-4.
 *
 * @example tinnedResistivityMaximum(0.000254)?.value // 0.00016454, for a strand of 0.0100 in
 */
export function tinnedResistivityMaximum(diameter: number): StandardLimit | null {
  // Rounded to a millionth of an inch, so that a diameter typed as the edge of a row belongs to that row.
  const inches = Math.round(((diameter * INCH[1]) / INCH[0]) * 1e6) / 1e6;
  const row = inches <= ASTM_B33_THICKEST ? ASTM_B33_ROWS.find(([thinnest]) => inches >= thinnest) : undefined;
  return row ? { value: row[1] / 1000, source: ASTM_B33 } : null;
}
