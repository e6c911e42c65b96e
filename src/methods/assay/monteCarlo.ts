import { numericalTolerance } from '../../numerics/monteCarlo.ts';
import { SeededDraws } from '../../numerics/random.ts';
import { drawPlan } from './drawPlan.ts';
import { areaDraws, type DrawnBlock } from './draws.ts';
import type { JointAssay } from './joint.ts';

export interface MonteCarloOptions {
  /** Hexadecimal; the same seed gives the same digits everywhere. */
  seed: string;
  level: number;
  /** Draws exactly so many, or until the digits that will be shown stand still. */
  draws: number | 'auto';
  /** Where 'auto' gives up. */
  maximumDraws?: number;
  /** Cable by cable: the copper area that the label asks for, m², or null. */
  copperRequired: readonly (number | null)[];
  /** Called after each block; a return of true stops. */
  onBlock?: (draws: number) => boolean;
}

/**
 * One cable by draws. Areas in m². The centre is e^mean of ln A and u its standard deviation times that, as in the closed
 * form: scatter with few degrees of freedom has tails whose plain mean does not exist.
 */
export interface DrawnArea {
  mean: number;
  u: number;
  interval: [number, number];
  /** Share of draws in which the metal was copper and there was enough of it; null where the label asks for none. */
  copperHeld: number | null;
}

export interface MonteCarloAssay {
  draws: number;
  /** True when mean, u and both ends of every cable's interval have settled. */
  stable: boolean;
  cables: DrawnArea[];
}

/** JCGM 101:2008, 7.9.4 b: at least 10⁴ draws in a block. */
const BLOCK = 10_000;
const SIGNIFICANT_DIGITS = 2;
const MAXIMUM_DRAWS = 1_000_000;

/** Running sums over blocks of one cable: mean, standard deviation, both ends of the interval, and their squares. */
class Watched {
  private blocks = 0;
  private readonly sum = new Float64Array(4);
  private readonly squares = new Float64Array(4);
  private held = 0;
  private draws = 0;

  private readonly level: number;
  private readonly lnRequired: number | null;

  constructor(level: number, required: number | null) {
    this.level = level;
    this.lnRequired = required === null ? null : Math.log(required);
  }

  add(block: DrawnBlock, at: number): void {
    const ln = block.lnArea[at];
    const n = ln.length;
    if (this.lnRequired !== null)
      for (let j = 0; j < n; j++) if (block.copper[at][j] && ln[j] >= this.lnRequired) this.held++;
    const mean = sum(ln) / n;
    let squares = 0;
    for (let j = 0; j < n; j++) squares += (ln[j] - mean) ** 2;
    const sd = Math.sqrt(squares / (n - 1));
    ln.sort();
    const tail = (1 - this.level) / 2;
    const value = Math.exp(mean);
    const figures = [value, value * sd, Math.exp(quantile(ln, tail)), Math.exp(quantile(ln, 1 - tail))];
    figures.forEach((f, k) => {
      this.sum[k] += f;
      this.squares[k] += f * f;
    });
    this.blocks++;
    this.draws += n;
  }

  private average(k: number): number {
    return this.sum[k] / this.blocks;
  }

  /** JCGM 101:2008, 7.9.4: twice the standard deviation of each block average is within the tolerance of u. */
  get settled(): boolean {
    const h = this.blocks;
    if (h < 2) return false;
    const tolerance = numericalTolerance(this.average(1), SIGNIFICANT_DIGITS);
    for (let k = 0; k < 4; k++) {
      const variance = Math.max(this.squares[k] - h * this.average(k) ** 2, 0) / (h - 1);
      if (2 * Math.sqrt(variance / h) > tolerance) return false;
    }
    return true;
  }

  get result(): DrawnArea {
    return {
      mean: this.average(0),
      u: this.average(1),
      interval: [this.average(2), this.average(3)],
      copperHeld: this.lnRequired === null ? null : this.held / this.draws,
    };
  }
}

function sum(values: Float64Array): number {
  let total = 0;
  for (let j = 0; j < values.length; j++) total += values[j];
  return total;
}

/** Linear between neighbouring order statistics. */
function quantile(sorted: Float64Array, p: number): number {
  const at = Math.min(Math.max(p * sorted.length - 0.5, 0), sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
}

/**
 * Draws the assay of all cables together in blocks, and stops when the digits that will be shown no longer move
 * (JCGM 101:2008, 7.9), or after the stated number.
 *
 * @throws RangeError when the number of draws is not a positive whole number.
 */
export function monteCarloAssay(joint: JointAssay, options: MonteCarloOptions): MonteCarloAssay {
  const { draws, level, copperRequired, onBlock } = options;
  if (draws !== 'auto' && !(Number.isInteger(draws) && draws > 0))
    throw new RangeError(`draws are a positive whole number or 'auto', got ${draws}`);
  const most = draws === 'auto' ? (options.maximumDraws ?? MAXIMUM_DRAWS) : draws;
  const next = areaDraws(drawPlan(joint), new SeededDraws(options.seed));
  const watched = joint.cables.map((_, at) => new Watched(level, copperRequired[at] ?? null));
  let done = 0;
  while (done < most) {
    const size = Math.min(BLOCK, most - done);
    const block = next(size);
    for (let at = 0; at < watched.length; at++) watched[at].add(block, at);
    done += size;
    if (onBlock?.(done)) break;
    if (draws === 'auto' && watched.every((w) => w.settled)) break;
  }
  return { draws: done, stable: watched.every((w) => w.settled), cables: watched.map((w) => w.result) };
}
