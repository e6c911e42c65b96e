import { seedFromText } from '../../journal/textHash.ts';
import { CUT_ABOVE, cannotBeToldFrom, cleanCutBands } from '../../methods/flex/pairs/bands.ts';
import {
  bestSet,
  chancesOfPairs,
  drawAbilities,
  type KnownAbilities,
  placeChances,
} from '../../methods/flex/pairs/chances.ts';
import { concordance } from '../../methods/flex/pairs/concordance.ts';
import { connectedGroups } from '../../methods/flex/pairs/connection.ts';
import { type JudgedPair, leftShare } from '../../methods/flex/pairs/judgement.ts';
import { judgesApart } from '../../methods/flex/pairs/judgesApart.ts';
import { fitPairs, type PairsFit, WEAK_PRIOR } from '../../methods/flex/pairs/tiedPreference.ts';
import { selfAgreement } from '../../methods/flex/pairs/triads.ts';
import { equalTailedInterval } from '../../numerics/coverage.ts';
import { median } from '../../numerics/describe.ts';
import { SeededDraws } from '../../numerics/random.ts';
import { spearman } from '../../numerics/ranks.ts';
import type { Cable, Trial } from '../../trial/trial.ts';
import type { Judged } from '../shapes/flex.ts';
import { rangeOf } from './atTemperature.ts';
import { enoughJudged } from './enoughJudged.ts';
import { judgedSentence } from './judgedSentence.ts';
import { type JudgementsRead, readJudgements } from './readJudgements.ts';

/** Draws for the chances of places: ±1 % of a chance at 95 % asks for 9,604. */
const DRAWS = 20_000;
/** The set that holds the easiest is the smallest with this chance. */
const BEST_SET_LEVEL = 0.95;
/** Judges are taken to differ, and standard errors widened, below this chance of so much difference among like judges. */
const JUDGES_DIFFER_BELOW = 0.05;
const CORRELATION_DRAWS = 2000;
/** Fewer cables than this have no rank correlation worth a figure. */
const FEWEST_CORRELATED = 4;

export interface JudgedOptions {
  level: number;
  names: ReadonlyMap<string, string>;
  /** ln EI with its standard deviation, of cables measured by one method. */
  stiffness: ReadonlyMap<string, { ln: number; sd: number }>;
}

export interface JudgedFound {
  judged: Judged | null;
  read: JudgementsRead;
  /** Ease of every judged cable as far as it is known; null when nothing was judged. */
  ease: KnownEase | null;
}

/** Ease of bending with its doubts, in the order of `cables`. */
export interface KnownEase extends KnownAbilities {
  cables: string[];
}

/** Everything that judged pairs say; null when there is no pair that counts. */
export function judgedOf(trial: Trial, o: JudgedOptions): JudgedFound {
  const read = readJudgements(trial);
  const { pairs, cables } = read;
  if (pairs.length === 0) return { judged: null, read, ease: null };
  const n = cables.length;
  const name = (i: number) => o.names.get(cables[i].cable) ?? cables[i].name;
  const fit = fitPairs(pairs, n, { prior: WEAK_PRIOR, side: true, ties: 'always' });
  const apart = judgesApart(pairs, fit);
  const widened = apart && apart.p < JUDGES_DIFFER_BELOW ? Math.sqrt(apart.overdispersion) : 1;
  const known = { abilities: fit.abilities, covariance: fit.covariance.map((c) => c * widened * widened) };
  // References and controls are judged along but stand outside the order.
  const inOrder = cables.flatMap((c, i) => (c.role === 'compared' ? [i] : []));
  const order = subset(known, inOrder);
  const chances = chancesOfPairs(order);
  const seed = seedOf(read);
  const rows = drawAbilities(order, DRAWS, seed);
  const places = placeChances(rows, inOrder.length);
  const { band } = cleanCutBands(order.abilities, chances);
  const near = cannotBeToldFrom(chances, inOrder.length);
  const best = inOrder.map((_, i) => places[i * inOrder.length]);
  const groups = connectedGroups(pairs, n).map((group) => group.map((i) => cables[i].cable));
  // Nothing but the prior joins groups that no judgement does: there are no chances, no bands and no best set across them.
  const joined = groups.length <= 1;
  const apartFrom = (i: number) => {
    const own = groups.find((g) => g.includes(cables[inOrder[i]].cable))!;
    const tied = new Set(near[i].map((j) => cables[inOrder[j]].cable));
    return inOrder.map((j) => cables[j].cable).filter((c) => tied.has(c) || !own.includes(c));
  };
  const shown = inOrder.map((thing, i) => ({
    cable: cables[thing].cable,
    name: name(thing),
    ability: known.abilities[thing],
    se: Math.sqrt(known.covariance[thing * n + thing]),
    probability_best: joined ? best[i] : null,
    place_probability: joined ? [...places.subarray(i * inOrder.length, (i + 1) * inOrder.length)] : [],
    band: joined ? band[i] : null,
    cannot_be_told_from: apartFrom(i),
  }));
  const enough = enoughJudged(trial, read);
  const temperatures = read.temperatures;
  const judged: Judged = {
    cables: shown,
    tie: fit.tie,
    judges: judgesOf(read, n),
    pairs: pairs.length,
    more_wanted: enough.left,
    blinded: read.blinded,
    temperature_C: temperatures.length > 0 ? median(temperatures) : null,
    temperature_range_C: rangeOf(temperatures),
    side: { value: fit.side!.value, se: fit.side!.se },
    best_set: joined ? bestSet(best, BEST_SET_LEVEL).map((i) => cables[inOrder[i]].cable) : [],
    cut_above: CUT_ABOVE,
    judges_agree: agreement(pairs, n, read.judges.length),
    judges_apart: apart ? { chi2: apart.chi2, dof: apart.dof, p: apart.p, widened } : null,
    groups,
    with_stiffness: joined ? withStiffness(known, cables, seed, o) : null,
    sentence: '',
  };
  return {
    judged: { ...judged, sentence: judgedSentence(judged, o.names, enough) },
    read,
    ease: { ...known, cables: cables.map((c) => c.cable) },
  };
}

/**
 * The draws follow from the judgements alone: a note or a weighing elsewhere in the trial leaves every chance as it was.
 */
function seedOf({ cables, pairs }: JudgementsRead): string {
  const judged = pairs.map(({ left, right, result, judge }) => [
    cables[left].cable,
    cables[right].cable,
    result,
    judge,
  ]);
  return seedFromText(JSON.stringify([cables.map((c) => [c.cable, c.role]), judged]));
}

function subset({ abilities, covariance }: Pick<PairsFit, 'abilities' | 'covariance'>, kept: readonly number[]) {
  const n = abilities.length;
  return {
    abilities: Float64Array.from(kept, (i) => abilities[i]),
    covariance: Float64Array.from(kept.flatMap((i) => kept.map((j) => covariance[i * n + j]))),
  };
}

function judgesOf(read: JudgementsRead, n: number): Judged['judges'] {
  return read.judges.map((by, judge) => {
    const own = read.pairs.filter((p) => p.judge === judge);
    const { circular, decided, consistency } = selfAgreement(own, n);
    return { by, pairs: own.length, circular_triads: circular, decided_triads: decided, consistency };
  });
}

/** Kendall's W over each judge's share of wins, of judges who judged every cable. */
function agreement(pairs: readonly JudgedPair[], n: number, judges: number): Judged['judges_agree'] {
  const scores = Array.from({ length: judges }, (_, judge) => {
    const won = new Array<number>(n).fill(0);
    const met = new Array<number>(n).fill(0);
    for (const pair of pairs.filter((p) => p.judge === judge)) {
      won[pair.left] += leftShare(pair);
      won[pair.right] += 1 - leftShare(pair);
      met[pair.left]++;
      met[pair.right]++;
    }
    return met.every((m) => m > 0) ? won.map((w, i) => w / met[i]) : null;
  }).filter((s): s is number[] => s !== null);
  return concordance(scores);
}

/**
 * Spearman's correlation of ease by hand with −ln EI by measurement, its interval from draws of both: what these very pieces
 * leave open, not what other cables would give.
 */
function withStiffness(
  known: { abilities: Float64Array; covariance: Float64Array },
  cables: readonly Cable[],
  seed: string,
  { level, stiffness }: JudgedOptions,
): Judged['with_stiffness'] {
  const both = cables.flatMap((c, i) => (stiffness.has(c.cable) ? [i] : []));
  if (both.length < FEWEST_CORRELATED) return null;
  const measured = both.map((i) => stiffness.get(cables[i].cable)!);
  const order = subset(known, both);
  const k = both.length;
  const rho = spearman(
    [...order.abilities],
    measured.map((m) => -m.ln),
  );
  const rows = drawAbilities(order, CORRELATION_DRAWS, seed);
  const random = new SeededDraws(seed).jump();
  const drawn = Float64Array.from({ length: CORRELATION_DRAWS }, (_, d) =>
    spearman(
      [...rows.subarray(d * k, (d + 1) * k)],
      measured.map((m) => -m.ln - m.sd * random.normal()),
    ),
  ).sort();
  return { rho, interval: equalTailedInterval(drawn, level), level, cables: k };
}
