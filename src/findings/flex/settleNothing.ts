import { group } from 'd3-array';
import { outOfReach } from '../../methods/flex/droop.ts';
import { mean } from '../../numerics/describe.ts';
import type { Reading, Trial } from '../../trial/trial.ts';
import { partedByTemperature } from './atTemperature.ts';

/** A tape is off by less than this share. Ours. */
export const BEYOND = 1.03;
/** rad: the line from clamp to tip hangs plumb at most. */
export const PLUMB = Math.PI / 2;

/** Whether a tip can drop so far, or the line to it hang so steep: not further than hangs free, not past plumb. */
export function isPossibleTip(quantity: string, value: number, overhang: number): boolean {
  return quantity === 'chord_angle' ? Math.abs(value) <= PLUMB : Math.abs(value) <= overhang * BEYOND;
}

/**
 * Bending readings that no figure is made of, so that they are no measure of how well anybody reads: tips lower than their
 * overhang, angles past plumb, overhangs longer than the piece, droops too straight or too deep, bends that spring back by
 * more than all.
 */
export function readingsThatSettleNothing(
  all: readonly Reading[],
  trial: Pick<Trial, 'specimens'>,
): ReadonlySet<Reading> {
  const lengthOf = new Map(trial.specimens.map((s) => [s.specimen, s.cutLength]));
  const out = new Set<Reading>();
  for (const r of all) if (r.quantity === 'spring_back' && r.value > 1) out.add(r);
  for (const readings of group(all, (r) => `${r.specimen}\n${r.set}`).values()) {
    const cut = lengthOf.get(readings[0].specimen) ?? null;
    for (const some of partedByTemperature(readings)) {
      const free = (some.some((r) => r.quantity === 'overhang') ? some : readings).filter(
        (r) => r.quantity === 'overhang',
      );
      for (const r of free) if (cut !== null && r.value > cut * BEYOND) out.add(r);
      const tips = some.filter((r) => r.quantity === 'tip_drop' || r.quantity === 'chord_angle');
      if (tips.length > 0 && free.length > 0) judgeTips(tips, mean(free.map((r) => r.value)), out);
    }
  }
  return out;
}

function judgeTips(tips: readonly Reading[], overhang: number, out: Set<Reading>): void {
  for (const r of tips) if (!isPossibleTip(r.quantity, r.value, overhang)) out.add(r);
  for (const [quantity, own] of group(tips, (r) => r.quantity)) {
    const sound = own.filter((r) => !out.has(r));
    if (sound.length === 0) continue;
    const read = quantity === 'tip_drop' ? 'drop' : 'chordAngle';
    const middle = mean(sound.map((r) => r.value)) / (read === 'drop' ? overhang : 1);
    if (outOfReach(read, middle) !== null) for (const r of sound) out.add(r);
  }
}
