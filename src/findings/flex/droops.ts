import { group } from 'd3-array';
import { clampEdgeShare, type DroopFound, stiffnessFromDroop } from '../../methods/flex/droop.ts';
import { pieceSign } from '../../trial/plainWords.ts';
import type { Reading } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import { wholeText } from '../../units/wholeText.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { Droop } from '../shapes/flex.ts';
import { meanTemperature, partedByTemperature, temperatureRange } from './atTemperature.ts';
import { type BendReadings, limitEffects, type MeanReading } from './bendReadings.ts';
import { effectiveDof, type LnFigure, measuredOfLn } from './lnFigure.ts';
import { BEYOND, isPossibleTip } from './settleNothing.ts';
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
  /** What was left out of it, in words; empty when nothing was. */
  leftOut: string;
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

/** Every droop of a cable, one for each piece, set and temperature. */
export function droopsOf(cable: CableReadings, bend: BendReadings, level: number): DroopResult[] {
  const own = bend.all.filter(
    (r) => r.cable === cable.cable.cable && ['overhang', 'tip_drop', 'chord_angle'].includes(r.quantity),
  );
  const sets = group(own, (r) => `${r.specimen}\n${r.set}`);
  return [...sets.values()].flatMap((readings) =>
    partedByTemperature(readings).map((part) => droopOf(part, readings, cable, bend, level)),
  );
}

/** A droop from its readings at one temperature; what hangs free may have been read at another, with the set that it belongs to. */
function droopOf(
  readings: readonly Reading[],
  whole: readonly Reading[],
  cable: CableReadings,
  bend: BendReadings,
  level: number,
): DroopResult {
  const [{ specimen, set }] = readings;
  const sign = pieceSign(cable, specimen);
  const of = (quantity: string) => readings.filter((r) => r.quantity === quantity);
  const read = of('tip_drop').length > 0 ? 'drop' : 'chordAngle';
  const tips = of(read === 'drop' ? 'tip_drop' : 'chord_angle');
  const free = of('overhang');
  const overhang = bend.meanOf(free.length > 0 ? free : whole.filter((r) => r.quantity === 'overhang'));
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
    temperature_range_C: temperatureRange(readings),
    overhang_mm: (overhang?.value ?? 0) * 1000,
    lambda: null,
    bending_stiffness: null,
    way: null,
    set_of_piece: null,
    gap_mm: read === 'drop' ? largestGap(up, down) : null,
    clamp_edge_share: null,
    better_overhang_mm: null,
    text: '',
  };
  const weight = weightOf(cable, specimen);
  const open = { shown, stiffness: null, weight, temperature, clampEdge: 0, muchSet: false, leftOut: '' };
  const cut = cable.specimens.find((piece) => piece.specimen === specimen)?.cutLength ?? null;
  const say = (text: string): DroopResult => ({ ...open, shown: { ...shown, text } });
  if (!overhang || !first)
    return say(`A droop of ${sign} lacks its ${overhang ? 'tip drop or chord angle' : 'overhang'}.`);
  const doubt = doubtOf(sign, cut, overhang.value, tips);
  if (doubt !== null) return say(doubt);
  const leftOut = read === 'drop' ? pastPlumb(sign, of('chord_angle'), overhang.value) : '';
  if (!weight) return say(`The droop of ${sign} needs a weight per length: weigh a piece of known length.`);
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
    const text = refusalText(sign, found.refused, better, read, best !== null && !fits);
    return { ...open, leftOut, shown: { ...shown, better_overhang_mm: better, text } };
  }
  const stiffness = lnStiffness(found, weight, overhang, first, up && down ? down : null);
  const diameter = cable.groups.of('outer_diameter')[0]?.mean ?? cable.cable.label.outerDiameter ?? USUAL_DIAMETER;
  const clampEdge = clampEdgeShare(found, overhang.value, diameter);
  return {
    ...open,
    stiffness,
    clampEdge,
    muchSet: found.muchSet,
    leftOut,
    shown: {
      ...shown,
      lambda: found.lambda,
      bending_stiffness: measuredOfLn(stiffness, 'N m2', level, 1, weight.condition),
      way: found.way,
      set_of_piece: found.set,
      clamp_edge_share: clampEdge,
      better_overhang_mm: roundTo(Math.min(found.bendingLength * 1.82, (cut ?? Infinity) - CLAMPED) * 1000, 5),
      text: [droopText(found, isFromPhoto(tips)), leftOut].filter(Boolean).join(' '),
    },
  };
}

/** Whether all tips were read from photos, as the page notes it with them. */
const isFromPhoto = (tips: readonly Reading[]) => tips.every((r) => /\bread from the photo\b/.test(r.row.note ?? ''));

const roundTo = (x: number, step: number) => Math.round(x / step) * step;

function largestGap(...faces: (FaceRead | null)[]): number | null {
  const gaps = faces.flatMap((f) => f?.gap ?? []);
  return gaps.length > 0 ? Math.max(...gaps) * 1000 : null;
}

const millimetres = (metres: number) => `${wholeText(metres * 1000)} mm`;
const degrees = (radians: number) => `${wholeText((radians * 180) / Math.PI)}°`;

/** Readings that cannot be of this piece: more hangs free than there is, or the tip hangs lower than a tip can. */
function doubtOf(sign: string, cut: number | null, overhang: number, tips: readonly Reading[]): string | null {
  if (cut !== null && overhang > cut * BEYOND)
    return `The free length of ${sign}, ${millimetres(overhang)}, is more than the piece is long (${millimetres(cut)}): check it and its unit.`;
  const [wrong] = tips
    .filter((r) => !isPossibleTip(r.quantity, r.value, overhang))
    .sort((a, b) => Math.abs(b.value) - Math.abs(a.value));
  if (!wrong) return null;
  return wrong.quantity === 'chord_angle'
    ? `The angle of ${sign}, ${degrees(wrong.value)}, is past plumb, where no tip hangs: check it and its unit.`
    : `The tip of ${sign} drops by ${millimetres(Math.abs(wrong.value))}, further than the ${millimetres(overhang)} that hang free: check both and their units.`;
}

/** Angles beside a drop are not used; one that cannot be is said all the same. */
function pastPlumb(sign: string, angles: readonly Reading[], overhang: number): string {
  const wrong = angles.find((r) => !isPossibleTip(r.quantity, r.value, overhang));
  return wrong
    ? `The angle of ${sign}, ${degrees(wrong.value)}, is past plumb, where no tip hangs: it was left out.`
    : '';
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

function droopText(found: DroopFound, fromPhoto: boolean): string {
  if (found.way === 'one face' && fromPhoto)
    return 'The photo shows one way up only: turn the piece over and take another, or any set of its own stays in the figure.';
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
