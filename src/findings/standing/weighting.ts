import { rankOrderCentroid } from '../../methods/decide/standing/rankOrder.ts';
import { drawnAbout, drawnInOrder } from '../../methods/decide/standing/weightDraws.ts';
import type { SeededDraws } from '../../numerics/random.ts';
import type { Decide } from '../shapes/decide.ts';
import { ENDURANCE, EVEN, jobNamed, resolveRanking, resolveWeights } from './jobs.ts';
import type { StandingSettings } from './settings.ts';

/** What somebody holds important: numbers, or an order, or a job. */
export type Wish =
  | { numbers: ReadonlyMap<string, number> }
  | { ranking: readonly (readonly string[])[] }
  | { job: string };

/** Weights of the criteria that are there, and how to draw tastes near them. */
export interface Weighting {
  weights: Float64Array;
  from: Decide['weights_from'];
  job: string | null;
  /** Names that were wished for but have no figure on any cable. */
  leftOut: string[];
  tastes: (draws: number, random: SeededDraws) => Float64Array;
}

/** What the plan wishes: numbers before an order before a job. */
export function wishOf(settings: StandingSettings): Wish | null {
  if (settings.numbers) return { numbers: settings.numbers };
  if (settings.ranking) return { ranking: settings.ranking };
  return settings.job && jobNamed(settings.job) ? { job: settings.job } : null;
}

/** What stands for a wished name among the criteria that are there. */
const isThere = (id: string, there: readonly string[]): boolean => {
  if (id === 'bend') return there.includes('judged') || there.includes('stiffness');
  return id === 'endurance' ? there.some((t) => t.startsWith(ENDURANCE)) : there.includes(id);
};

function byNumbers(
  numbers: ReadonlyMap<string, number>,
  there: readonly string[],
): Pick<Weighting, 'weights' | 'tastes' | 'leftOut'> {
  const resolved = resolveWeights(numbers, there);
  const weights = Float64Array.from(there, (id) => resolved.get(id) ?? 0);
  return {
    weights,
    tastes: (draws, random) => drawnAbout(weights, draws, random),
    leftOut: [...numbers].flatMap(([id, weight]) => (weight > 0 && !isThere(id, there) ? [id] : [])),
  };
}

function byRanking(
  ranking: readonly (readonly string[])[],
  there: readonly string[],
): Pick<Weighting, 'weights' | 'tastes' | 'leftOut'> {
  const groups = resolveRanking(ranking, there);
  const ranked = groups.flat();
  const numbered = groups.map((group) => group.map((id) => ranked.indexOf(id)));
  const spread = (own: ArrayLike<number>, at = 0) =>
    there.map((id) => (ranked.includes(id) ? own[at + ranked.indexOf(id)] : 0));
  return {
    weights: Float64Array.from(spread(rankOrderCentroid(numbered))),
    tastes: (draws, random) => {
      const rows = drawnInOrder(numbered, draws, random);
      const all = new Float64Array(draws * there.length);
      for (let d = 0; d < draws; d++) all.set(spread(rows, d * ranked.length), d * there.length);
      return all;
    },
    leftOut: ranking.flat().filter((id) => !isThere(id, there)),
  };
}

/** Weights for the criteria that are there; even ones where nothing was wished or nothing that was wished is there. */
export function weightingOf(wish: Wish | null, there: readonly string[]): Weighting {
  const even = (): Weighting => {
    const usual = byNumbers(new Map(Object.entries(EVEN)), there);
    const some = usual.weights.some((w) => w > 0);
    const base = some ? usual : byNumbers(new Map(there.map((id) => [id, 1])), there);
    return { ...base, leftOut: [], from: 'even', job: null };
  };
  if (wish === null) return even();
  if ('ranking' in wish) {
    if (resolveRanking(wish.ranking, there).length === 0) return { ...even(), leftOut: wish.ranking.flat() };
    return { ...byRanking(wish.ranking, there), from: 'ranking', job: null };
  }
  const job = 'job' in wish ? jobNamed(wish.job) : null;
  const numbers = 'numbers' in wish ? wish.numbers : new Map(Object.entries(job?.weights ?? EVEN));
  if (resolveWeights(numbers, there).size === 0) return { ...even(), leftOut: [...numbers.keys()] };
  return { ...byNumbers(numbers, there), from: job ? 'job' : 'numbers', job: job?.job ?? null };
}
