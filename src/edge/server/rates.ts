import { askerAddress, fromThisComputer } from './askerAddress.ts';
import type { BenchMiddleware } from './bench.ts';
import { keepLast } from './keepLast.ts';
import { refuse } from './refusal.ts';

/** How often something may be asked: `burst` at once, and `perSecond` on average. */
export interface Rate {
  burst: number;
  perSecond: number;
}

/** Codes are tried ten times a minute from one address at most. Ours. */
export const PAIRING_RATE: Rate = { burst: 10, perSecond: 10 / 60 };
/** What a page that works hard asks stays far below this; a flood from one address does not. Ours. */
export const REQUEST_RATE: Rate = { burst: 1000, perSecond: 50 };
/** Addresses that are remembered at once; the ones heard longest ago are forgotten. Ours. */
const MOST_ADDRESSES = 10_000;

/**
 * Counts by leaky bucket. Answers 0 when `who` may ask now, and otherwise after how many seconds, without counting the
 * refused request.
 */
export function rateCounter({ burst, perSecond }: Rate, most = MOST_ADDRESSES): (who: string, now: number) => number {
  const buckets = new Map<string, { level: number; at: number }>();
  return (who, now) => {
    const had = buckets.get(who) ?? { level: 0, at: now };
    const level = Math.max(0, had.level - (Math.max(0, now - had.at) / 1000) * perSecond);
    const may = level + 1 <= burst;
    keepLast(buckets, who, { level: may ? level + 1 : level, at: now }, most);
    return may ? 0 : Math.max(1, Math.ceil((level + 1 - burst) / perSecond));
  };
}

/** Refuses what comes too often from one address. `spareThisComputer`: nobody floods the computer that they sit at. */
export function notTooOften(rate: Rate, now: () => number, spareThisComputer: boolean): BenchMiddleware {
  const wait = rateCounter(rate);
  return async (c, next) => {
    const seconds = spareThisComputer && fromThisComputer(c) ? 0 : wait(askerAddress(c), now());
    if (seconds === 0) return next();
    c.header('retry-after', String(seconds));
    return refuse(c, 429, {
      found: 'too many requests from this address',
      expected: `the next one in ${seconds} s at the soonest`,
      advice: 'Wait that long and try again; nothing was lost.',
    });
  };
}
