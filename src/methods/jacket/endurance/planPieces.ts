import { normalQuantile } from '../../../numerics/distributions.ts';
import { portableLog } from '../../../numerics/portableElementary.ts';
import { SeededDraws } from '../../../numerics/random.ts';
import { failedAt, type Lifetime } from '../../../numerics/survival/lifetime.ts';
import { compareScales, fitWeibull } from '../../../numerics/survival/weibull.ts';

export interface PiecesPlan {
  /** True ratio of the two medians, 1 or more. */
  ratio: number;
  /** Weibull shape common to both. */
  shape: number;
  level: number;
  /** How often the difference is to be found. */
  power: number;
  /** How many pairs are compared: the chance of error is shared among them (Bonferroni, a little stricter than Holm). */
  pairs: number;
}

/** More pieces than this nobody cuts for one test. */
export const MOST_PIECES = 30;
const RUNS = 200;
const TWO = 2;
/** Planning asks what would happen in general, so its draws are the same for every trial. */
const PLANNING_SEED = '706c616e6e696e67';

/** How often two cables with so many pieces each are told apart, all pieces run until they fail. */
export function powerOfPieces(pieces: number, o: Omit<PiecesPlan, 'power'>, runs = RUNS, seed = PLANNING_SEED): number {
  const draws = new SeededDraws(seed);
  let found = 0;
  for (let run = 0; run < runs; run++) if (toldApart(pieces, o, draws)) found++;
  return found / runs;
}

/** Whether so many pieces reach the power, by the same runs: they end as soon as the rest of them cannot change the answer. */
function enoughPieces(pieces: number, o: PiecesPlan): boolean {
  const draws = new SeededDraws(PLANNING_SEED);
  let found = 0;
  for (let run = 0; run < RUNS; run++) {
    if (toldApart(pieces, o, draws)) found++;
    if (found / RUNS >= o.power) return true;
    if ((found + RUNS - 1 - run) / RUNS < o.power) return false;
  }
  return false;
}

/** One imagined test of two cables. */
function toldApart(pieces: number, o: Omit<PiecesPlan, 'power'>, draws: SeededDraws): boolean {
  const groups = [1, o.ratio].map((scale) =>
    Array.from({ length: pieces }, (): Lifetime => failedAt(scale * weibullDraw(draws, o.shape))),
  );
  const fit = fitWeibull(groups);
  const test = fit && compareScales(groups, fit, 0, 1);
  return test !== null && test.p * o.pairs < 1 - o.level;
}

/** A lifetime of scale 1: (−ln u)^(1/shape). */
export function weibullDraw(draws: SeededDraws, shape: number): number {
  return (-portableLog(draws.uniform())) ** (1 / shape);
}

/**
 * Pieces of each cable with which a difference as large as the one assumed is found with the power asked, by simulation; null when
 * more than {@link MOST_PIECES}. All pieces are taken to run until they fail: with survivors more are needed.
 *
 * Only shape · ln ratio matters, so it is rounded to two digits and what was worked out once is kept.
 */
export function piecesToPart(o: PiecesPlan): number | null {
  if (!(o.ratio > 1 && o.shape > 0)) return null;
  const apart = Number((o.shape * Math.log(o.ratio)).toPrecision(2));
  const key = `${apart} ${o.level} ${o.power} ${o.pairs}`;
  const known = remembered.get(key);
  if (known !== undefined) return known;
  if (remembered.size >= MOST_REMEMBERED) remembered.clear();
  const found = search({ ...o, shape: 1, ratio: Math.exp(apart) });
  remembered.set(key, found);
  return found;
}

const remembered = new Map<string, number | null>();
const MOST_REMEMBERED = 500;

function search(o: PiecesPlan): number | null {
  const enough = (n: number) => enoughPieces(n, o);
  let n = Math.min(MOST_PIECES, firstGuess(o));
  if (enough(n)) {
    while (n > TWO && enough(n - 1)) n--;
    return n;
  }
  while (n < MOST_PIECES) if (enough(++n)) return n;
  return null;
}

/**
 * Where the search begins: with the shape known, ln of a scale has the standard deviation 1/(shape √n), and a difference of two is found
 * with 80 % when it is 2.8 of its own (more where the chance of error is shared).
 */
function firstGuess({ ratio, shape, pairs, level }: PiecesPlan): number {
  const found = normalQuantile(1 - (1 - level) / (2 * pairs)) + normalQuantile(0.8);
  const n = (2 * found * found) / (shape * Math.log(ratio)) ** 2;
  return Math.max(TWO, Math.ceil(Math.min(MOST_PIECES, n)));
}
