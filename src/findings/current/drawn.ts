/** Points and curves behind what was found under current, for drawings: the same rows and the same fits as the findings. */
import { group } from 'd3-array';
import { type HeatingFound, heatingsOf, impossibleInLog } from '../../methods/current/heating/heatings.ts';
import { conductorMetal } from '../../methods/current/materials.ts';
import type { Trial } from '../../trial/trial.ts';
import type { TrialRows } from '../rows/rowsOfTrial.ts';
import { testPairsOf } from '../rows/testPairs.ts';
import type { CableFindings } from '../schema.ts';
import { logOf } from './heatingTests.ts';

/** One heating of a piece: readings since the current was switched on, and the curve through them. */
export interface DrawnHeating {
  cable: string;
  specimen: string;
  /** A */
  current: number;
  /** s since it was switched on, and K above the surroundings. */
  points: { seconds: number; rise: number }[];
  /** K and s, the fastest first; null where no curve was found. */
  fit: { amplitudes: number[]; timeConstants: number[] } | null;
}

/** Voltages over currents of one piece. A, V. */
export interface DrawnFourWire {
  cable: string;
  specimen: string;
  points: { current: number; voltage: number }[];
}

/** Every heating and every four-wire reading of the trial as it is drawn. */
export function drawnCurrent(
  trial: Trial,
  rows: TrialRows,
  cables: readonly CableFindings[],
): { heatings: DrawnHeating[]; fourWires: DrawnFourWire[] } {
  const heatings: DrawnHeating[] = [];
  const fourWires: DrawnFourWire[] = [];
  rows.cables.forEach((readings, i) => {
    const found = cables[i]!;
    const pieces = new Set(readings.specimens.map((s) => s.specimen));
    heatings.push(...heatingsOfCable(trial, found, pieces));
    for (const specimen of pieces) {
      const pairs = testPairsOf(specimen, readings.groups);
      if (pairs) fourWires.push({ cable: found.cable, specimen, points: pairs.points.map((p) => ({ ...p })) });
    }
  });
  return { heatings, fourWires };
}

function heatingsOfCable(trial: Trial, found: CableFindings, pieces: ReadonlySet<string>): DrawnHeating[] {
  const metal = conductorMetal(found.metal_found);
  const own = trial.currents.filter((row) => pieces.has(row.specimen));
  return [...group(own, (row) => row.specimen)].flatMap(([specimen, rows]) => {
    const log = logOf(rows);
    if (impossibleInLog(log, metal) !== null) return [];
    return heatingsOf(log, metal).map((heating) => drawnOf(found.cable, specimen, heating, log));
  });
}

function drawnOf(
  cable: string,
  specimen: string,
  { segment, where, ambient, ambientAssumed, result }: HeatingFound,
  log: ReturnType<typeof logOf>,
): DrawnHeating {
  const temperature = where === 'conductor' ? log.conductor : log.surface;
  const surroundings = ambientAssumed ? null : log.ambient;
  const points: DrawnHeating['points'] = [];
  for (let i = segment.from; temperature && i < segment.to; i++) {
    const rise = temperature[i]! - (surroundings ? surroundings[i]! : ambient) - segment.baseline;
    if (Number.isFinite(rise)) points.push({ seconds: Math.max(0, log.time[i]! - segment.start), rise });
  }
  const curve = 'refused' in result ? result.found : result;
  return {
    cable,
    specimen,
    current: segment.current,
    points,
    fit: curve && { amplitudes: [...curve.amplitudes], timeConstants: [...curve.timeConstants] },
  };
}

/** K after so many seconds on the curve of a heating: Σ a (1 − exp(−t/τ)). */
export function riseAt({ amplitudes, timeConstants }: NonNullable<DrawnHeating['fit']>, seconds: number): number {
  return amplitudes.reduce((sum, a, i) => sum + a * (1 - Math.exp(-seconds / timeConstants[i]!)), 0);
}
