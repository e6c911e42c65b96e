import { isDown } from '../../findings/flex/droops.ts';
import { runsOf } from '../../findings/flex/pushes.ts';
import type { Droop, Push } from '../../findings/shapes/flex.ts';
import type { PushPoint } from '../../methods/flex/push.ts';
import { mean } from '../../numerics/describe.ts';
import { straightLine } from '../../numerics/regression.ts';
import type { Reading } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';

/** One way up of a droop: the computed shape takes its set from the findings, the mark its place from what was read. */
export interface DroopFace {
  face: 'up' | 'down';
  /** mm below the clamp; null where an angle was read. */
  drop: number | null;
  /** rad below level of the line clamp–tip; null where a drop was read. */
  chordAngle: number | null;
}

/** What a drawing of a droop needs. */
export interface DroopView {
  overhang: number;
  /** null when the droop settles nothing: then there is no curve. */
  lambda: number | null;
  /** How far the tip stands off the straight by itself, share of the overhang. */
  set: number;
  faces: DroopFace[];
}

const counted = (readings: readonly Reading[], specimen: string) =>
  readings.filter((r) => r.standing === 'counted' && r.specimen === specimen);

/** Float error of a temperature turned from kelvin, °C. */
const ROUNDING = 1e-6;

/** Whether a reading is of the temperature that a droop stands for: one set read on two days makes two droops. */
function isAt({ temperature }: Reading, { temperature_range_C: range }: Droop): boolean {
  if (temperature === null || range === null) return true;
  const celsius = temperature - ZERO_CELSIUS;
  return celsius > range[0] - ROUNDING && celsius < range[1] + ROUNDING;
}

/** The droop as read and as computed. Lengths in mm. */
export function droopView(droop: Droop, readings: readonly Reading[]): DroopView {
  const own = counted(readings, droop.specimen).filter((r) => r.set === droop.set && isAt(r, droop));
  const drops = own.filter((r) => r.quantity === 'tip_drop');
  const tips = drops.length > 0 ? drops : own.filter((r) => r.quantity === 'chord_angle');
  const faces = (['up', 'down'] as const).flatMap((face): DroopFace[] => {
    const read = tips.filter((r) => isDown(r) === (face === 'down')).map((r) => r.value);
    if (read.length === 0) return [];
    const value = mean(read);
    return [
      drops.length > 0 ? { face, drop: value * 1000, chordAngle: null } : { face, drop: null, chordAngle: value },
    ];
  });
  return { overhang: droop.overhang_mm, lambda: droop.lambda, set: droop.set_of_piece ?? 0, faces };
}

/** What a drawing of a push needs: mm and N. */
export interface PushView {
  loading: PushPoint[];
  unloading: PushPoint[];
  /** The line through the first points, and the deflection up to which they lie on it; null when there is none. */
  line: { slope: number; intercept: number; until: number } | null;
  state: string;
}

/** The push as read, with the line that its stiffness comes from. */
export function pushView(push: Push, readings: readonly Reading[]): PushView {
  const own = counted(readings, push.specimen).filter((r) => r.quantity.startsWith('push_'));
  const run = runsOf(push.specimen, own).find((each) => each.name === push.run);
  const inMm = (points: readonly PushPoint[]) =>
    points.map(({ deflection, force }) => ({ deflection: deflection * 1000, force }));
  const loading = inMm(run?.loading ?? []).sort((a, b) => a.deflection - b.deflection);
  return {
    loading,
    unloading: inMm(run?.unloading ?? []),
    line: lineOf(loading, push.points_used),
    state: push.state || push.run,
  };
}

/** The line through the points that the findings took; none where they took none. */
function lineOf(loading: readonly PushPoint[], used: number): PushView['line'] {
  const taken = loading.slice(0, used);
  const last = taken[taken.length - 1];
  if (taken.length < 3 || !last) return null;
  const { slope, intercept } = straightLine(
    taken.map((p) => p.deflection),
    taken.map((p) => p.force),
  );
  return { slope, intercept, until: last.deflection };
}
