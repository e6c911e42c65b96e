import { leastChange } from '../../methods/decide/standing/leastChange.ts';
import { placesAtWeights, placesOverWeights } from '../../methods/decide/standing/places.ts';
import { moreIsBetter } from '../../methods/decide/standing/valueFunction.ts';
import { cannotBeToldFrom, cleanCutBands } from '../../methods/flex/pairs/bands.ts';
import { SeededDraws } from '../../numerics/random.ts';
import type { CableStanding, CriterionFound, Decide, WeightOf } from '../shapes/decide.ts';
import { edgesOf } from './edges.ts';
import type { PreparedStanding } from './prepare.ts';
import type { Weighting } from './weighting.ts';
import { centralText, orderSentence, tasteSentence, toComeFirstText } from './words.ts';

/**
 * Everything above a cut stands before everything below it with at least this chance. By simulation: four or more equal cables are
 * parted in about 7 % of cases, two in 10 %.
 */
export const STANDING_CUT_ABOVE = 0.95;
/** Draws with a cable first from which its central weights are told: their error is .01 at most then. */
const FEWEST_FIRSTS = 1000;
/** A change of weights smaller than this is none. */
const NO_CHANGE = 1e-9;
/** Which stream of draws the tastes come from: the assay, the figures and the judged ease have 0 to 2. */
const TASTE_STREAM = 3;

/** What counts at the weights at hand, the rest left out: half the work at the usual number of criteria. */
function counting(prepared: PreparedStanding, weighting: Weighting) {
  const { drawn, means, criteria, cables } = prepared;
  const at = criteria.flatMap((_, k) => (weighting.weights[k] > 0 ? [k] : []));
  const m = criteria.length;
  const tastes = weighting.tastes(drawn.draws, new SeededDraws(prepared.seed).stream(TASTE_STREAM));
  return {
    at,
    weights: Float64Array.from(at, (k) => weighting.weights[k]),
    drawn: { ...drawn, values: at.map((k) => drawn.values[k]) },
    means: Float64Array.from(cables.flatMap((_, i) => at.map((k) => means[i * m + k]))),
    tastes: at.length === m ? tastes : columnsOf(tastes, m, at),
  };
}

function columnsOf(rows: Float64Array, width: number, columns: readonly number[]): Float64Array {
  const kept = new Float64Array((rows.length / width) * columns.length);
  for (let from = 0, to = 0; from < rows.length; from += width)
    for (let c = 0; c < columns.length; c++) kept[to++] = rows[from + columns[c]];
  return kept;
}

/**
 * The order of the cables by some weights, from draws that were made once: fast enough to follow a slider.
 *
 * Chances at the stated weights hold measurement doubt alone; those over tastes stand beside them.
 */
export function decideBy(prepared: PreparedStanding, weighting: Weighting): Decide {
  const { drawn, cables, criteria, known } = prepared;
  const n = cables.length;
  const counted = counting(prepared, weighting);
  const m = counted.at.length;
  const at = placesAtWeights(counted.drawn, counted.weights);
  const over = placesOverWeights(counted.drawn, counted.tastes);
  const { order, band } = cleanCutBands(at.mean, at.before, STANDING_CUT_ABOVE);
  const near = cannotBeToldFrom(at.before, n, STANDING_CUT_ABOVE);
  const named = (weights: ArrayLike<number>): WeightOf[] =>
    counted.at.map((k, c) => ({ criterion: criteria[k].id, weight: weights[c] }));
  const shown: CriterionFound[] = criteria.map(({ id, name, unit, scale, fixed }, k) => ({
    id,
    name,
    unit,
    better: moreIsBetter(scale) ? 'more' : 'less',
    ...scale,
    fixed,
    weight: weighting.weights[k],
  }));
  const standings = order.map((i): CableStanding => {
    const { cable, name } = cables[i];
    const enough = over.firsts[i] >= FEWEST_FIRSTS;
    const central = enough ? named(over.centralWeights.subarray(i * m, (i + 1) * m)) : null;
    const change = leastChange(counted.means, counted.weights, i);
    const moved = change && named(change.weights);
    const isFirst = change !== null && change.change < NO_CHANGE;
    return {
      cable,
      name,
      weighted_value: at.mean[i],
      u: at.sd[i],
      place_probability: [...at.places.subarray(i * n, (i + 1) * n)],
      probability_first: at.places[i * n],
      acceptability: [...over.places.subarray(i * n, (i + 1) * n)],
      band: band[i],
      cannot_be_told_from: near[i].map((j) => cables[j].cable),
      central_weights: central,
      central_text: centralText(name, central, over.firsts[i], shown),
      to_come_first: change && moved && !isFirst ? { weights: moved, change: change.change } : null,
      to_come_first_text: isFirst ? `${name} comes first at these weights.` : toComeFirstText(name, moved, shown),
      worth: counted.at.map((k, c) => ({
        criterion: criteria[k].id,
        worth: counted.means[i * m + c],
        known: known[i][k],
      })),
      unknown: counted.at.flatMap((k) => (known[i][k] ? [] : [criteria[k].id])),
    };
  });
  return {
    draws: drawn.draws,
    job: weighting.job,
    weights_from: weighting.from,
    criteria: shown,
    cables: standings,
    outside: prepared.outside.map(({ cable, name }, i) => ({
      cable,
      name,
      weighted_value: shown.reduce(
        (sum, { weight }, k) => sum + weight * prepared.outsideMeans[i * criteria.length + k],
        0,
      ),
    })),
    cut_above: STANDING_CUT_ABOVE,
    alike: prepared.alike.map(({ a, b, correlation }) => ({ a: criteria[a].id, b: criteria[b].id, correlation })),
    value: prepared.value,
    edges: edgesOf(prepared),
    sentence: orderSentence(standings),
    taste_sentence: tasteSentence(standings),
  };
}
