import { group } from 'd3-array';
import {
  fallOf,
  hysteresis,
  type InitialSlope,
  initialSlope,
  type PushPoint,
  SHORT_SPAN_IN_DIAMETERS,
  shearShare,
  stiffnessFromPush,
} from '../../methods/flex/push.ts';
import { pieceSign } from '../../trial/plainWords.ts';
import type { Reading } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { Push } from '../shapes/flex.ts';
import { meanTemperature, temperatureRange } from './atTemperature.ts';
import { type BendReadings, limitEffects, type MeanReading } from './bendReadings.ts';
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
    temperature_range_C: temperatureRange(run.readings),
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
  const sign = pieceSign(cable, run.specimen);
  if (!span) return say(`The push of ${sign} lacks its span.`);
  const steps = stepsOf(run, bend);
  const fall = fallOf(rising, steps?.force.step ?? 0);
  if (fall) return say(fallText(sign, fall));
  let slope: InitialSlope;
  try {
    slope = initialSlope(rising, noiseOf(rising, steps));
  } catch (cause) {
    return say(`The push of ${sign} gives no slope: ${cause instanceof Error ? cause.message : 'it fell'}.`);
  }
  const stiffness = lnStiffness(slope, span, run, bend, shear ?? 0);
  return {
    shown: {
      ...shown,
      points_used: slope.points,
      bending_stiffness: measuredOfLn(stiffness, 'N m2', level),
      text: [pushText(slope, run.loading.length, shown.span_in_diameters, shear), coarseText(slope, steps)]
        .filter(Boolean)
        .join(' '),
    },
    stiffness,
    temperature,
  };
}

/** The mean force and deflection of a run, for the steps that they were read in; null where one is missing. */
function stepsOf(run: Run, bend: BendReadings): { force: MeanReading; deflection: MeanReading } | null {
  const force = bend.meanOf(run.readings.filter((r) => r.quantity === 'push_force'));
  const deflection = bend.meanOf(run.readings.filter((r) => r.quantity === 'push_deflection'));
  return force && deflection && { force, deflection };
}

/** Standard deviation that rounding leaves in a force, N: its own step, and that of the deflection by the slope from end to end. */
function noiseOf(rising: readonly PushPoint[], steps: ReturnType<typeof stepsOf>): number {
  const [first, last] = [rising[0], rising[rising.length - 1]];
  if (!steps || !first || !(last.deflection > first.deflection)) return 0;
  const slope = (last.force - first.force) / (last.deflection - first.deflection);
  return Math.hypot(steps.force.step, slope * steps.deflection.step) / Math.sqrt(12);
}

const inMillimetres = (metres: number) => `${Number((metres * 1000).toPrecision(3))} mm`;
const inNewtons = (newtons: number) => `${Number(newtons.toPrecision(3))} N`;

function fallText(sign: string, [before, after]: readonly [PushPoint, PushPoint]): string {
  return `The force of ${sign} falls from ${inNewtons(before.force)} to ${inNewtons(after.force)} while it is pressed on from ${inMillimetres(before.deflection)} to ${inMillimetres(after.deflection)}: a reading is off, or the piece slipped. No stiffness is taken from this push; push it again.`;
}

/** Points that scatter about their line by more than this share of their range do not lie on it. Ours. */
const SCATTERED = 0.05;
/** A display that was read in steps this many times as coarse as it shows could say more. Ours. */
const COARSE = 3;

/** Why the ± of points on a line is wide: the figures were typed in coarser steps than the tool shows. */
function coarseText(slope: InitialSlope, steps: ReturnType<typeof stepsOf>): string {
  if (!steps) return '';
  const { force, deflection } = steps;
  const [inForce, byDeflection] = [force.step, slope.slope * deflection.step];
  const worse = byDeflection > inForce ? deflection : force;
  const isCoarse = worse.tool.resolution > 0 && worse.step > COARSE * worse.tool.resolution;
  if (!isCoarse || Math.hypot(inForce, byDeflection) / 2 < slope.residualSd) return '';
  const step = worse === deflection ? inMillimetres(worse.step) : inNewtons(worse.step);
  const shows = worse === deflection ? inMillimetres(worse.tool.resolution) : inNewtons(worse.tool.resolution);
  return `Most of its ± comes from ${worse === deflection ? 'deflections' : 'forces'} that were typed to ${step}, where the tool shows ${shows}.`;
}

function pushText(slope: InitialSlope, taken: number, diameters: number | null, shear: number | null): string {
  const used =
    slope.points < taken
      ? `The first ${slope.points} of ${taken} points lie on a line; the later ones bend away.`
      : slope.residualSd > SCATTERED * slope.forceRange
        ? `The ${taken} points scatter about their line, by ${inNewtons(slope.residualSd)}.`
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
  const { force, deflection } = stepsOf(run, bend)!;
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
