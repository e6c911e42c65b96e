import { SeededDraws } from '../../../numerics/random.ts';

/** A pair to be judged: numbers of the things for the left and the right hand. */
export interface PlannedPair {
  left: number;
  right: number;
}

export interface ScheduleOptions {
  /** How many pairs at most; all of them when left out. With fewer, every thing still gets nearly as many as the others. */
  pairs?: number;
  /** Which round: every second one has the sides changed. */
  round?: number;
  /** Hexadecimal, at least 16 digits. */
  seed: string;
}

/**
 * Pairs to judge, balanced and in mixed order: each thing comes up nearly equally often and on the left as often as on the
 * right, no thing comes twice in a row where that can be helped, and rounds in turn change the sides.
 *
 * The pairs are those of a ring, neighbours first, then next but one and so on, so that an incomplete round stays connected
 * from `count` pairs on; which thing sits where on the ring is drawn.
 *
 * @throws RangeError for fewer than 2 things, or fewer pairs than join them (count − 1).
 */
export function pairSchedule(count: number, { pairs: most, round = 0, seed }: ScheduleOptions): PlannedPair[] {
  const all = (count * (count - 1)) / 2;
  const wanted = Math.min(most ?? all, all);
  if (!(count >= 2)) throw new RangeError(`pairs need 2 things, got ${count}`);
  if (wanted < count - 1) throw new RangeError(`${wanted} pairs do not join ${count} things`);
  const draws = new SeededDraws(seed);
  const ring = shuffled(
    Array.from({ length: count }, (_, i) => i),
    draws,
  );
  const pairs: PlannedPair[] = [];
  for (let step = 1; step <= count / 2; step++)
    for (let i = 0; i < (2 * step === count ? count / 2 : count) && pairs.length < wanted; i++) {
      // Half-way round the ring each pair comes once, so there the sides change from pair to pair.
      const turned = (2 * step === count && i % 2 === 1) !== (round % 2 === 1);
      const [a, b] = [ring[i], ring[(i + step) % count]];
      pairs.push(turned ? { left: b, right: a } : { left: a, right: b });
    }
  return apartInTime(shuffled(pairs, draws));
}

function shuffled<T>(items: readonly T[], draws: SeededDraws): T[] {
  const list = [...items];
  for (let i = list.length - 1; i > 0; i--) {
    const j = draws.integer(i + 1);
    [list[i], list[j]] = [list[j], list[i]];
  }
  return list;
}

const shares = (a: PlannedPair, b: PlannedPair): boolean =>
  [a.left, a.right].some((x) => x === b.left || x === b.right);

/** The same pairs in an order in which neighbours share nothing, as far as a look ahead can bring it. */
function apartInTime(pairs: readonly PlannedPair[]): PlannedPair[] {
  const waiting = [...pairs];
  const order: PlannedPair[] = [];
  while (waiting.length > 0) {
    const before = order[order.length - 1];
    const next = before ? waiting.findIndex((p) => !shares(p, before)) : 0;
    order.push(...waiting.splice(Math.max(next, 0), 1));
  }
  return order;
}
