import { joinedGroups } from './connection.ts';
import { type PlannedPair, pairSchedule } from './schedule.ts';

/** A pair as it was handed over: numbers of the things, and of the judge. */
export interface HandedPair {
  left: number;
  right: number;
  judge: number;
}

export interface NextPairOptions {
  /** Who judges next. */
  judge: number;
  /** Hexadecimal, at least 16 digits; the same for all devices of a trial. */
  seed: string;
}

const SEED_DIGITS = 16;

const isSame = (a: PlannedPair, b: PlannedPair) =>
  (a.left === b.left && a.right === b.right) || (a.left === b.right && a.right === b.left);
const shares = (a: PlannedPair, b: PlannedPair) =>
  [a.left, a.right].some((thing) => thing === b.left || thing === b.right);

/** A seed for each judge and round, so that two judges do not go through the pairs in one order. */
function seedFor(seed: string, judge: number): string {
  const shifted = (BigInt(`0x${seed.slice(0, SEED_DIGITS)}`) + BigInt(judge)) & 0xffffffffffffffffn;
  return shifted.toString(16).padStart(SEED_DIGITS, '0');
}

/** The round that a judge is in, from 0: every pair was judged so often by this judge. */
export function roundOf(count: number, own: readonly PlannedPair[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let left = 0; left < count; left++)
    for (let right = left + 1; right < count; right++)
      least = Math.min(least, own.filter((p) => isSame(p, { left, right })).length);
  return Number.isFinite(least) ? least : 0;
}

/**
 * The pair to hand over next, given everything that was handed over before: the judge's round is gone through in the order of
 * `pairSchedule`, pairs that the judges together had least often first, nothing twice in a row where that can be helped. Sides
 * change from one time that a pair comes up to the next, and else go to the thing that was less often on that side. Where as
 * many pairs as there are things have left groups of them that nothing joins, a pair that joins two groups comes before all.
 *
 * A judge may stop anywhere: the pairs that are left out are those that the others had.
 *
 * @throws RangeError for fewer than 2 things
 */
export function nextPair(count: number, handed: readonly HandedPair[], { judge, seed }: NextPairOptions): PlannedPair {
  const own = handed.filter((pair) => pair.judge === judge);
  const round = roundOf(count, own);
  const schedule = pairSchedule(count, { round, seed: seedFor(seed, judge) });
  const times = (pair: PlannedPair, among: readonly PlannedPair[]) => among.filter((p) => isSame(p, pair)).length;
  const open = schedule.filter((pair) => times(pair, own) === round);
  const before = own[own.length - 1];
  const groupOf = joinedGroups(handed, count);
  const joins = ({ left, right }: PlannedPair) => handed.length >= count && groupOf[left] !== groupOf[right];
  const rank = (pair: PlannedPair) => [
    joins(pair) ? 0 : 1,
    times(pair, handed),
    before && shares(pair, before) ? 1 : 0,
  ];
  // What would join two groups may stand in a round of this judge that is over: it is offered all the same.
  const offered = schedule.some(joins) ? schedule : open;
  const ranked = offered.map((pair, place) => ({ pair, key: [...rank(pair), place] }));
  ranked.sort((a, b) => a.key.reduce((so, part, i) => so || part - b.key[i]!, 0));
  return turned(ranked[0]!.pair, own, handed);
}

/** The pair with its sides as they balance best: this judge's own first, then everybody's, then as scheduled. */
function turned(pair: PlannedPair, own: readonly PlannedPair[], handed: readonly PlannedPair[]): PlannedPair {
  const lean = (among: readonly PlannedPair[]) =>
    among.filter((p) => p.left === pair.left && p.right === pair.right).length -
    among.filter((p) => p.left === pair.right && p.right === pair.left).length;
  const onLeft = (thing: number) =>
    own.filter((p) => p.left === thing).length - own.filter((p) => p.right === thing).length;
  const over = lean(own) || lean(handed) || onLeft(pair.left) - onLeft(pair.right);
  return over > 0 ? { left: pair.right, right: pair.left } : pair;
}
