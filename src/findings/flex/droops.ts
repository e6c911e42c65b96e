import { group } from 'd3-array';
import { clampEdgeShare, type DroopFound, stiffnessFromDroop } from '../../methods/flex/droop.ts';
import { pieceSign } from '../../trial/plainWords.ts';
import type { Reading } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import { wholeText } from '../../units/wholeText.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { Droop } from '../shapes/flex.ts';
import { type BendReadings, limitEffects, type MeanReading, meanTemperature } from './bendReadings.ts';
import { effectiveDof, type LnFigure, measuredOfLn } from './lnFigure.ts';
import { type WeightFound, weightOf } from './weight.ts';

/** One droop with what is needed to compare it: ln EI, and the temperature in K. */
export interface DroopResult {
  shown: Droop;
  stiffness: LnFigure | null;
  weight: WeightFound | null;
  temperature: number | null;
  /** Share of EI that a clamp edge off by a quarter of the diameter would cost; 0 without a stiffness. */
  clampEdge: number;
  muchSet: boolean;
}

/** One face of a droop: the mean of what was read, with the gap between the two ways of coming to rest in its variance. */
interface FaceRead {
  mean: MeanReading;
  value: number;
  variance: number;
  gap: number | null;
}

/** Taken for the clamp's edge where no diameter is known, m. Common practice, no source. */
const USUAL_DIAMETER = 0.012;

/** So much of a piece is held in the clamp at least, m. Common practice, no source. */
const CLAMPED = 0.05;
/** A tape is off by less than this share. Ours. */
const BEYOND = 1.03;

/** Whether a reading of a droop was taken with the piece turned over. */
export const isDown = (r: Reading) => /\bdown\b|turned/i.test(r.position);
const fromAbove = (r: Reading) => /\babove\b/i.test(r.position);
const fromBelow = (r: Reading) => /\bbelow\b/i.test(r.position);

/**
 * Friction between strands lets a piece rest anywhere in a gap: the truth is taken as uniform between the two ways of coming
 * to it, so the gap adds gap²/12 to the variance.
 */
function faceOf(readings: readonly Reading[], bend: BendReadings): FaceRead | null {
  const above = bend.meanOf(readings.filter(fromAbove));
  const below = bend.meanOf(readings.filter(fromBelow));
  if (above && below) {
    const gap = Math.abs(above.value - below.value);
    const value = (above.value + below.value) / 2;
    const variance = (above.variance + below.variance) / 4 + (gap * gap) / 12;
    return { mean: { ...above, value, readings: [...above.readings, ...below.readings] }, value, variance, gap };
  }
  const mean = bend.meanOf(readings);
  return mean && { mean, value: mean.value, variance: mean.variance, gap: null };
}

/** Every droop of a cable, one for each piece and set. */
export function droopsOf(cable: CableReadings, bend: BendReadings, level: number): DroopResult[] {
  const own = bend.all.filter(
    (r) => r.cable === cable.cable.cable && ['overhang', 'tip_drop', 'chord_angle'].includes(r.quantity),
  );
  const sets = group(own, (r) => `${r.specimen}\n${r.set}`);
  return [...sets.values()].flatMap((readings) => droopOf(readings, cable, bend, level) ?? []);
}

function droopOf(
  readings: readonly Reading[],
  cable: CableReadings,
  bend: BendReadings,
  level: number,
): DroopResult | null {
  const [{ specimen, set }] = readings;
  const of = (quantity: string) => readings.filter((r) => r.quantity === quantity);
  const read = of('tip_drop').length > 0 ? 'drop' : 'chordAngle';
  const tips = of(read === 'drop' ? 'tip_drop' : 'chord_angle');
  const overhang = bend.meanOf(of('overhang'));
  const up =
    faceOf(
      tips.filter((r) => !isDown(r)),
      bend,
    ) ?? null;
  const down = faceOf(tips.filter(isDown), bend);
  const first = up ?? down;
  const temperature = meanTemperature(readings);
  const shown: Droop = {
    specimen,
    set,
    temperature_C: temperature === null ? null : temperature - ZERO_CELSIUS,
    overhang_mm: (overhang?.value ?? 0) * 1000,
    lambda: null,
    bending_stiffness: null,
    way: null,
    set_of_piece: null,
    gap_mm: read === 'drop' ? largestGap(up, down) : null,
    better_overhang_mm: null,
    text: '',
  };
  const weight = weightOf(cable, specimen);
  const open = { shown, stiffness: null, weight, temperature, clampEdge: 0, muchSet: false };
  const cut = cable.specimens.find((piece) => piece.specimen === specimen)?.cutLength ?? null;
  const say = (text: string): DroopResult => ({ ...open, shown: { ...shown, text } });
  if (!overhang || !first)
    return say(
      `A droop of ${pieceSign(cable, specimen)} lacks its ${overhang ? 'tip drop or chord angle' : 'overhang'}.`,
    );
  const doubt = doubtOf(specimen, cut, overhang.value, read === 'drop' ? tips.map((r) => r.value) : []);
  if (doubt !== null) return say(doubt);
  if (!weight)
    return say(`The droop of ${pieceSign(cable, specimen)} needs a weight per length: weigh a piece of known length.`);
  const found = stiffnessFromDroop({
    weight: Math.exp(weight.figure.ln),
    overhang: overhang.value,
    read,
    up: first.value,
    down: up && down ? down.value : null,
  });
  if ('refused' in found) {
    const best = found.betterOverhang;
    const fits = best !== null && (cut === null || best <= cut - CLAMPED);
    const better = best === null || !fits ? null : roundTo(best * 1000, 5);
    const text = refusalText(specimen, found.refused, better, read, best !== null && !fits);
    return { ...open, shown: { ...shown, better_overhang_mm: better, text } };
  }
  const stiffness = lnStiffness(found, weight, overhang, first, up && down ? down : null);
  const diameter = cable.groups.of('outer_diameter')[0]?.mean ?? cable.cable.label.outerDiameter ?? USUAL_DIAMETER;
  return {
    ...open,
    stiffness,
    clampEdge: clampEdgeShare(found, overhang.value, diameter),
    muchSet: found.muchSet,
    shown: {
      ...shown,
      lambda: found.lambda,
      bending_stiffness: measuredOfLn(stiffness, 'N m2', level, 1, weight.condition),
      way: found.way,
      set_of_piece: found.set,
      better_overhang_mm: roundTo(Math.min(found.bendingLength * 1.82, (cut ?? Infinity) - CLAMPED) * 1000, 5),
      text: droopText(found),
    },
  };
}

const roundTo = (x: number, step: number) => Math.round(x / step) * step;

function largestGap(...faces: (FaceRead | null)[]): number | null {
  const gaps = faces.flatMap((f) => f?.gap ?? []);
  return gaps.length > 0 ? Math.max(...gaps) * 1000 : null;
}

/** Readings that cannot be of this piece: more hangs free than there is, or the tip drops further than it hangs out. */
function doubtOf(piece: string, cut: number | null, overhang: number, drops: readonly number[]): string | null {
  const millimetres = (metres: number) => `${wholeText(metres * 1000)} mm`;
  if (cut !== null && overhang > cut * BEYOND)
    return `The free length of ${piece}, ${millimetres(overhang)}, is more than the piece is long (${millimetres(cut)}): check it and its unit.`;
  const deepest = Math.max(0, ...drops.map(Math.abs));
  if (deepest > overhang * BEYOND)
    return `The tip of ${piece} drops by ${millimetres(deepest)}, further than the ${millimetres(overhang)} that hang free: check both and their units.`;
  return null;
}

function refusalText(piece: string, refused: string, better: number | null, read: string, tooShort: boolean): string {
  const why =
    refused === 'too straight'
      ? `The droop of ${piece} is too small for a rule: it says next to nothing about stiffness.`
      : `${piece} hangs almost plumb: the ${read === 'drop' ? 'drop' : 'angle'} hardly changes with stiffness any more.`;
  if (tooShort) return `${why} This piece is too short to hang better: push it, or coil it.`;
  if (better === null)
    return `${why} ${refused === 'too straight' ? 'Let more hang free, or push it.' : 'Let less hang free.'}`;
  return `${why} Let about ${better} mm hang free${refused === 'too straight' ? ', or push it' : ''}.`;
}

function droopText(found: DroopFound): string {
  if (found.way === 'one face') return 'Read one way up only: turn it over, or any set of its own stays in the figure.';
  if (found.set === null)
    return 'The two ways up fit no evenly curved piece; their mean was taken. Straighten it and read again.';
  const share = `${(100 * Math.abs(found.set)).toFixed(0)} % of the overhang`;
  if (found.way === 'mean of both faces') return `Mean of both ways up; its own set is ${share}.`;
  return found.muchSet
    ? `Solved for a set of ${share}, which is a lot: straighten it and read again, for an uneven curl is not seen.`
    : `Solved for stiffness and a set of ${share} together.`;
}

function lnStiffness(
  found: DroopFound,
  weight: WeightFound,
  overhang: MeanReading,
  first: FaceRead,
  second: FaceRead | null,
): LnFigure {
  const shared = new Map(weight.figure.shared);
  const add = (effects: readonly [string, number][]) => {
    for (const [input, sd] of effects) shared.set(input, (shared.get(input) ?? 0) + sd);
  };
  const byOverhang = found.byLnOverhang / overhang.value;
  add(limitEffects(overhang, byOverhang));
  add(limitEffects(first.mean, found.byUp));
  if (second) add(limitEffects(second.mean, found.byDown));
  const variances = [
    { variance: weight.figure.own, dof: weight.figure.dof },
    { variance: byOverhang ** 2 * overhang.variance, dof: overhang.dof },
    { variance: found.byUp ** 2 * first.variance, dof: first.mean.dof },
    ...(second ? [{ variance: found.byDown ** 2 * second.variance, dof: second.mean.dof }] : []),
  ];
  return {
    ln: found.lnStiffness,
    shared,
    own: variances.reduce((sum, v) => sum + v.variance, 0),
    dof: effectiveDof(variances),
    from: [...new Set(['overhang', first.mean.quantity, ...weight.figure.from])],
  };
}
