import { type Component, mixtureInterval, mixtureMean, mixtureQuantile, mixtureSd } from '../../../numerics/mixture.ts';
import { BLOCKS, blockMeans, FEWEST_BLOCKS } from './blocks.ts';
import { type ExponentialFit, WhitenedLog } from './exponentials.ts';
import { NOISES, whiteningOf } from './noise.ts';

/** One heating at a steady current from rest: rise above the surroundings, K, against time since it was switched on, s. */
export interface HeatingLog {
  time: ArrayLike<number>;
  rise: ArrayLike<number>;
}

export interface Heating {
  /** Where the rise ends, K: mean, standard deviation and interval. */
  steadyRise: number;
  u: number;
  interval: [number, number];
  /** s, median; the slowest, which says how long a log must be. */
  slowest: number;
  slowestInterval: [number, number];
  /** Of the likelier model: amplitudes, K, and time constants, s, the fastest first. */
  amplitudes: number[];
  timeConstants: number[];
  /** Belief that two time constants are needed. */
  twoBelief: number;
  /** Log's length in slowest time constants. */
  lengths: number;
  /** What the last third still rises by in one time constant, as a share of the steady rise. */
  stillRising: number;
  blocks: number;
}

export interface Refused {
  refused: 'too short' | 'too wide' | 'no rise' | 'too few readings';
  /** What is known nevertheless; null for too few readings or no rise. */
  found: Heating | null;
}

/** Fewest slowest time constants that a log must last: where one is clearly enough, and else. */
export const LENGTHS_ONE = 2;
export const LENGTHS_TWO = 3;
/** Half-width of the interval, as a share of the rise, above which nothing is answered. */
export const WIDEST = 0.1;
/** Difference of twice the logarithm of belief from which one time constant is clearly enough. */
const CLEAR_GAP = 6;
/** A rise this small, K, is not told from the thermometer. */
const LEAST_RISE = 1;

/**
 * Steady rise and time constants of a heating log: one and two exponentials, each under 21 suppositions about scatter and
 * drift, weighed by how well they explain the log (restricted likelihood within a model, Schwarz's criterion between the two),
 * so that drift of the surroundings which was not subtracted widens the interval instead of moving the answer unseen.
 *
 * The rise must start from rest at time 0, under one current. Answers are refused from logs that are too short to say where
 * the curve ends. Tried by simulation: docs/figures-current.md.
 *
 * @param level share of cases in which the interval holds the true rise.
 * @throws RangeError when time does not rise, or a number is none.
 */
export function fitHeating(log: HeatingLog, level = 0.95): Heating | Refused {
  const n = log.time.length;
  if (log.rise.length !== n) throw new RangeError(`${n} times but ${log.rise.length} rises`);
  for (let i = 0; i < n; i++) {
    if (!Number.isFinite(log.time[i]) || !Number.isFinite(log.rise[i]))
      throw new RangeError(`row ${i + 1} of the log is no number: ${log.time[i]}, ${log.rise[i]}`);
    if (i > 0 && log.time[i] < log.time[i - 1])
      throw new RangeError(`the log runs backwards at row ${i + 1}: ${log.time[i]} s after ${log.time[i - 1]} s`);
  }
  const blocks = blockMeans(log.time, log.rise, BLOCKS);
  if (blocks.time.length < FEWEST_BLOCKS) return { refused: 'too few readings', found: null };
  const largest = Math.max(...blocks.value);
  if (!(largest > LEAST_RISE)) return { refused: 'no rise', found: null };
  const fits = fitsOf(blocks.time, blocks.value);
  return judged(blocks, fits, level);
}

interface Weighed {
  one: { fit: ExponentialFit; weight: number }[];
  two: { fit: ExponentialFit; weight: number }[];
  /** ln belief in one less ln belief in two. */
  lnOdds: number;
}

const lnSumExp = (terms: readonly number[]): number => {
  const most = Math.max(...terms);
  return most + Math.log(terms.reduce((sum, t) => sum + Math.exp(t - most), 0));
};

function fitsOf(time: Float64Array, value: Float64Array): Weighed {
  const lnPrior = NOISES.map((noise) => Math.log(noise.belief));
  const logs = NOISES.map((noise) => new WhitenedLog(time, value, whiteningOf(time, noise)));
  const model = (count: 1 | 2) => {
    const fits = logs.map((log) => log.fit(count));
    const ln = fits.map((fit, i) => fit.lnWeight + lnPrior[i]);
    const sum = lnSumExp(ln);
    const evidence =
      lnSumExp(fits.map((fit, i) => fit.lnLikelihood + lnPrior[i])) - 0.5 * fits[0].parameters * Math.log(time.length);
    return { fits: fits.map((fit, i) => ({ fit, weight: Math.exp(ln[i] - sum) })), evidence };
  };
  const [one, two] = [model(1), model(2)];
  return { one: one.fits, two: two.fits, lnOdds: one.evidence - two.evidence };
}

function judged({ time, value }: { time: Float64Array; value: Float64Array }, fits: Weighed, level: number) {
  const twoBelief = 1 / (1 + Math.exp(fits.lnOdds));
  const all = [
    ...fits.one.map((f) => ({ ...f, weight: f.weight * (1 - twoBelief) })),
    ...fits.two.map((f) => ({ ...f, weight: f.weight * twoBelief })),
  ];
  const steady: Component[] = all.map(({ fit, weight }) => ({
    weight,
    mean: fit.steady,
    sd: fit.steadySd,
    dof: fit.dof,
  }));
  const slow: Component[] = all.map(({ fit, weight }) => ({
    weight,
    mean: fit.lnSlowest,
    sd: fit.lnSlowestSd,
    dof: fit.dof,
  }));
  const steadyRise = mixtureMean(steady);
  const interval = mixtureInterval(steady, level);
  const slowest = Math.exp(mixtureQuantile(slow, 0.5));
  const end = time[time.length - 1];
  const likelier = (twoBelief > 0.5 ? fits.two : fits.one).reduce((a, b) => (b.weight > a.weight ? b : a)).fit;
  const kept = likelier.amplitudes.map((a, k) => ({ a, tau: likelier.taus[k] })).filter(({ a }) => a > 0);
  const lengths = end / slowest;
  const heating: Heating = {
    steadyRise,
    u: mixtureSd(steady),
    interval,
    slowest,
    slowestInterval: mixtureInterval(slow, level).map(Math.exp) as [number, number],
    amplitudes: kept.map(({ a }) => a),
    timeConstants: kept.map(({ tau }) => tau),
    twoBelief,
    lengths,
    stillRising: (slopeOfLastThird(time, value) * slowest) / steadyRise,
    blocks: time.length,
  };
  const clearlyOne = 2 * fits.lnOdds > CLEAR_GAP;
  if (lengths < (clearlyOne ? LENGTHS_ONE : LENGTHS_TWO)) return { refused: 'too short', found: heating } as const;
  const halfWidth = Math.max(interval[1] - steadyRise, steadyRise - interval[0]);
  if (!(halfWidth <= WIDEST * steadyRise)) return { refused: 'too wide', found: heating } as const;
  return heating;
}

/** K/s, by a straight line through the blocks of the last third of the time. */
function slopeOfLastThird(time: Float64Array, value: Float64Array): number {
  const from = (2 / 3) * time[time.length - 1];
  let [n, st, sv, stt, stv] = [0, 0, 0, 0, 0];
  for (let i = 0; i < time.length; i++) {
    if (time[i] < from) continue;
    n++;
    st += time[i];
    sv += value[i];
    stt += time[i] * time[i];
    stv += time[i] * value[i];
  }
  const spread = n * stt - st * st;
  return n < 2 || !(spread > 0) ? 0 : (n * stv - st * sv) / spread;
}
