import { BEND_ACTS } from '../../journal/quantities.ts';
import { mean } from '../../numerics/describe.ts';
import type { Reading, Trial } from '../../trial/trial.ts';
import { isDown } from '../flex/droops.ts';

export type BendAct = keyof typeof BEND_ACTS;

/** The act that a quantity belongs to; null for one that is not read by bending. */
export function bendActOf(quantity: string): BendAct | null {
  const acts = Object.keys(BEND_ACTS) as BendAct[];
  return acts.find((act) => (BEND_ACTS[act] as readonly string[]).includes(quantity)) ?? null;
}

const DROOP = 'droop';
/** An overhang that differs by more than this share was clamped anew: its tip belongs to no other. Common practice, no source. */
const CLAMPED_ANEW = 0.02;

const ofPiece = (trial: Pick<Trial, 'readings'>, specimen: string): Reading[] =>
  trial.readings.filter((r) => r.standing === 'counted' && r.specimen === specimen);

/** Sets of droops on a piece, in the order in which they were begun, with the overhangs read. */
function droopSets(trial: Pick<Trial, 'readings'>, specimen: string): { set: string; overhangs: number[] }[] {
  const sets = new Map<string, number[]>();
  for (const r of ofPiece(trial, specimen))
    if (bendActOf(r.quantity) === 'droop' && /^droop( \d+)?$/.test(r.set)) {
      const overhangs = sets.get(r.set) ?? [];
      if (r.quantity === 'overhang') overhangs.push(r.value);
      sets.set(r.set, overhangs);
    }
  return [...sets].map(([set, overhangs]) => ({ set, overhangs }));
}

/**
 * The set that a droop reading about to be kept belongs to. Both ways up and their repeats are one set, so that they are solved
 * together; a new overhang begins the next.
 *
 * @param overhang m, when it is an overhang that is kept; null otherwise
 */
export function droopSetFor(trial: Pick<Trial, 'readings'>, specimen: string, overhang: number | null): string {
  const sets = droopSets(trial, specimen);
  const last = sets[sets.length - 1];
  if (!last) return DROOP;
  if (overhang === null || last.overhangs.length === 0) return last.set;
  const before = mean(last.overhangs);
  const fits = Math.abs(overhang - before) <= CLAMPED_ANEW * before;
  return fits ? last.set : `${DROOP} ${sets.length + 1}`;
}

/** The way up that has fewer tips in the piece's present set: as laid first, then turned over, by turns. */
export function faceFor(trial: Pick<Trial, 'readings'>, specimen: string): 'up' | 'down' {
  const set = droopSetFor(trial, specimen, null);
  const tips = ofPiece(trial, specimen).filter(
    (r) => r.set === set && (r.quantity === 'tip_drop' || r.quantity === 'chord_angle'),
  );
  const down = tips.filter(isDown).length;
  return down < tips.length - down ? 'down' : 'up';
}

export type PushRun = 'first push' | 'worked in';

/** The run that a push about to be read belongs to: a fresh piece has its first push, afterwards it is worked in. */
export function pushRunFor(trial: Pick<Trial, 'readings'>, specimen: string): PushRun {
  const pushes = ofPiece(trial, specimen).filter((r) => r.quantity === 'push_force');
  const last = pushes[pushes.length - 1];
  return last && /\bworked\b/i.test(last.set) ? 'worked in' : 'first push';
}

/** What is read after a quantity of a push: the span once, then deflection and force by turns; null for anything else. */
export function afterInPush(quantity: string): string | null {
  if (quantity === 'push_span' || quantity === 'push_force') return 'push_deflection';
  return quantity === 'push_deflection' ? 'push_force' : null;
}
