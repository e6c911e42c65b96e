/** The readings of one quantity so far, piece by piece, in the unit in which they are typed. */
import { isDown } from '../../../../findings/flex/droops.ts';
import { outlying } from '../../../../numerics/outlying.ts';
import type { Reading, Trial } from '../../../../trial/trial.ts';
import { splitTyped, typedText, unitText } from '../../../../units/typedText.ts';
import { findUnit } from '../../../../units/unit.ts';

/** One reading as it is shown among its repeats. */
export interface ShownReading {
  reading: string;
  /** As typed, with its unit only where that is another one. */
  text: string;
  standing: Reading['standing'];
  why: string;
  /** 'as laid' or 'turned over', where the two are no repeats of each other; else empty. */
  face: string;
}

export interface PieceSoFar {
  specimen: string;
  /** Every one, whichever way up. */
  readings: ShownReading[];
  /** Those that mean and dots are of: all, or those read the same way up, where that matters. */
  alike: ShownReading[];
  /** Those that count, in the unit. */
  values: number[];
  /** Places in `values` of those far from the rest. */
  farOff: number[];
  /** Mean of those that count, as typed where they are all alike, else to the coarsest step among them; empty when none counts. */
  mean: string;
}

/** Chance that a sound reading is drawn as one that stands far off. */
const LEVEL = 0.01;
/** Rounding to the display is spread too: one step over √12. */
const ROUNDING = 1 / Math.sqrt(12);

/** As many decimals as a step of the display is worth; one more for fractions, whose steps are no power of ten. */
const decimalsOf = (step: number) => Math.max(0, Math.ceil(-Math.log10(step) - 1e-9) + (isPowerOfTen(step) ? 0 : 1));
const isPowerOfTen = (step: number) => Math.abs(Math.log10(step) - Math.round(Math.log10(step))) < 1e-6;

/** The mean in the unit, with digits of its own; a single reading, or equal ones, exactly as typed. */
function meanText(counted: readonly Reading[], unit: string): string {
  const [first, ...others] = counted;
  if (first === undefined) return '';
  const text = typedIn(first, unit);
  if (text !== null && others.every((each) => typedIn(each, unit) === text)) return text;
  const from = findUnit(unit);
  const mean = counted.reduce((sum, { value }) => sum + value, 0) / counted.length;
  const coarsest = Math.max(...counted.map(({ step }) => step)) / (from?.stepToSI(1) ?? 1);
  return (from?.fromSI(mean) ?? mean).toFixed(coarsest > 0 ? decimalsOf(coarsest) : 0);
}

/** The number as typed, where it was typed in that unit; null where it was typed in another. */
function typedIn({ row }: Reading, unit: string): string | null {
  const { number, unit: own } = splitTyped(row.value ?? '');
  return unitText(own || (row.unit ?? '')) === unitText(unit) ? number : null;
}

/** Quantities that are read either way up: the two ways are no repeats of each other. */
const EITHER_WAY_UP: ReadonlySet<string> = new Set(['tip_drop', 'chord_angle']);

/** Which way up the readings lie that belong together: 'as laid', 'turned over'; empty where it does not matter. */
export const faceWords = (quantity: string, face: 'up' | 'down'): string =>
  EITHER_WAY_UP.has(quantity) ? { up: 'as laid', down: 'turned over' }[face] : '';

/**
 * Everything read of a quantity on a piece; `unit` is the one that is typed now. Mean and dots are of what was read the same way
 * up, where that matters.
 */
export function pieceSoFar(
  trial: Pick<Trial, 'readings'>,
  specimen: string,
  quantity: string,
  unit: string,
  face: 'up' | 'down' = 'up',
): PieceSoFar {
  const all = trial.readings.filter((reading) => reading.specimen === specimen && reading.quantity === quantity);
  const alike = EITHER_WAY_UP.has(quantity) ? all.filter((each) => isDown(each) === (face === 'down')) : all;
  const counted = alike.filter(({ standing }) => standing === 'counted');
  const from = findUnit(unit);
  const shown = (si: number) => from?.fromSI(si) ?? si;
  const values = counted.map((reading) => shown(reading.value));
  const step = Math.max(0, ...counted.map((reading) => reading.step)) / (from?.stepToSI(1) ?? 1);
  return {
    specimen,
    readings: all.map((reading) => shownReading(reading, unit)),
    alike: alike.map((reading) => shownReading(reading, unit)),
    values,
    farOff: values.length < 3 ? [] : outlying(values, LEVEL, step * ROUNDING),
    mean: meanText(counted, unit),
  };
}

function shownReading(read: Reading, unit: string): ShownReading {
  const { reading, row, standing, why, quantity } = read;
  const text = typedIn(read, unit) ?? typedText(row.value ?? '', row.unit ?? '');
  return { reading, text, standing, why, face: faceWords(quantity, isDown(read) ? 'down' : 'up') };
}

/** One step of the display, in the unit: the smallest among the readings of a quantity; 0 when there is none. */
export function displayStep(trial: Trial, quantity: string, unit: string): number {
  const steps = trial.readings.filter((reading) => reading.quantity === quantity).map((reading) => reading.step);
  return steps.length === 0 ? 0 : Math.min(...steps) / (findUnit(unit)?.stepToSI(1) ?? 1);
}
