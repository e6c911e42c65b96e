/** The four spots marked in a photo of a droop, and what was typed with them. */
import { computed, signal } from '@preact/signals';
import { type DroopInPhoto, droopInPhoto, dropDoubt, type Spot } from '../../../../methods/flex/droopInPhoto.ts';
import { lambdaFromDrop } from '../../../../methods/flex/lambdaFromDroop.ts';
import { readTypedQuantity } from '../../../../units/typedQuantity.ts';

export const MARKS = ['clamp', 'tip', 'ruleFrom', 'ruleTo'] as const;
export type MarkName = (typeof MARKS)[number];

export const MARK_WORDS: Readonly<Record<MarkName, string>> = {
  clamp: 'Edge of the clamp, middle of the cable',
  tip: 'Tip, middle of the cable',
  ruleFrom: 'One end of the known distance',
  ruleTo: 'Its other end',
};

export const marks = signal<Partial<Record<MarkName, Spot>>>({});
/** The mark that a tap or an arrow key moves. */
export const chosenMark = signal<MarkName>('clamp');
export const apartTyped = signal('');
export const overhangTyped = signal('');
/** True: the two known spots lie level, whatever the camera did. */
export const ruleIsLevel = signal(false);
export const faceUp = signal<'up' | 'down'>('up');

/** How far off a tap is taken to be, px of the picture as shown at its full size. Common practice, no source. */
export const TAP_PIXELS = 2;

export function beginMarking(): void {
  marks.value = {};
  chosenMark.value = 'clamp';
  apartTyped.value = '';
  overhangTyped.value = '';
  ruleIsLevel.value = false;
  faceUp.value = 'up';
}

/** Puts the chosen mark where the picture was tapped, and goes on to the next that is not set. */
export function placeMark(at: Spot): void {
  const name = chosenMark.peek();
  marks.value = { ...marks.peek(), [name]: at };
  const next = MARKS.find((each) => marks.peek()[each] === undefined);
  if (next !== undefined) chosenMark.value = next;
}

export function moveMark(name: MarkName, to: Spot): void {
  marks.value = { ...marks.peek(), [name]: to };
}

const lengthIn = (typed: string): number | null => {
  const read = typed.trim() === '' ? null : readTypedQuantity(typed, 'length', 'mm');
  return read?.ok && read.value.value > 0 ? read.value.value : null;
};

export const apart = computed(() => lengthIn(apartTyped.value));
export const overhang = computed(() => lengthIn(overhangTyped.value));

/** Scale, reach and drop; null until all four are set and the distance is typed. */
export const inPhoto = computed<DroopInPhoto | null>(() => {
  const { clamp, tip, ruleFrom, ruleTo } = marks.value;
  if (!clamp || !tip || !ruleFrom || !ruleTo || apart.value === null) return null;
  return droopInPhoto({ clamp, tip, ruleFrom, ruleTo, apart: apart.value, ruleIsLevel: ruleIsLevel.value });
});

export interface PhotoReading {
  found: DroopInPhoto;
  /** m, what the taps leave of doubt about the drop. */
  doubt: number;
  /** w L³ / EI; null with `trouble` where the drop and the overhang fit no droop that can be used. */
  lambda: number | null;
  trouble: string;
}

/** The droop as marked and typed; null while something is missing. */
export const photoReading = computed<PhotoReading | null>(() => {
  const found = inPhoto.value;
  if (found === null || overhang.value === null) return null;
  const doubt = dropDoubt(found, apart.value!, TAP_PIXELS);
  const mm = (metres: number) => `${Math.round(metres * 1000)} mm`;
  if (found.chord > overhang.value * 1.01)
    return {
      found,
      doubt,
      lambda: null,
      trouble: `From clamp to tip it is ${mm(found.chord)} in a straight line, more than the ${mm(overhang.value)} that hang free. Look at the known distance, and whether it lies in the plane of the piece.`,
    };
  if (!(found.drop > 0))
    return {
      found,
      doubt,
      lambda: null,
      trouble: 'The tip is not below the clamp. If the camera was turned, say that the known distance lies level.',
    };
  try {
    return { found, doubt, lambda: lambdaFromDrop(found.drop / overhang.value).lambda, trouble: '' };
  } catch {
    return {
      found,
      doubt,
      lambda: null,
      trouble: `It hangs almost plumb: ${mm(found.drop)} of ${mm(overhang.value)}. Let less hang free.`,
    };
  }
});
