import { mean } from '../../numerics/describe.ts';

/** One reading of the wall at a cut face. */
export interface WallReading {
  /** m */
  thickness: number;
  /** Degrees round the face; null where the place was not noted. */
  angle: number | null;
}

export interface WallOfFace {
  n: number;
  /** m */
  mean: number;
  least: number;
  most: number;
  /** Least over most: 1 for an even wall. Of the several numbers that go by "concentricity" this is the one meant here. */
  concentricity: number;
  /** (most − least)/most. */
  eccentricity: number;
  /** How far the bundle sits off the middle, m, from the first harmonic round the face; null with fewer than four noted places. */
  offset: number | null;
  /** Degrees at which the wall is thinnest by that harmonic. */
  thinnestAt: number | null;
}

/** IEC 60811-201 takes six radial readings about 60° apart, the first at the thinnest place. */
export const READINGS_ASKED = 6;
const FEWEST_FOR_OFFSET = 4;

/**
 * The wall of one cut face in the manner of IEC 60811-201: mean of the readings and their least. Readings that all fell on one place
 * or on the thin side alone cannot show the other.
 *
 * @throws RangeError without readings.
 */
export function wallOfFace(readings: readonly WallReading[]): WallOfFace {
  if (readings.length === 0) throw new RangeError('a wall needs readings');
  const thickness = readings.map((r) => r.thickness);
  const least = Math.min(...thickness);
  const most = Math.max(...thickness);
  const harmonic = firstHarmonic(readings);
  return {
    n: readings.length,
    mean: mean(thickness),
    least,
    most,
    concentricity: least / most,
    eccentricity: (most - least) / most,
    offset: harmonic?.offset ?? null,
    thinnestAt: harmonic?.thinnestAt ?? null,
  };
}

/** Least squares of t = m + c·cos θ + s·sin θ for any set of angles: √(c² + s²) is how far the two circles are apart. */
function firstHarmonic(readings: readonly WallReading[]): { offset: number; thinnestAt: number } | null {
  const placed = readings.flatMap((r) => (r.angle === null ? [] : [{ t: r.thickness, at: (r.angle * Math.PI) / 180 }]));
  if (new Set(placed.map((p) => Math.round(p.at * 1e6))).size < FEWEST_FOR_OFFSET) return null;
  const columns = placed.map(({ at }) => [1, Math.cos(at), Math.sin(at)]);
  const [, c, s] = solve3(
    [0, 1, 2].map((i) => [0, 1, 2].map((j) => columns.reduce((sum, x) => sum + x[i] * x[j], 0))),
    [0, 1, 2].map((i) => columns.reduce((sum, x, k) => sum + x[i] * placed[k].t, 0)),
  );
  const offset = Math.hypot(c, s);
  if (!Number.isFinite(offset)) return null;
  const thickest = (Math.atan2(s, c) * 180) / Math.PI;
  return { offset, thinnestAt: (thickest + 540) % 360 };
}

/** Cramer's rule for three unknowns. */
function solve3(m: readonly (readonly number[])[], y: readonly number[]): number[] {
  const det = (a: readonly (readonly number[])[]) =>
    a[0][0] * (a[1][1] * a[2][2] - a[1][2] * a[2][1]) -
    a[0][1] * (a[1][0] * a[2][2] - a[1][2] * a[2][0]) +
    a[0][2] * (a[1][0] * a[2][1] - a[1][1] * a[2][0]);
  const whole = det(m);
  return [0, 1, 2].map((k) => det(m.map((row, i) => row.map((x, j) => (j === k ? y[i] : x)))) / whole);
}

/** Mean as IEC 60811-201 states it: to two decimals of a millimetre, m. From memory. */
export function meanToTwoDecimals(metres: number): number {
  return Math.round(Number((metres * 1e5).toPrecision(12))) / 1e5;
}

/**
 * Out-of-round of a jacket: greatest less least diameter over their mean, 0 for a circle. null for fewer than two directions.
 *
 * @param diameters one for each direction, m
 */
export function outOfRound(diameters: readonly number[]): number | null {
  if (diameters.length < 2) return null;
  return (Math.max(...diameters) - Math.min(...diameters)) / mean(diameters);
}

/**
 * Degrees of a place round a cut face as people note it: `60`, `60 degrees`, `2 o'clock`, `3h`; null for words.
 */
export function angleOfPosition(position: string): number | null {
  const text = position.trim().toLowerCase();
  const clock = /^(\d{1,2})\s*(?:o['’]?\s*clock|h|hours?)$/.exec(text);
  if (clock) return Number(clock[1]) <= 12 ? (Number(clock[1]) % 12) * 30 : null;
  const degrees = /^(\d{1,3}(?:\.\d+)?)\s*(?:°|deg|degrees?)?$/.exec(text);
  return degrees && Number(degrees[1]) <= 360 ? Number(degrees[1]) % 360 : null;
}
