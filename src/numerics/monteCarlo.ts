import { equalTailedInterval, shortestInterval } from './coverage.ts';
import { compensatedSum } from './describe.ts';

/** When the adaptive procedure may stop. */
export interface AdaptiveOptions {
  /** Draws in a block; 10⁴ or more, and at least 100/(1 − level). Defaults to the larger of the two. */
  blockSize?: number;
  /** Digits of the standard uncertainty that must be settled: 1 or 2. Defaults to 2. */
  significantDigits?: number;
  /** Coverage probability of the interval. Defaults to 0.95. */
  level?: number;
  /** Draws after which it stops unsettled. Defaults to 10⁷. */
  maximumDraws?: number;
  /** Which interval is watched and given. Defaults to equal-tailed. */
  interval?: 'equal-tailed' | 'shortest';
}

/** What the draws say of the result. */
export interface AdaptiveResult {
  draws: number;
  blocks: number;
  /** True when mean, u and both ends of the interval have settled to the tolerance. */
  stable: boolean;
  mean: number;
  /** Standard deviation of all draws: the standard uncertainty. */
  u: number;
  interval: [number, number];
  level: number;
  /** δ, half a unit of the last significant digit of u, to which everything was to settle. */
  tolerance: number;
  /** Twice the standard deviation of the block averages of mean, u, lower and upper end. */
  spread: { mean: number; u: number; lower: number; upper: number };
  /** All draws in ascending order. */
  sorted: Float64Array;
}

/** Fewest draws in a block that JCGM 101, 7.9.4 b) asks for. */
const LEAST_BLOCK = 10_000;
/** 7.9.4 b) asks for at least 100/(1 − p) draws in a block, so that 50 lie beyond each end of the interval. */
const DRAWS_BEYOND = 100;

/**
 * Numerical tolerance of an uncertainty stated to a number of significant digits: with u = c · 10ˡ, c a whole number of that many
 * digits, δ = ½ · 10ˡ.
 *
 * Source: JCGM 101:2008, 7.9.2.
 *
 * @returns 0 for u = 0.
 * @throws RangeError when u is negative or not finite, or the digits are not a whole number from 1.
 * @example numericalTolerance(0.35e-3, 2) // 0.005e-3
 */
export function numericalTolerance(u: number, significantDigits: number): number {
  if (!(u >= 0 && Number.isFinite(u))) throw new RangeError(`an uncertainty is finite and not negative, got ${u}`);
  if (!(Number.isInteger(significantDigits) && significantDigits >= 1))
    throw new RangeError(`significant digits are a whole number from 1, got ${significantDigits}`);
  if (u === 0) return 0;
  // toExponential rounds 9.96 up to 1.0e+1, which moves the last digit as the definition asks.
  const exponent = Number(u.toExponential(significantDigits - 1).split('e')[1]);
  return Number(`0.5e${exponent - (significantDigits - 1)}`);
}

/**
 * Propagation of distributions by blocks of draws until the result no longer moves in the digits that will be shown.
 *
 * After each block from the second on, mean, standard deviation and both ends of the coverage interval of every block are compared: it
 * stops when twice the standard deviation of each block average is within the tolerance δ of the standard uncertainty of
 * all draws. The result is then taken from all draws together.
 *
 * Source: JCGM 101:2008, 7.9.4. Not for results without a standard deviation (Student t with 2 degrees of freedom or
 * fewer): they never settle, and `stable` stays false.
 *
 * @param runBlock gives `size` values of the result for block number 0, 1, 2 …; each block must draw from its own stream
 *   (`SeededDraws.stream`), so that the same blocks may be computed in any order or place.
 * @throws RangeError when an option is out of range or a block has the wrong length or a value that is not a number.
 */
export function adaptive(
  runBlock: (block: number, size: number) => Float64Array,
  options: AdaptiveOptions = {},
): AdaptiveResult {
  const { significantDigits = 2, level = 0.95, maximumDraws = 10_000_000, interval = 'equal-tailed' } = options;
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, got ${level}`);
  const needed = Math.ceil(DRAWS_BEYOND / (1 - level) - 1e-6);
  const size = options.blockSize ?? Math.max(LEAST_BLOCK, needed);
  if (!(Number.isInteger(size) && size >= needed))
    throw new RangeError(`a block needs at least ${needed} draws for level ${level}, got ${size}`);
  const find = interval === 'shortest' ? shortestInterval : equalTailedInterval;

  const blocks: Block[] = [];
  let state = notYet();
  while (!state.stable && (blocks.length + 1) * size <= Math.max(maximumDraws, 2 * size)) {
    blocks.push(summarise(runBlock(blocks.length, size), size, (sorted) => find(sorted, level)));
    if (blocks.length >= 2) state = judge(blocks, significantDigits);
  }
  const sorted = merged(blocks.map((block) => block.sorted));
  return {
    draws: sorted.length,
    blocks: blocks.length,
    stable: state.stable,
    mean: averageOf(blocks, (b) => b.mean),
    u: state.u,
    interval: find(sorted, level),
    level,
    tolerance: state.tolerance,
    spread: state.spread,
    sorted,
  };
}

interface Block {
  sorted: Float64Array;
  mean: number;
  /** Sum of squared deviations from the block's mean. */
  squares: number;
  u: number;
  lower: number;
  upper: number;
}

interface Judgement {
  stable: boolean;
  u: number;
  tolerance: number;
  spread: { mean: number; u: number; lower: number; upper: number };
}

function notYet(): Judgement {
  const open = Number.POSITIVE_INFINITY;
  return { stable: false, u: open, tolerance: 0, spread: { mean: open, u: open, lower: open, upper: open } };
}

function summarise(draws: Float64Array, size: number, find: (sorted: Float64Array) => [number, number]): Block {
  if (draws.length !== size) throw new RangeError(`a block of ${size} draws was asked, ${draws.length} came`);
  const sorted = Float64Array.from(draws).sort();
  if (Number.isNaN(sorted[size - 1])) throw new RangeError('a draw of the result is not a number');
  const mean = compensatedSum(sorted) / size;
  let squares = 0;
  for (let i = 0; i < size; i++) squares += (sorted[i] - mean) ** 2;
  const [lower, upper] = find(sorted);
  return { sorted, mean, squares, u: Math.sqrt(squares / (size - 1)), lower, upper };
}

function judge(blocks: readonly Block[], significantDigits: number): Judgement {
  const size = blocks[0].sorted.length;
  const mean = averageOf(blocks, (b) => b.mean);
  let squares = 0;
  for (const block of blocks) squares += block.squares + size * (block.mean - mean) ** 2;
  const u = Math.sqrt(squares / (blocks.length * size - 1));
  const tolerance = numericalTolerance(u, significantDigits);
  const spread = {
    mean: twiceSdOfAverage(blocks, (b) => b.mean),
    u: twiceSdOfAverage(blocks, (b) => b.u),
    lower: twiceSdOfAverage(blocks, (b) => b.lower),
    upper: twiceSdOfAverage(blocks, (b) => b.upper),
  };
  return { stable: Object.values(spread).every((s) => s <= tolerance), u, tolerance, spread };
}

function averageOf(blocks: readonly Block[], of: (b: Block) => number): number {
  return blocks.reduce((sum, block) => sum + of(block), 0) / blocks.length;
}

function twiceSdOfAverage(blocks: readonly Block[], of: (b: Block) => number): number {
  const h = blocks.length;
  const average = averageOf(blocks, of);
  const squares = blocks.reduce((sum, block) => sum + (of(block) - average) ** 2, 0);
  return 2 * Math.sqrt(squares / (h * (h - 1)));
}

/** One ascending array of all blocks. */
function merged(parts: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(parts.reduce((n, part) => n + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all.sort();
}
