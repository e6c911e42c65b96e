import { choleskyInPlace, inverseSymmetric, solveCholesky } from '../../../numerics/dense.ts';
import { separation } from './connection.ts';
import { type JudgedPair, requirePairs } from './judgement.ts';

/** Weak knowledge before any pair was judged; null switches one off. */
export interface PairsPrior {
  /** Standard deviation of an ability about 0. */
  ability: number | null;
  /** Mean and standard deviation of ln ν. */
  lnTie: { mean: number; sd: number } | null;
  /** Standard deviation of the advantage of the left hand about 0; null leaves no such term in the model unless `side` asks. */
  side: number | null;
}

/**
 * The prior tried by simulation: abilities N(0, 1.5²), ln ν ~ N(ln ½, 1), so that a thing that wins every pair still has a
 * finite figure. The left hand's advantage N(0, ½²): common practice, no source.
 */
export const WEAK_PRIOR: PairsPrior = { ability: 1.5, lnTie: { mean: Math.log(0.5), sd: 1 }, side: 0.5 };
export const NO_PRIOR: PairsPrior = { ability: null, lnTie: null, side: null };

export interface PairsModel {
  prior: PairsPrior;
  /** Whether the left hand may have an advantage. */
  side: boolean;
  /** Whether ties are modelled; 'when there are any' leaves ν out of a set without ties. */
  ties: 'always' | 'when there are any';
}

/** Mode of the posterior and its Laplace covariance. */
export interface PairsFit {
  /** One for each thing; without a prior the first is held at 0. */
  abilities: Float64Array;
  /** ν, the weight of a tie between equals; 0 where ties are not modelled. */
  tie: number;
  /** Advantage of the left hand on the scale of abilities, with its standard error; null where not modelled. */
  side: { value: number; se: number } | null;
  /** Covariance of the abilities, row-major count × count. */
  covariance: Float64Array;
  /** ln of the likelihood at the mode, prior left out. */
  logLikelihood: number;
}

const MOST_STEPS = 200;
const SETTLED = 1e-12;

/** Places of the unknowns in one vector: abilities (all, or all but the first), ln ν, the left hand's advantage. */
interface Layout {
  size: number;
  ability: (thing: number) => number;
  lnTie: number;
  side: number;
}

function layoutOf(count: number, model: PairsModel, anyTie: boolean): Layout {
  const held = model.prior.ability === null;
  const abilities = held ? count - 1 : count;
  const ties = model.ties === 'always' || anyTie;
  const lnTie = ties ? abilities : -1;
  const side = model.side ? abilities + (ties ? 1 : 0) : -1;
  return {
    size: abilities + (ties ? 1 : 0) + (model.side ? 1 : 0),
    ability: held ? (thing) => thing - 1 : (thing) => thing,
    lnTie,
    side,
  };
}

interface Terms {
  value: number;
  gradient: Float64Array;
  /** Negative second derivatives, row-major. */
  information: Float64Array;
  logLikelihood: number;
}

/** ln posterior with its derivatives. d = a_left − a_right + side; e^{d/2}, e^{−d/2} and ν over their sum. */
function termsAt(x: Float64Array, pairs: readonly JudgedPair[], layout: Layout, prior: PairsPrior): Terms {
  const { size } = layout;
  const gradient = new Float64Array(size);
  const information = new Float64Array(size * size);
  let logLikelihood = 0;
  const lnTie = layout.lnTie >= 0 ? x[layout.lnTie] : Number.NEGATIVE_INFINITY;
  for (const pair of pairs) {
    const places: [number, number][] = [];
    const at = (place: number, sign: number) => {
      if (place >= 0) places.push([place, sign]);
    };
    at(layout.ability(pair.left), 1);
    at(layout.ability(pair.right), -1);
    at(layout.side, 1);
    const d = places.reduce((sum, [place, sign]) => sum + sign * x[place], 0);
    const peak = Math.max(Math.abs(d) / 2, lnTie);
    const won = Math.exp(d / 2 - peak);
    const lost = Math.exp(-d / 2 - peak);
    const tied = Math.exp(lnTie - peak);
    const z = won + lost + tied;
    const lnZ = Math.log(z) + peak;
    const [left, right, same] = [won / z, lost / z, tied / z];
    const half = (left - right) / 2;
    const y = pair.result === 'left' ? 0.5 : pair.result === 'right' ? -0.5 : 0;
    logLikelihood += (pair.result === 'same' ? lnTie : y * d) - lnZ;
    const curveD = (left + right) / 4 - half * half;
    for (const [i, si] of places) {
      gradient[i] += si * (y - half);
      for (const [j, sj] of places) information[i * size + j] += si * sj * curveD;
      if (layout.lnTie >= 0) {
        const cross = si * -half * same;
        information[i * size + layout.lnTie] += cross;
        information[layout.lnTie * size + i] += cross;
      }
    }
    if (layout.lnTie >= 0) {
      gradient[layout.lnTie] += (pair.result === 'same' ? 1 : 0) - same;
      information[layout.lnTie * size + layout.lnTie] += same * (1 - same);
    }
  }
  let value = logLikelihood;
  const lean = (place: number, mean: number, sd: number) => {
    const off = (x[place] - mean) / sd;
    value -= (off * off) / 2;
    gradient[place] -= off / sd;
    information[place * size + place] += 1 / (sd * sd);
  };
  if (prior.ability !== null) {
    const abilities = layout.size - (layout.lnTie >= 0 ? 1 : 0) - (layout.side >= 0 ? 1 : 0);
    for (let i = 0; i < abilities; i++) lean(i, 0, prior.ability);
  }
  if (prior.lnTie && layout.lnTie >= 0) lean(layout.lnTie, prior.lnTie.mean, prior.lnTie.sd);
  if (prior.side !== null && layout.side >= 0) lean(layout.side, 0, prior.side);
  return { value, gradient, information, logLikelihood };
}

/**
 * Abilities from judged pairs with ties, by their most likely values under a weak prior.
 *
 *     P(left) : P(right) : P(same) = e^{d/2} : e^{−d/2} : ν,   d = a_left − a_right (+ the left hand's advantage)
 *
 * The logarithm is concave, so Newton's method with halved steps finds its one top; the covariance is the inverse of its
 * curvature there (Laplace).
 *
 * Source: R. A. Bradley, M. E. Terry, Biometrika 39 (1952) 324; R. R. Davidson, Journal of the American Statistical
 * Association 65 (1970) 317, for the ties; D. E. Davidson, R. J. Beaver, Biometrics 33 (1977) 693, for the side.
 *
 * @param count how many things there are
 * @throws RangeError for a thing judged against itself, or, without a prior, when no finite answer exists: ask
 *   `separation` first.
 */
export function fitPairs(pairs: readonly JudgedPair[], count: number, model: PairsModel): PairsFit {
  requirePairs(pairs, count);
  if (model.prior.ability === null && separation(pairs, count).length > 0)
    throw new RangeError(
      'these pairs have no finite answer without a prior: some won, or lost, every pair with the rest',
    );
  const layout = layoutOf(
    count,
    model,
    pairs.some((p) => p.result === 'same'),
  );
  const { size } = layout;
  const x = new Float64Array(size);
  if (layout.lnTie >= 0) x[layout.lnTie] = Math.log(0.5);
  let terms = termsAt(x, pairs, layout, model.prior);
  for (let n = 0; ; n++) {
    if (n === MOST_STEPS) throw new RangeError(`no top after ${MOST_STEPS} steps`);
    const step = Float64Array.from(terms.gradient);
    const factor = Float64Array.from(terms.information);
    choleskyInPlace(factor, size);
    solveCholesky(factor, size, step);
    let share = 1;
    let next = terms;
    let at = x;
    for (let halved = 0; halved < 40; halved++, share /= 2) {
      at = x.map((v, i) => v + share * step[i]);
      next = termsAt(at, pairs, layout, model.prior);
      if (next.value >= terms.value - 1e-12 * Math.abs(terms.value)) break;
    }
    x.set(at);
    terms = next;
    if (Math.max(...step.map(Math.abs)) * share < SETTLED) break;
  }
  return answer(x, terms, layout, count);
}

function answer(x: Float64Array, terms: Terms, layout: Layout, count: number): PairsFit {
  const inverse = inverseSymmetric(terms.information, layout.size);
  const place = Array.from({ length: count }, (_, thing) => layout.ability(thing));
  const covariance = new Float64Array(count * count);
  for (let i = 0; i < count; i++)
    for (let j = 0; j < count; j++)
      covariance[i * count + j] = place[i] < 0 || place[j] < 0 ? 0 : inverse[place[i] * layout.size + place[j]];
  const s = layout.side;
  return {
    abilities: Float64Array.from(place, (at) => (at < 0 ? 0 : x[at])),
    tie: layout.lnTie >= 0 ? Math.exp(x[layout.lnTie]) : 0,
    side: s >= 0 ? { value: x[s], se: Math.sqrt(inverse[s * layout.size + s]) } : null,
    covariance,
    logLikelihood: terms.logLikelihood,
  };
}
