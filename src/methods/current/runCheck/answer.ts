import { carryingCurrent } from '../thermal/steady.ts';
import { type Flow, flowOf, type NoFlow, surroundingsAt } from './flow.ts';
import { type FuseAnswer, fuseFor, noFuse } from './fuse.ts';
import { CORNERS, type Corner, metresOfCable, ohmsAt, pathOhms } from './path.ts';
import type { Between, RunCable, RunQuestion } from './question.ts';
import { type Nearest, runsSideBySide } from './runsNeeded.ts';

export type RunOutcome = 'meets' | 'falls short' | 'not settled';

/** What one cable does in a run. Between: the middle figure and the ends of all doubts together. */
export interface RunAnswer {
  cable: RunCable;
  /** Supply at rest, and while charging; null for a supply that does not charge. */
  resting: RunState;
  charging: RunState | null;
  /** Share of the supply's volts lost at the peak of the load, at the worse of the two supplies. */
  drop: Between;
  /** `heat` is null where nothing is fed: without a current there is no heat to judge. */
  outcomes: { drop: RunOutcome; heat: RunOutcome | null; all: RunOutcome };
  /** Whether the load is fed at all: at every end of the doubts, at some, or not even by the middle figures. */
  feeds: Feeds;
  /** K: the hottest that the conductor comes to, at the worse of the two supplies; a high end without a figure is one that nobody knows. */
  hottest: Between;
  /** K below the rating at the hottest; negative above it. */
  margin: Between;
  /** A that one run bears for ever in its surroundings. */
  carrying: Between;
  /** Least number of runs side by side that meets both; null when none up to the most looked at does. */
  parallel: number | null;
  /** What stands in the way where none does; null where some do, and where nothing may flow. */
  nearest: Nearest | null;
  /** Of as many runs as are needed: kg and money; null when not known, and when no number of runs does. */
  mass: number | null;
  cost: { amount: number; currency: string } | null;
  /** Of one run by itself. */
  fuse: FuseAnswer;
  /** In each of the runs side by side; the same as `fuse` where one does, null when no number of runs does. */
  fuseEach: FuseAnswer | null;
  /** The surroundings alone are as hot as the rating: nothing may flow, whatever the number of runs. */
  tooHot: boolean;
}

export type Feeds = 'yes' | 'not settled' | 'no';

/** One supply voltage. */
export interface RunState {
  volts: number;
  /** V at the load at its peak, and lost on the way at peak and steady load. */
  atLoad: Between;
  lost: Between;
  lostSteady: Between;
  /** A at the steady load and at the peak. */
  steady: Between;
  peak: Between;
  /** W on average. */
  watts: Between;
  /** K: in the long run, and at the end of a peak. */
  temperature: Between;
  hottest: Between;
  /** Set when nothing settles at one of the ends: the figures then stand for what does. */
  fails: NoFlow | null;
}

const between = (of: (corner: Corner) => number): Between => {
  const [value, a, b] = CORNERS.map(of);
  // An end that nobody knows lies beyond those that are known.
  const known = [a, b, value].filter((x) => !Number.isNaN(x));
  return { value, low: known.length > 0 ? Math.min(...known) : Number.NaN, high: Math.max(a, b, value) };
};

interface Context {
  q: RunQuestion;
  cable: RunCable;
  installed: RunCable | null;
}

function stateOf({ q, cable, installed }: Context, volts: number, runs: number): RunState {
  const flows = CORNERS.map((corner) => flowOf(q, cable, volts, { corner, runs, installed }));
  const fails = flows.find((f): f is NoFlow => typeof f === 'string') ?? null;
  const at = (corner: Corner): Flow | null => {
    const f = flows[CORNERS.indexOf(corner)];
    return typeof f === 'string' ? null : f;
  };
  // What does not come through loses all its volts, at a heat nobody knows; what melts stands at its melting point.
  const kelvin = fails === 'melts' ? cable.heated.metal.meltingPoint : Number.NaN;
  const lostAll: Flow = {
    steady: 0,
    peak: 0,
    heating: 0,
    temperature: kelvin,
    hottest: kelvin,
    lost: volts,
    atLoad: 0,
    lostSteady: volts,
    watts: 0,
  };
  const of = (figure: (f: Flow) => number) => between((corner) => figure(at(corner) ?? lostAll));
  return {
    volts,
    atLoad: of((f) => f.atLoad),
    lost: of((f) => f.lost),
    lostSteady: of((f) => f.lostSteady),
    steady: of((f) => f.steady),
    peak: of((f) => f.peak),
    watts: of((f) => f.watts),
    temperature: of((f) => f.temperature),
    hottest: of((f) => f.hottest),
    fails,
  };
}

/** Below the limit at both ends meets, above it at both falls short. An end that nobody knows lies above those that are known. */
function outcomeOf({ low, high }: Between, most: number): RunOutcome {
  if (high <= most) return 'meets';
  return low > most ? 'falls short' : 'not settled';
}

const worse = (a: RunOutcome, b: RunOutcome | null): RunOutcome => {
  if (b === null) return a;
  const order: readonly RunOutcome[] = ['meets', 'not settled', 'falls short'];
  return order[Math.max(order.indexOf(a), order.indexOf(b))];
};

/** By the supply at which least comes through. */
function feedsOf(states: readonly RunState[]): Feeds {
  const starved = states.filter((s) => s.fails === 'not enough volts');
  if (starved.length === 0) return 'yes';
  return starved.some((s) => !(s.atLoad.value > 0)) ? 'no' : 'not settled';
}

function judged(states: readonly RunState[], q: RunQuestion, rating: number) {
  const shares = states.map((s) => ({
    value: s.lost.value / s.volts,
    low: s.lost.low / s.volts,
    high: s.lost.high / s.volts,
  }));
  const drop = shares.reduce((a, b) => (b.high > a.high ? b : a));
  const hottest = states.map((s) => s.hottest).reduce((a, b) => (b.high > a.high || Number.isNaN(b.high) ? b : a));
  const feeds = feedsOf(states);
  const outcomes = {
    drop: feeds === 'no' ? ('falls short' as const) : outcomeOf(drop, q.allowedDrop),
    heat: feeds === 'no' ? null : outcomeOf(hottest, rating),
  };
  return { drop, hottest, feeds, outcomes: { ...outcomes, all: worse(outcomes.drop, outcomes.heat) } };
}

const suppliesOf = ({ supply }: RunQuestion): number[] =>
  supply.charging === null ? [supply.resting] : [supply.resting, supply.charging];

const statesOf = (context: Context, runs: number): RunState[] =>
  suppliesOf(context.q).map((volts) => stateOf(context, volts, runs));

function carryingOf({ q, cable }: Context, runs: number): Between {
  return between((corner) => {
    const heated = { ...cable.heated, resistance20: cable.ohmsPerMetre[corner] };
    return carryingCurrent(heated, cable.rating, surroundingsAt(q, cable, corner, runs)).current;
  });
}

/**
 * Everything that one cable does in a run: volts, heat, runs side by side, mass, cost and fuse, each with the ends of its doubt.
 *
 * @param installed the cable that was there when volts lost were measured.
 */
export function runAnswer(q: RunQuestion, cable: RunCable, installed: RunCable | null): RunAnswer {
  const context: Context = { q, cable, installed };
  const [resting, charging = null] = statesOf(context, 1);
  const states = charging ? [resting, charging] : [resting];
  const { drop, hottest, feeds, outcomes } = judged(states, q, cable.rating);
  const tooHot = q.surroundings.ambient >= cable.rating;
  const beside =
    tooHot || outcomes.all === 'meets' ? { runs: null, nearest: null } : runsSideBySide(context, suppliesOf(q));
  const parallel = !tooHot && outcomes.all === 'meets' ? 1 : beside.runs;
  const metres = metresOfCable(q) * (parallel ?? 0);
  const carrying = carryingOf(context, 1);
  const fuse = tooHot
    ? noFuse('the surroundings alone are as hot as its rating')
    : fuseOf(context, states, carrying, 1);
  return {
    cable,
    resting,
    charging,
    drop,
    feeds,
    outcomes,
    tooHot,
    hottest,
    margin: {
      value: cable.rating - hottest.value,
      low: cable.rating - hottest.high,
      high: cable.rating - hottest.low,
    },
    carrying,
    parallel,
    nearest: beside.nearest,
    mass: parallel === null || cable.massPerMetre === null ? null : cable.massPerMetre * metres,
    cost:
      parallel === null || cable.price === null
        ? null
        : { amount: cable.price.perMetre * metres, currency: cable.price.currency },
    fuse,
    fuseEach: fuseEachOf(context, parallel, fuse),
  };
}

/** Runs side by side warm each other and share the load: each bears less than one by itself, and has less to bear. */
function fuseEachOf(context: Context, parallel: number | null, single: FuseAnswer): FuseAnswer | null {
  if (parallel === null || parallel === 1) return parallel === null ? null : single;
  return fuseOf(context, statesOf(context, parallel), carryingOf(context, parallel), parallel);
}

function fuseOf(
  { q, cable, installed }: Context,
  states: readonly RunState[],
  carrying: Between,
  runs: number,
): FuseAnswer {
  // What does not come through at an end of the doubts has no current there that a fuse could be chosen for.
  const fails = states.find((s) => s.fails !== null)?.fails;
  if (fails) return noFuse(fails === 'melts' ? 'the load would melt the conductor' : 'it cannot feed this load');
  const cold = ohmsAt(pathOhms(q, cable, 'high', 1, installed), q.surroundings.ambient);
  const volts = Math.max(...states.map((s) => s.volts));
  const most = (of: (s: RunState) => Between) => Math.max(...states.map((s) => of(s).high)) / runs;
  return fuseFor(
    {
      steady: most((s) => s.steady),
      peak: most((s) => s.peak),
      peakSeconds: q.load.peak?.seconds ?? Number.POSITIVE_INFINITY,
      carrying: carrying.low,
      farShort: q.supply.resting / (q.supply.ohms.high + cold),
      nearShort: volts / Math.max(q.supply.ohms.low, 1e-4),
    },
    cable,
  );
}
