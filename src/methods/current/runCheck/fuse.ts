import { adiabaticLimit, shortCircuitLimit } from '../thermal/adiabatic.ts';
import type { RunCable } from './question.ts';

/**
 * Standard ratings of bolted strip fuses, A. ISO 8820-5. From memory, uncertain. Blade fuses go lower, but break no more than
 * 1000 A (ISO 8820-3:2015, scope): at a battery a short drives more.
 */
export const FUSE_RATINGS: readonly number[] = [
  30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
];

/**
 * How long a fuse may take to open, s, and how long it holds at least, by multiples of its rating. ISO 8820-3, the class of the
 * strip fuses. From memory, uncertain: look at the sheet of the fuse that is bought.
 */
const OPENING: readonly { multiple: number; least: number; most: number }[] = [
  { multiple: 1.1, least: 360_000, most: Number.POSITIVE_INFINITY },
  { multiple: 1.35, least: 0.75, most: 600 },
  { multiple: 2, least: 0.15, most: 5 },
  { multiple: 3.5, least: 0.04, most: 0.5 },
  { multiple: 6, least: 0.02, most: 0.1 },
];
/** A short must be so many times the rating that the fuse opens within seconds. */
const OPENS_FROM = 2;

/** Longest that a fuse of a rating may carry a current, s; beyond six times its rating it melts at one amount of I² t. */
export function longestOpening(multiple: number): number {
  const last = OPENING[OPENING.length - 1];
  if (multiple >= last.multiple) return last.most * (last.multiple / multiple) ** 2;
  const i = OPENING.findIndex((row) => multiple < row.multiple);
  const [a, b] = [OPENING[i - 1], OPENING[i]];
  if (!a || a.most === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
  const share = Math.log(multiple / a.multiple) / Math.log(b.multiple / a.multiple);
  return a.most * (b.most / a.most) ** share;
}

/** Whether a fuse holds a peak of so many seconds. */
export function holdsPeak(rating: number, peak: number, seconds: number): boolean {
  const multiple = peak / rating;
  const row = OPENING.find((r) => multiple <= r.multiple);
  return row !== undefined && (row.multiple === OPENING[0].multiple || seconds <= row.least);
}

export interface FuseNeed {
  /** A in one run: steady and at the peak, with its seconds. */
  steady: number;
  peak: number;
  peakSeconds: number;
  /** A that one run bears for ever in its surroundings: the lower end. */
  carrying: number;
  /** A that a short at the far end would drive: the smallest, and the largest near the source. */
  farShort: number;
  nearShort: number;
}

export interface FuseAnswer {
  /** A; null when none fits. */
  rating: number | null;
  /** Every rating that would do. */
  fits: number[];
  /** Heat let through by a short at the far end and near the source over what the conductor bears; null without a rating. */
  letThrough: { far: number; near: number } | null;
  text: string;
}

/** Why a rating does not do; null when it does. */
function failsBy(rating: number, need: FuseNeed, cable: RunCable): string | null {
  if (!(rating > need.steady)) return 'it lies below the steady load';
  if (!holdsPeak(rating, need.peak, need.peakSeconds)) return 'it might open at the peak';
  if (rating > need.carrying) return `the cable bears less than that there, ${need.carrying.toFixed(0)} A`;
  if (need.farShort < OPENS_FROM * rating) return 'a short at the far end would not open it in seconds';
  const through = letThroughOf(rating, need, cable);
  if (Math.max(through.far, through.near) > 1) return 'a short would overheat the cable before it opens';
  return null;
}

/** A: what a blade fuse breaks at most. ISO 8820-3:2015, scope. */
const BLADE_BREAKS = 1000;

/** Said where the list itself is what stands in the way: a fuse below it would hold the load, and the cable would bear it. */
function smaller(rating: number, need: FuseNeed): string {
  const listEnds = rating === FUSE_RATINGS[0] && rating > need.carrying && need.carrying > need.steady;
  if (!listEnds) return '';
  return need.nearShort > BLADE_BREAKS
    ? `; smaller fuses, of the blade kind, break ${BLADE_BREAKS} A at most (ISO 8820-3), less than a short near this source drives, and are not looked at`
    : '; smaller fuses, of the blade kind, are not looked at';
}

/** I² t that passes over what the conductor bears without giving any off, IEC 60949. */
function letThroughOf(rating: number, need: FuseNeed, cable: RunCable): { far: number; near: number } {
  const limit = Math.min(shortCircuitLimit(cable.rating), cable.heated.metal.meltingPoint);
  const bears = adiabaticLimit(cable.heated.metal, cable.area, cable.rating, limit);
  const of = (short: number) => (short * short * longestOpening(short / rating)) / bears;
  return { far: of(need.farShort), near: of(need.nearShort) };
}

/** No fuse, and why. */
export const noFuse = (why: string): FuseAnswer => ({
  rating: null,
  fits: [],
  letThrough: null,
  text: `No fuse fits: ${why}.`,
});

/**
 * The least standard rating that carries the load and that the cable bears: above the steady load, holding its peak, not above
 * what the cable carries in its surroundings, and opening on a short at either end before the conductor is too hot.
 * "No fuse fits" is an answer: the cable is too thin for the load, or the run too long for its short to be seen.
 *
 * Sources: IEC 60364-4-43, 433.1 (load ≤ rating ≤ carrying current) and 434.5 (let-through below k² S²). From memory.
 */
export function fuseFor(need: FuseNeed, cable: RunCable): FuseAnswer {
  const tried = FUSE_RATINGS.map((rating) => ({ rating, fails: failsBy(rating, need, cable) }));
  const fits = tried.filter((t) => t.fails === null).map((t) => t.rating);
  const [rating = null] = fits;
  if (rating === null) {
    const holding = tried.find((t) => t.rating > need.steady && holdsPeak(t.rating, need.peak, need.peakSeconds));
    const why = holding
      ? `${holding.rating} A, the least that holds the load, does not do: ${holding.fails}${smaller(holding.rating, need)}`
      : 'the load is above every rating in the list';
    return noFuse(why);
  }
  const largest = fits[fits.length - 1];
  const range = largest > rating ? ` (up to ${largest} A would do)` : '';
  return { rating, fits, letThrough: letThroughOf(rating, need, cable), text: `${rating} A${range}.` };
}
