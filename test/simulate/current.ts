/** Simulated heating logs: what is known of the true rise, and what the program makes of it. */
import { fitHeating, type Heating, type Refused } from '../../src/methods/current/heating/fitHeating.ts';
import { type Draws, drawsFrom } from './random.ts';

/** What is really there. */
export interface HeatingTruth {
  name: string;
  /** Shares of the steady rise and time constants in slowest time constants. */
  parts: readonly { share: number; tau: number }[];
}

export const TRUTHS: readonly HeatingTruth[] = [
  { name: 'one time constant', parts: [{ share: 1, tau: 1 }] },
  {
    name: 'two, the slow one large (75 % slow, 25 % at 0.15 of it)',
    parts: [
      { share: 0.75, tau: 1 },
      { share: 0.25, tau: 0.15 },
    ],
  },
  {
    name: 'two, the slow one small (25 % slow, 75 % at 0.25 of it)',
    parts: [
      { share: 0.25, tau: 1 },
      { share: 0.75, tau: 0.25 },
    ],
  },
];

export interface LogSetup {
  truth: HeatingTruth;
  /** Log's length in slowest time constants. */
  lengths: number;
  /** K: standard deviation of drift left after the surroundings are subtracted. */
  drift: number;
  /** How long drift lasts, in slowest time constants; {@link DRIFT_LASTS} where nothing is said. */
  driftLasts?: number;
}

const STEADY = 40; // K
const SLOWEST = 900; // s
const BLOCKS = 48;
const READINGS_IN_A_BLOCK = 5;
const SCATTER = 0.2; // K, of one reading
/** Drift lasts half the slowest time constant. */
export const DRIFT_LASTS = 0.5;

/** A log of 240 readings with white scatter and drift that comes and goes (Ornstein and Uhlenbeck). */
export function drawnLog(setup: LogSetup, draws: Draws): { time: number[]; rise: number[] } {
  const { truth, lengths, drift, driftLasts = DRIFT_LASTS } = setup;
  const count = BLOCKS * READINGS_IN_A_BLOCK;
  const step = (lengths * SLOWEST) / count;
  const kept = Math.exp(-step / (driftLasts * SLOWEST));
  let wandering = draws.scatter(drift);
  const time: number[] = [];
  const rise: number[] = [];
  for (let i = 1; i <= count; i++) {
    wandering = kept * wandering + draws.scatter(drift * Math.sqrt(1 - kept * kept));
    const t = i * step;
    const true_ = truth.parts.reduce((sum, p) => sum + p.share * (1 - Math.exp(-t / (p.tau * SLOWEST))), 0) * STEADY;
    time.push(t);
    rise.push(true_ + wandering + draws.scatter(SCATTER));
  }
  return { time, rise };
}

export interface LogsTold {
  logs: number;
  answered: number;
  refused: number;
  covered: number;
  /** Median half-width of the interval over the rise, and of what is answered the median error. */
  halfWidth: number;
  bias: number;
  /** Answered with one time constant alone (belief in two under 1 %) though there are two. */
  oneForTwo: number;
}

const isRefused = (found: Heating | Refused): found is Refused => 'refused' in found;
const median = (values: number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length === 0 ? Number.NaN : sorted[sorted.length >> 1];
};

export function tellLogs(setup: LogSetup, { seed, logs }: { seed: number; logs: number }): LogsTold {
  const draws = drawsFrom(seed);
  const found = Array.from({ length: logs }, () => fitHeating(drawnLog(setup, draws)));
  const answered = found.filter((f): f is Heating => !isRefused(f));
  return {
    logs,
    answered: answered.length,
    refused: logs - answered.length,
    covered: answered.filter(({ interval }) => interval[0] <= STEADY && STEADY <= interval[1]).length,
    halfWidth: median(answered.map(({ interval }) => (interval[1] - interval[0]) / 2 / STEADY)),
    bias: median(answered.map(({ steadyRise }) => steadyRise / STEADY - 1)),
    oneForTwo: setup.truth.parts.length < 2 ? 0 : answered.filter(({ twoBelief }) => twoBelief < 0.01).length,
  };
}
