import { ZERO_CELSIUS } from '../../../units/dimension.ts';
import { largestOf, type Segment, steadySegments } from '../log/segments.ts';
import { type ConductorMetal, resistanceFactor } from '../materials.ts';
import { fitHeating, type Heating, type Refused } from './fitHeating.ts';

/** A log of one piece under current. s, A, K, V; NaN where a row holds nothing. */
export interface CurrentLog {
  time: ArrayLike<number>;
  current: ArrayLike<number>;
  conductor: ArrayLike<number> | null;
  surface: ArrayLike<number> | null;
  ambient: ArrayLike<number> | null;
  drop: ArrayLike<number> | null;
}

/** The copper's own word: what its resistance says of the rise between the first and the last rows, beside the thermometer. */
export interface CopperCheck {
  /** K, from R: (R_end/R_start − 1)/α at the start. */
  byResistance: number;
  byThermometer: number;
  /** More than a tenth and two kelvin apart: the thermometer does not sit on the copper, or the drop is not the wire's. */
  apart: boolean;
}

export interface HeatingFound {
  segment: Segment;
  /** 'conductor' | 'surface' */
  where: string;
  /** True when the log has no surroundings and the start was taken for them. */
  ambientAssumed: boolean;
  /** K, mean over the segment. */
  ambient: number;
  result: Heating | Refused | { refused: 'not from rest'; found: null };
  copper: CopperCheck | null;
}

/**
 * Where no row without current tells: beyond this rise in the first row, K, or this share of the whole, a heating did not begin
 * from rest. Common practice, no source.
 */
const REST = { kelvin: 2, share: 0.15 };
const FEWEST_FOR_COPPER = 10;

/**
 * What cannot be in a log, in one sentence; null when nothing is wrong with it.
 *
 * @param metal whose melting point no conductor passes.
 */
export function impossibleInLog(log: CurrentLog, metal: ConductorMetal): string | null {
  const n = log.time.length;
  for (let i = 1; i < n; i++)
    if (log.time[i] < log.time[i - 1])
      return `The log runs backwards: ${log.time[i].toFixed(0)} s comes after ${log.time[i - 1].toFixed(0)} s.`;
  for (const column of [log.conductor, log.surface])
    if (column && jumpsWhileCreeping(column, log.current))
      return 'The temperature jumps in one step while the current creeps: the columns of current and temperature are swapped.';
  const largest = largestOf(log.current);
  if (largest === 0) return 'The current is 0 A in every row: nothing heated the cable.';
  const melting = metal.meltingPoint - ZERO_CELSIUS;
  for (const column of [log.conductor, log.surface, log.ambient])
    for (let i = 0; column && i < n; i++) {
      if (column[i] > metal.meltingPoint)
        return `A temperature of ${(column[i] - ZERO_CELSIUS).toFixed(0)} °C is above ${metal.name}'s melting point (${melting.toFixed(0)} °C): is the unit right?`;
      if (column[i] <= 0) return 'A temperature lies below absolute zero: is the unit right?';
    }
  const cable = log.conductor ?? log.surface;
  if (cable && log.ambient && swapped(cable, log.ambient, log.current, largest))
    return 'The surroundings grew warm while the cable did not: the two columns are swapped.';
  return null;
}

/**
 * Currents are switched and temperatures creep. Where it is the other way round the cells of the two stand in each other's place.
 * A step is one that makes most of all the change; creeping is change of which no single step makes much. Shares and least changes:
 * common practice, no source.
 */
const SWAP = { leastRows: 8, step: 0.8, creep: 0.35, leastJump: 15, leastCreep: 5, leastShare: 0.15 };

function jumpsWhileCreeping(temperature: ArrayLike<number>, current: ArrayLike<number>): boolean {
  const [t, i] = [changeOf(temperature), changeOf(current)];
  if (Math.min(t.rows, i.rows) < SWAP.leastRows) return false;
  const creeps = i.range > Math.max(SWAP.leastCreep, SWAP.leastShare * i.largest) && i.step <= SWAP.creep * i.range;
  return creeps && t.range > SWAP.leastJump && t.step >= SWAP.step * t.range;
}

/** How far a column ranges, and its largest step from one figure to the next. */
function changeOf(column: ArrayLike<number>) {
  let [low, high, step, last, rows] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, Number.NaN, 0];
  for (let k = 0; k < column.length; k++) {
    const x = column[k];
    if (!Number.isFinite(x)) continue;
    rows++;
    low = Math.min(low, x);
    high = Math.max(high, x);
    if (rows > 1) step = Math.max(step, Math.abs(x - last));
    last = x;
  }
  return { rows, range: high - low, step, largest: Math.max(Math.abs(low), Math.abs(high)) };
}

/** The surroundings rise while current flows, and the cable does not. */
function swapped(
  cable: ArrayLike<number>,
  ambient: ArrayLike<number>,
  current: ArrayLike<number>,
  largest: number,
): boolean {
  const on: number[] = [];
  for (let i = 0; i < cable.length; i++) if (Math.abs(current[i]) > 0.5 * largest) on.push(i);
  if (on.length < 4) return false;
  const [first, last] = [on[0], on[on.length - 1]];
  const roseBy = (column: ArrayLike<number>) => column[last] - column[first];
  return roseBy(ambient) > 3 && roseBy(cable) < 0.3 * roseBy(ambient) && cable[last] < ambient[last] - 3;
}

/** Every heating of a log from rest at a steady current: where it ends, how fast, and the copper's own word. */
export function heatingsOf(log: CurrentLog, metal: ConductorMetal, level = 0.95): HeatingFound[] {
  const where = log.conductor && some(log.conductor) ? 'conductor' : 'surface';
  const cable = (where === 'conductor' ? log.conductor : log.surface) ?? null;
  if (!cable || !some(cable)) return [];
  const hasAmbient = log.ambient !== null && some(log.ambient);
  const first = firstOf(cable);
  const ambientAt = (i: number): number => (hasAmbient ? log.ambient![i] : first);
  const rise = Float64Array.from({ length: log.time.length }, (_, i) => cable[i] - ambientAt(i));
  return steadySegments({ time: log.time, current: log.current, rise }).map((segment) => {
    const rows: number[] = [];
    for (let i = segment.from; i < segment.to; i++) if (Number.isFinite(rise[i])) rows.push(i);
    const ambient = rows.reduce((sum, i) => sum + ambientAt(i), 0) / Math.max(1, rows.length);
    const shared = { segment, where, ambientAssumed: !hasAmbient, ambient };
    const largest = rows.reduce((most, i) => Math.max(most, rise[i] - segment.baseline), 0);
    const copper = log.drop ? copperCheck(log, rows, cable, metal) : null;
    const late = segment.startRise > Math.max(REST.kelvin, REST.share * largest) && hasAmbient;
    if (!(segment.rested ?? !late))
      return { ...shared, copper, result: { refused: 'not from rest' as const, found: null } };
    const result = fitHeating(
      {
        time: rows.map((i) => Math.max(0, log.time[i] - segment.start)),
        rise: rows.map((i) => rise[i] - segment.baseline),
      },
      level,
    );
    return { ...shared, copper, result };
  });
}

function copperCheck(
  log: CurrentLog,
  rows: readonly number[],
  cable: ArrayLike<number>,
  metal: ConductorMetal,
): CopperCheck | null {
  const usable = rows.filter((i) => Number.isFinite(log.drop![i]) && log.drop![i] !== 0 && log.current[i] !== 0);
  if (usable.length < FEWEST_FOR_COPPER) return null;
  const few = Math.max(2, Math.floor(usable.length / 20));
  const meanOf = (f: (i: number) => number, of: readonly number[]) => of.reduce((sum, i) => sum + f(i), 0) / of.length;
  const ohms = (i: number) => Math.abs(log.drop![i] / log.current[i]);
  const [start, end] = [usable.slice(0, few), usable.slice(-few)];
  const from = meanOf((i) => cable[i], start);
  const alpha = metal.alpha / resistanceFactor(metal.alpha, from);
  const byResistance = (meanOf(ohms, end) / meanOf(ohms, start) - 1) / alpha;
  const byThermometer = meanOf((i) => cable[i], end) - from;
  const difference = Math.abs(byResistance - byThermometer);
  return { byResistance, byThermometer, apart: difference > 2 && difference > 0.1 * Math.abs(byThermometer) };
}

function some(column: ArrayLike<number>): boolean {
  for (let i = 0; i < column.length; i++) if (Number.isFinite(column[i])) return true;
  return false;
}

function firstOf(column: ArrayLike<number>): number {
  for (let i = 0; i < column.length; i++) if (Number.isFinite(column[i])) return column[i];
  return Number.NaN;
}
