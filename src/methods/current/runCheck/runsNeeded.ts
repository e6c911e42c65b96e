import { MOST_IN_BUNDLE } from '../thermal/run.ts';
import { currentOf, flowOf, type NoFlow } from './flow.ts';
import { pathOhms } from './path.ts';
import { mostAsked, type RunCable, type RunQuestion } from './question.ts';

/** Most runs side by side that are looked at. */
export const MOST_RUNS = 6;

/** The number of runs that comes nearest where none does: what is then still too much, at the far end of every doubt. */
export interface Nearest {
  runs: number;
  /** Most runs that were looked at. */
  of: number;
  /** Why nothing settles with any number of them; the figures below are then not known. */
  fails: NoFlow | null;
  /** Source, joints and a way back of another kind let too little through already, whatever the cable. */
  withoutCable: boolean;
  /** V lost between supply and load, what of it by joints and a way back of another kind, and what may be lost. */
  lost: number;
  beside: number;
  mayBeLost: number;
  /** The way back is not this cable, and counted with the joints. */
  otherBack: boolean;
  /** K of the hottest conductor. */
  hottest: number;
}

interface Context {
  q: RunQuestion;
  cable: RunCable;
  installed: RunCable | null;
}

type Tried = Pick<Nearest, 'runs' | 'fails' | 'lost' | 'beside' | 'mayBeLost' | 'hottest'> & { excess: number };

/** So many runs from one supply: the excess is 1 or less where they meet. */
function triedAt({ q, cable, installed }: Context, runs: number, volts: number): Tried {
  const flow = flowOf(q, cable, volts, { corner: 'high', runs, installed });
  const mayBeLost = q.allowedDrop * volts;
  const nothing = { lost: Number.NaN, beside: Number.NaN, hottest: Number.NaN, excess: Number.POSITIVE_INFINITY };
  if (typeof flow === 'string') return { runs, fails: flow, mayBeLost, ...nothing };
  const { ambient } = q.surroundings;
  return {
    runs,
    fails: null,
    lost: flow.lost,
    beside: flow.peak * pathOhms(q, cable, 'high', runs, installed).fixed,
    mayBeLost,
    hottest: flow.hottest,
    excess: Math.max(flow.lost / mayBeLost, (flow.hottest - ambient) / (cable.rating - ambient)),
  };
}

/** Whether source and joints alone let too little through at their far end, from the lowest of the supplies. */
function starvedWithout({ q, cable, installed }: Context, volts: number): boolean {
  const ohms = q.supply.ohms.high + pathOhms(q, cable, 'high', 1, installed).fixed;
  return Number.isNaN(currentOf(mostAsked(q.load), q, volts, ohms));
}

/**
 * Fewest runs side by side that meet volts and heat, and where none does the number that comes nearest. Each is looked at with
 * its fellows touching it, at the far end of every doubt, which is what meeting asks for. Both null where the bundle is too
 * large for a second run.
 */
export function runsSideBySide(
  context: Context,
  supplies: readonly number[],
): { runs: number | null; nearest: Nearest | null } {
  const { q } = context;
  const worst: Tried[] = [];
  for (let runs = 2; runs <= MOST_RUNS && q.surroundings.bundle * runs <= MOST_IN_BUNDLE; runs++) {
    const tried = supplies
      .map((volts) => triedAt(context, runs, volts))
      .reduce((a, b) => (b.excess > a.excess ? b : a));
    if (tried.excess <= 1) return { runs, nearest: null };
    worst.push(tried);
  }
  if (worst.length === 0) return { runs: null, nearest: null };
  const { excess: _, ...nearest } = worst.reduce((a, b) => (b.excess < a.excess ? b : a));
  return {
    runs: null,
    nearest: {
      ...nearest,
      of: worst[worst.length - 1]!.runs,
      withoutCable: nearest.fails === 'not enough volts' && starvedWithout(context, Math.min(...supplies)),
      otherBack: q.back.kind !== 'same cable',
    },
  };
}
