import { group } from 'd3-array';
import {
  hysteresis,
  type InitialSlope,
  initialSlope,
  type PushPoint,
  SHORT_SPAN_IN_DIAMETERS,
  shearShare,
  stiffnessFromPush,
} from '../../methods/flex/push.ts';
import type { Reading } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { Push } from '../shapes/flex.ts';
import { type BendReadings, limitEffects, type MeanReading, meanTemperature } from './bendReadings.ts';
import { effectiveDof, type LnFigure, measuredOfLn } from './lnFigure.ts';

/** One push with what is needed to compare it. */
export interface PushResult {
  shown: Push;
  stiffness: LnFigure | null;
  temperature: number | null;
}

/** Degrees of freedom that the steps of the displays count for beside the scatter about the line (see numerics/typeA.ts). */
const PRIOR_DOF = 4;

/** The readings of one run: points in the order taken, the two branches apart. */
export interface Run {
  specimen: string;
  name: string;
  readings: Reading[];
  loading: PushPoint[];
  unloading: PushPoint[];
}

const isUnloading = (r: Reading) => /\bunload/i.test(r.position);

/** Points of one set: the first force with the first deflection and so on. */
function pointsOf(readings: readonly Reading[], unloading: boolean): PushPoint[] {
  const of = (quantity: string) => readings.filter((r) => r.quantity === quantity && isUnloading(r) === unloading);
  const forces = of('push_force');
  return of('push_deflection')
    .slice(0, forces.length)
    .map((d, i) => ({ deflection: d.value, force: forces[i].value }));
}

/**
 * Runs of a piece. A set that holds several points is a run; sets of one point each make a run together with those of the same
 * name but for a number at its end: `first push 1`, `first push 2` …
 */
export function runsOf(specimen: string, readings: readonly Reading[]): Run[] {
  const runs = new Map<string, Run>();
  for (const [set, own] of group(readings, (r) => r.set)) {
    const loading = pointsOf(own, false);
    const unloading = pointsOf(own, true);
    const name = Math.max(loading.length, unloading.length) > 1 ? set : set.replace(/[\s/#.:_-]*\d+$/, '');
    const run = runs.get(name) ?? { specimen, name, readings: [], loading: [], unloading: [] };
    run.readings.push(...own);
    run.loading.push(...loading);
    run.unloading.push(...unloading);
    runs.set(name, run);
  }
  // A span alone, measured once for the piece, is no run.
  return [...runs.values()].filter((run) => run.loading.length + run.unloading.length > 0);
}

/** Every push of a cable, one for each run. */
export function pushesOf(cable: CableReadings, bend: BendReadings, level: number): PushResult[] {
  const own = bend.all.filter((r) => r.cable === cable.cable.cable && r.quantity.startsWith('push_'));
  return [...group(own, (r) => r.specimen)].flatMap(([specimen, readings]) => {
    const spans = readings.filter((r) => r.quantity === 'push_span');
    return runsOf(specimen, readings).map((run) => {
      const of = spans.filter((r) => run.readings.includes(r));
      return pushOf(run, bend.meanOf(of.length > 0 ? of : spans), cable, bend, level);
    });
  });
}

/** 'first push' or 'worked in', as far as the name of the run says; empty when it says neither. */
function stateOf(name: string): string {
  if (/\bfirst\b|\bfresh\b/i.test(name)) return 'first push';
  return /\bworked\b|\bworn\b/i.test(name) ? 'worked in' : '';
}

function pushOf(
  run: Run,
  span: MeanReading | null,
  cable: CableReadings,
  bend: BendReadings,
  level: number,
): PushResult {
  const temperature = meanTemperature(run.readings);
  const diameter = cable.groups.of('outer_diameter')[0]?.mean ?? null;
  const rising = [...run.loading].sort((a, b) => a.deflection - b.deflection);
  const lost = hysteresis(run.loading, run.unloading);
  const shear = diameter === null || !span ? null : shearShare(diameter, span.value);
  const shown: Push = {
    specimen: run.specimen,
    run: run.name,
    state: stateOf(run.name),
    temperature_C: temperature === null ? null : temperature - ZERO_CELSIUS,
    span_mm: (span?.value ?? 0) * 1000,
    points: run.loading.length + run.unloading.length,
    points_used: 0,
    bending_stiffness: null,
    span_in_diameters: diameter === null || !span ? null : span.value / diameter,
    shear_share: shear,
    lost_share: lost?.share ?? null,
    lost_mJ: lost ? lost.lost * 1000 : null,
    text: '',
  };
  const say = (text: string): PushResult => ({ shown: { ...shown, text }, stiffness: null, temperature });
  if (!span) return say(`The push of ${run.specimen} lacks its span.`);
  let slope: InitialSlope;
  try {
    slope = initialSlope(rising);
  } catch (cause) {
    return say(`The push of ${run.specimen} gives no slope: ${cause instanceof Error ? cause.message : 'it fell'}.`);
  }
  const stiffness = lnStiffness(slope, span, run, bend, shear ?? 0);
  return {
    shown: {
      ...shown,
      points_used: slope.points,
      bending_stiffness: measuredOfLn(stiffness, 'N m2', level),
      text: pushText(slope, run.loading.length, shown.span_in_diameters, shear),
    },
    stiffness,
    temperature,
  };
}

function pushText(slope: InitialSlope, taken: number, diameters: number | null, shear: number | null): string {
  const used =
    slope.points < taken
      ? `The first ${slope.points} of ${taken} points lie on a line; the later ones bend away.`
      : `All ${taken} points lie on a line.`;
  const short =
    diameters !== null && shear !== null && diameters < SHORT_SPAN_IN_DIAMETERS
      ? ` The span is only ${diameters.toFixed(1)} diameters: shear hides at least ${(100 * shear).toFixed(0)} % of the stiffness, which was added back. Take a longer span.`
      : '';
  return `${used}${short}`;
}

/**
 * ln EI = ln slope + 3 ln span − ln 48, the shear added back with its own size as its half-width. The fixed part of a tool's
 * limit is taken as an error over the range of the points: one that is the same at all of them would not matter.
 */
function lnStiffness(slope: InitialSlope, span: MeanReading, run: Run, bend: BendReadings, shear: number): LnFigure {
  const of = (quantity: string) => bend.meanOf(run.readings.filter((r) => r.quantity === quantity))!;
  const force = of('push_force');
  const deflection = of('push_deflection');
  const shared = new Map<string, number>();
  const add = (effects: readonly [string, number][]) => {
    for (const [input, sd] of effects) shared.set(input, (shared.get(input) ?? 0) + sd);
  };
  add(limitEffects({ ...force, value: slope.forceRange }, 1 / slope.forceRange));
  add(limitEffects({ ...deflection, value: slope.deflectionRange }, -1 / slope.deflectionRange));
  add(limitEffects(span, 3 / span.value));
  const steps = (force.step / 2) ** 2 + ((slope.slope * deflection.step) / 2) ** 2;
  const scatter = (PRIOR_DOF * steps + slope.dof * slope.residualSd ** 2) / (PRIOR_DOF + slope.dof);
  const variances = [
    { variance: scatter / (slope.spread * slope.slope) ** 2, dof: PRIOR_DOF + slope.dof },
    { variance: (9 * span.variance) / span.value ** 2, dof: span.dof },
    { variance: shear ** 2 / 3, dof: Number.POSITIVE_INFINITY },
  ];
  return {
    ln: Math.log(stiffnessFromPush(slope.slope, span.value)) + Math.log1p(shear),
    shared,
    own: variances.reduce((sum, v) => sum + v.variance, 0),
    dof: effectiveDof(variances),
    from: ['push_force', 'push_deflection', 'push_span'],
  };
}
