import { isDown } from '../../findings/flex/droops.ts';
import { runsOf } from '../../findings/flex/pushes.ts';
import type { Droop, Push } from '../../findings/shapes/flex.ts';
import { initialSlope, type PushPoint } from '../../methods/flex/push.ts';
import { mean } from '../../numerics/describe.ts';
import type { Reading } from '../../trial/trial.ts';

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

/** The droop as read and as computed. Lengths in mm. */
export function droopView(droop: Droop, readings: readonly Reading[]): DroopView {
  const own = counted(readings, droop.specimen).filter((r) => r.set === droop.set);
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
  return { loading, unloading: inMm(run?.unloading ?? []), line: lineOf(loading), state: push.state || push.run };
}

function lineOf(loading: readonly PushPoint[]): PushView['line'] {
  try {
    const { slope, intercept, points } = initialSlope(loading);
    return { slope, intercept, until: loading[points - 1]!.deflection };
  } catch {
    return null;
  }
}
