/** The readings of one quantity so far, piece by piece, in the unit in which they are typed. */
import { outlying } from '../../../../numerics/outlying.ts';
import type { Reading, Trial } from '../../../../trial/trial.ts';
import { findUnit } from '../../../../units/unit.ts';

/** One reading as it is shown among its repeats. */
export interface ShownReading {
  reading: string;
  /** As typed, with its unit only where that is another one. */
  text: string;
  standing: Reading['standing'];
  why: string;
}

export interface PieceSoFar {
  specimen: string;
  readings: ShownReading[];
  /** Those that count, in the unit. */
  values: number[];
  /** Places in `values` of those far from the rest. */
  farOff: number[];
  /** Mean of those that count with as many decimals as were typed; empty when none counts. */
  mean: string;
}

/** Chance that a sound reading is drawn as one that stands far off. */
const LEVEL = 0.01;
/** Rounding to the display is spread too: one step over √12. */
const ROUNDING = 1 / Math.sqrt(12);

const decimalsOf = (text: string) => /[.,](\d+)\s*$/.exec(text)?.[1]?.length ?? 0;

/** Everything read of a quantity on a piece; `unit` is the one that is typed now. */
export function pieceSoFar(
  trial: Pick<Trial, 'readings'>,
  specimen: string,
  quantity: string,
  unit: string,
): PieceSoFar {
  const all = trial.readings.filter((reading) => reading.specimen === specimen && reading.quantity === quantity);
  const counted = all.filter((reading) => reading.standing === 'counted');
  const from = findUnit(unit);
  const shown = (si: number) => from?.fromSI(si) ?? si;
  const values = counted.map((reading) => shown(reading.value));
  const step = Math.max(0, ...counted.map((reading) => reading.step)) / (from?.stepToSI(1) ?? 1);
  const decimals = Math.max(0, ...counted.map((reading) => decimalsOf(reading.row.value ?? '')));
  return {
    specimen,
    readings: all.map((reading) => shownReading(reading, unit)),
    values,
    farOff: values.length < 3 ? [] : outlying(values, LEVEL, step * ROUNDING),
    mean: values.length === 0 ? '' : (values.reduce((sum, value) => sum + value, 0) / values.length).toFixed(decimals),
  };
}

function shownReading({ reading, row, standing, why }: Reading, unit: string): ShownReading {
  const same = findUnit(row.unit ?? '')?.symbol === findUnit(unit)?.symbol;
  const text = same ? (row.value ?? '') : `${row.value} ${row.unit}`.trim();
  return { reading, text, standing, why };
}

/** One step of the display, in the unit: the smallest among the readings of a quantity; 0 when there is none. */
export function displayStep(trial: Trial, quantity: string, unit: string): number {
  const steps = trial.readings.filter((reading) => reading.quantity === quantity).map((reading) => reading.step);
  return steps.length === 0 ? 0 : Math.min(...steps) / (findUnit(unit)?.stepToSI(1) ?? 1);
}
