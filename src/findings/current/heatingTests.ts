import { group } from 'd3-array';
import { cellNumber } from '../../journal/cellQuantity.ts';
import {
  type CurrentLog,
  type HeatingFound,
  heatingsOf,
  impossibleInLog,
} from '../../methods/current/heating/heatings.ts';
import { conductorMetal } from '../../methods/current/materials.ts';
import { normalQuantile } from '../../numerics/distributions.ts';
import type { OnPiece, Trial } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import type { TrialRows } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Measured, Warning } from '../schema.ts';
import type { HeatingTest } from '../shapes/current.ts';

/** A heating test with what calibrating needs, SI. */
export interface TestResult {
  shown: HeatingTest;
  /** K and A; null when refused or read on the surface. */
  rise: { value: number; u: number; current: number; ambient: number } | null;
}

const cell = (row: OnPiece, column: string): number => {
  const text = (row.row[column] ?? '').trim();
  if (text === '') return Number.NaN;
  const read = cellNumber(text);
  return read.ok ? read.value.value : Number.NaN;
};

/** The rows of one piece as a log in SI, in the order of their times. */
export function logOf(rows: readonly OnPiece[]): CurrentLog {
  const sorted = [...rows].sort((a, b) => cell(a, 'time_s') - cell(b, 'time_s'));
  const column = (name: string, offset = 0) => {
    const values = Float64Array.from(sorted, (r) => cell(r, name) + offset);
    return values.some(Number.isFinite) ? values : null;
  };
  const zeros = new Float64Array(sorted.length);
  return {
    time: column('time_s') ?? zeros,
    current: column('current_A') ?? zeros,
    conductor: column('conductor_C', ZERO_CELSIUS),
    surface: column('surface_C', ZERO_CELSIUS),
    ambient: column('ambient_C', ZERO_CELSIUS),
    drop: column('drop_V'),
  };
}

/** Every heating test of one cable, one for each piece and steady current, with a warning for each log that cannot be. */
export function heatingTestsOf(
  found: CableFindings,
  trial: Trial,
  pieces: ReadonlySet<string>,
  tools: TrialRows['tools'],
  level: number,
): { tests: TestResult[]; warnings: Warning[] } {
  const own = trial.currents.filter((row) => pieces.has(row.specimen));
  const metal = conductorMetal(found.metal_found);
  const tests: TestResult[] = [];
  const warnings: Warning[] = [];
  for (const [specimen, rows] of group(own, (row) => row.specimen)) {
    const log = logOf(rows);
    const wrong = impossibleInLog(log, metal);
    if (wrong) {
      warnings.push({ code: 'log-impossible', cable: found.cable, text: `${specimen}: ${wrong}` });
      continue;
    }
    const heatings = heatingsOf(log, metal, level);
    if (heatings.length === 0)
      warnings.push({
        code: 'log-settles-nothing',
        cable: found.cable,
        text: `The log of ${specimen} holds no stretch of a dozen rows under a steady current with a temperature of the cable.`,
      });
    tests.push(...heatings.map((h) => testOf(specimen, h, log, tools, level)));
  }
  return { tests, warnings };
}

function testOf(
  specimen: string,
  { segment, where, ambient, ambientAssumed, result, copper }: HeatingFound,
  log: CurrentLog,
  tools: TrialRows['tools'],
  level: number,
): TestResult {
  const refused = 'refused' in result ? result.refused : null;
  const curve = 'refused' in result ? result.found : result;
  // A rise is the difference of two thermometers, each with its own limit; the fit never sees that.
  const byThermometers = Math.SQRT2 * tools.thermometer().sd;
  const factor = normalQuantile((1 + level) / 2);
  const steady: Measured | null =
    curve && refused === null
      ? widened(curve.steadyRise, curve.u, curve.interval, byThermometers, factor, level)
      : null;
  const shown: HeatingTest = {
    specimen,
    current_A: segment.current,
    where,
    minutes: (log.time[segment.to - 1] - segment.start) / 60,
    ambient_C: ambient - ZERO_CELSIUS,
    steady_rise: steady,
    refused,
    time_constants_s: curve?.timeConstants ?? [],
    slowest_s: curve && { value: curve.slowest, interval: curve.slowestInterval },
    two_belief: curve?.twoBelief ?? null,
    lengths: curve?.lengths ?? null,
    still_rising: curve?.stillRising ?? null,
    copper: copper && {
      by_resistance: copper.byResistance,
      by_thermometer: copper.byThermometer,
      apart: copper.apart,
    },
    text: '',
  };
  const usable = steady !== null && where === 'conductor';
  return {
    shown: { ...shown, text: wordsOf(shown, ambientAssumed) },
    rise: usable ? { value: steady.value, u: steady.u, current: segment.current, ambient } : null,
  };
}

/** The fit's interval with the thermometers' limits added in squares on either side. */
function widened(
  value: number,
  u: number,
  [low, high]: [number, number],
  byThermometers: number,
  factor: number,
  level: number,
): Measured {
  const side = (half: number) => Math.hypot(half, factor * byThermometers);
  return {
    value,
    unit: 'K',
    u: Math.hypot(u, byThermometers),
    interval: [value - side(value - low), value + side(high - value)],
    level,
    from: ['currents'],
  };
}

const REFUSALS: Readonly<Record<string, string>> = {
  'too wide': 'The log scatters or drifts so much that its end is not known to 10 %',
  'no rise': 'The cable did not warm by a kelvin: take more current',
  'too few readings': 'The log holds too few readings for a curve',
  'not from rest': 'The cable was warm already when the current came on: let it come to rest first',
};

function wordsOf(t: HeatingTest, ambientAssumed: boolean): string {
  const words: string[] = [];
  if (t.refused === 'too short') {
    const needed = (t.two_belief ?? 0) > 0.05 ? 3 : 2;
    const longer = t.slowest_s ? Math.ceil((needed * t.slowest_s.value) / 60) : null;
    words.push(
      `The log ends after ${t.lengths?.toFixed(1) ?? 'too few'} time constants: where the curve ends would be a guess.${longer ? ` Let it run for about ${longer} minutes.` : ''}`,
    );
  } else if (t.refused) words.push(`${REFUSALS[t.refused]}.`);
  if (t.refused === null && (t.still_rising ?? 0) > 0.05)
    words.push(
      `It was still rising by ${(100 * t.still_rising!).toFixed(0)} % in one time constant when the log ended; longer is surer.`,
    );
  if (ambientAssumed)
    words.push('No temperature of the surroundings was logged: the first reading was taken for it all the while.');
  if (t.where === 'surface')
    words.push(
      'The thermometer sat on the jacket: the conductor is hotter, and the carrying current does not lean on it.',
    );
  if (t.copper?.apart)
    words.push(
      `By its resistance the copper rose by ${t.copper.by_resistance.toFixed(1)} K while the thermometer rose by ${t.copper.by_thermometer.toFixed(1)} K: it does not sit on the copper.`,
    );
  return words.join(' ');
}
