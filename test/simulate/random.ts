/**
 * Seeded draws for invented cables. Kept apart from the draws that the program itself uses, so that a fault in those
 * cannot hide behind lots that share it.
 */
export interface Draws {
  /** Uniform in [0, 1). */
  unit(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** Integer from low to high, both included. */
  whole(low: number, high: number): number;
  /** Bell-shaped scatter with the given standard deviation, never beyond six of them. */
  scatter(standardDeviation: number): number;
  /** One of the items; `weights` need not sum to 1. */
  pick<T>(items: readonly T[], weights?: readonly number[]): T;
}

/** Golden-ratio step of a 32-bit counter: 2³² / φ, made odd. */
const STEP = 0x9e3779b9;

/**
 * Draws from a seed by sfc32 (C. Doty-Humphrey, PractRand: shifts 9, 3 and 21): three 32-bit words mixed by additions,
 * shifts and a rotation, and a counter that guarantees a period of at least 2³².
 *
 * Scatter is the sum of twelve uniforms less six: variance exactly 1, and only additions, so that the same seed gives
 * the same digits on every machine (logarithms and cosines differ between engines in the last digit).
 * When not to use it: for anything secret, or for tails beyond three standard deviations.
 */
export function drawsFrom(seed: number): Draws {
  let a = seed | 0;
  let b = (seed ^ STEP) | 0;
  let c = Math.imul(seed + 1, STEP) | 0;
  let counter = 1;

  function word(): number {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  }
  for (let i = 0; i < 16; i++) word();

  const unit = () => word() / 4294967296;
  return {
    unit,
    between: (low, high) => low + (high - low) * unit(),
    whole: (low, high) => low + Math.floor(unit() * (high - low + 1)),
    scatter(standardDeviation) {
      let sum = -6;
      for (let i = 0; i < 12; i++) sum += unit();
      return sum * standardDeviation;
    },
    pick(items, weights) {
      const total = weights ? weights.reduce((sum, weight) => sum + weight, 0) : items.length;
      let left = unit() * total;
      for (let i = 0; i < items.length; i++) {
        left -= weights ? weights[i]! : 1;
        if (left < 0) return items[i]!;
      }
      return items[items.length - 1]!;
    },
  };
}
