/** Invented jackets that wear through by a Weibull law, and what the endurance part says of them against the truth. */
import { analyseEndurance } from '../../src/methods/jacket/endurance/compareCables.ts';
import { hasOwnShape, lasting, shownMedian } from '../../src/methods/jacket/endurance/lasting.ts';
import { holm } from '../../src/numerics/holm.ts';
import { failedAt, failedBetween, type Lifetime, survivedTo } from '../../src/numerics/survival/lifetime.ts';
import { permutationLogRank } from '../../src/numerics/survival/permutationLogRank.ts';
import { compareScales, equalShapes, fitWeibull, medianInterval } from '../../src/numerics/survival/weibull.ts';
import { type Draws, drawsFrom } from './random.ts';

export interface Jackets {
  firstSeed: number;
  runs: number;
  /** Pieces of each cable. */
  pieces: number;
  shape: number;
  /** Share of pieces of a cable of scale 1 that the end of the test leaves whole; 0: all run until they fail. */
  survivors?: number;
  /** Looked at every so often, as a share of the median of a cable of scale 1; 0: the moment of failure is seen. */
  looks?: number;
}

const LEVEL = 0.95;
const SEED = '0123456789abcdef0123456789abcdef';

function draw(draws: Draws, scale: number, shape: number): number {
  let u = draws.unit();
  while (u === 0) u = draws.unit();
  return scale * (-Math.log(u)) ** (1 / shape);
}

/** Lifetimes of one cable as a bench would have them. */
function livesOf(draws: Draws, scale: number, o: Jackets): Lifetime[] {
  const end = o.survivors ? (-Math.log(o.survivors)) ** (1 / o.shape) : Number.POSITIVE_INFINITY;
  const every = (o.looks ?? 0) * Math.LN2 ** (1 / o.shape);
  return Array.from({ length: o.pieces }, () => {
    const at = draw(draws, scale, o.shape);
    if (at > end) return survivedTo(end);
    if (every === 0) return failedAt(at);
    const look = Math.ceil(at / every);
    return failedBetween((look - 1) * every, look * every);
  });
}

export interface MedianTold {
  /** Samples with enough failures for a shape of their own. */
  answered: number;
  covered: number;
  /** Median of √(upper/lower): the interval is about the estimate times and divided by this. */
  factor: number;
}

const middle = (values: number[]) => [...values].sort((x, y) => x - y)[Math.floor(values.length / 2)] ?? Number.NaN;

function judged(intervals: readonly [number | null, number | null][], truth: number): MedianTold {
  const covered = intervals.filter(([low, high]) => (low ?? 0) <= truth && truth <= (high ?? Infinity)).length;
  const factor = middle(intervals.map(([low, high]) => Math.sqrt((high ?? Infinity) / (low ?? 0))));
  return { answered: intervals.length, covered, factor };
}

/** The interval of the median by the cable's own shape. */
export function tellMedians(o: Jackets): MedianTold {
  const intervals: [number | null, number | null][] = [];
  for (let run = 0; run < o.runs; run++) {
    const lives = livesOf(drawsFrom(o.firstSeed + run), 1, o);
    const fit = hasOwnShape(lives) ? fitWeibull([lives]) : null;
    if (fit) intervals.push(medianInterval([lives], fit, 0, LEVEL));
  }
  return judged(intervals, Math.LN2 ** (1 / o.shape));
}

/** The interval of the median of the first of several cables under their common shape. */
export function tellCommonMedians(o: Jackets & { cables: number }): MedianTold {
  const intervals: [number | null, number | null][] = [];
  for (let run = 0; run < o.runs; run++) {
    const draws = drawsFrom(o.firstSeed + run);
    const groups = Array.from({ length: o.cables }, () => livesOf(draws, 1, o));
    const fit = fitWeibull(groups);
    if (fit) intervals.push(medianInterval(groups, fit, 0, LEVEL));
  }
  return judged(intervals, Math.LN2 ** (1 / o.shape));
}

/** The interval that is shown for each of several cables: by its own shape, the common one or the curve. */
export function tellShownMedians(o: Jackets & { cables: number }): MedianTold {
  const intervals: [number | null, number | null][] = [];
  for (let run = 0; run < o.runs; run++) {
    const draws = drawsFrom(o.firstSeed + run);
    const groups = Array.from({ length: o.cables }, () => livesOf(draws, 1, o));
    const fit = fitWeibull(groups);
    groups.forEach((_, i) => {
      intervals.push(shownMedian(lasting(groups, fit, i, LEVEL)).interval);
    });
  }
  return judged(intervals, Math.LN2 ** (1 / o.shape));
}

export interface DifferenceTold {
  /** Runs in which any of the equal pairs was parted, and in which any pair was. */
  falsely: number;
  /** Unequal pairs parted, of how many. */
  found: number;
  unequal: number;
}

/** Cables of given scales, all pairs told apart by the calibrated ratio with Holm's correction. */
export function tellDifferences(o: Jackets & { scales: readonly number[]; by?: 'shape' | 'exact' }): DifferenceTold {
  const told: DifferenceTold = { falsely: 0, found: 0, unequal: 0 };
  const pairs = o.scales.flatMap((_, a) => o.scales.slice(a + 1).map((__, k) => [a, a + 1 + k] as const));
  for (let run = 0; run < o.runs; run++) {
    const draws = drawsFrom(o.firstSeed + run);
    const groups = o.scales.map((scale) => livesOf(draws, scale, o));
    const fit = o.by === 'exact' ? null : fitWeibull(groups);
    const p = pairs.map(([a, b]) =>
      o.by === 'exact'
        ? (permutationLogRank([groups[a], groups[b]], SEED)?.p ?? 1)
        : ((fit && compareScales(groups, fit, a, b)?.p) ?? 1),
    );
    const corrected = holm(p);
    let wrong = false;
    pairs.forEach(([a, b], i) => {
      const parted = corrected[i] < 1 - LEVEL;
      if (o.scales[a] === o.scales[b]) wrong ||= parted;
      else {
        told.unequal++;
        if (parted) told.found++;
      }
    });
    if (wrong) told.falsely++;
  }
  return told;
}

/** How often two cables of the given shapes and equal medians are said to differ in shape, and falsely in median. */
export function tellShapes(o: Omit<Jackets, 'shape'> & { shapes: readonly number[] }): {
  warned: number;
  falsely: number;
} {
  let warned = 0;
  let falsely = 0;
  for (let run = 0; run < o.runs; run++) {
    const draws = drawsFrom(o.firstSeed + run);
    const groups = o.shapes.map((shape) => livesOf(draws, Math.LN2 ** (-1 / shape), { ...o, shape }));
    if ((equalShapes(groups)?.p ?? 1) < 1 - LEVEL) warned++;
    const fit = fitWeibull(groups);
    if (((fit && compareScales(groups, fit, 0, 1)?.p) ?? 1) < 1 - LEVEL) falsely++;
  }
  return { warned, falsely };
}

/** The whole analysis once, for timing and for a look. */
export function oneAnalysis(o: Jackets & { scales: readonly number[] }) {
  const draws = drawsFrom(o.firstSeed);
  return analyseEndurance(
    o.scales.map((scale) => livesOf(draws, scale, o)),
    { level: LEVEL, seed: SEED },
  );
}
