import { chanceOnEdge, onEdge } from '../../methods/decide/standing/pareto.ts';
import { moreIsBetter } from '../../methods/decide/standing/valueFunction.ts';
import type { EdgePicture } from '../shapes/decide.ts';
import type { PreparedStanding } from './prepare.ts';

/** Criteria that pull against each other, shown as a picture where both are known of two cables or more. */
const PAIRS: readonly (readonly [string, string])[] = [
  ['price', 'copper'],
  ['price', 'resistance'],
  ['stiffness', 'wall'],
];

const known = new WeakMap<PreparedStanding, EdgePicture[]>();

/** Which cables stand on the edge of each pair: none of the others is as good in both and better in one. Worked out once. */
export function edgesOf(prepared: PreparedStanding): EdgePicture[] {
  const seen = known.get(prepared);
  if (seen) return seen;
  const edges = PAIRS.flatMap(([a, b]) => edgeOf(prepared, a, b) ?? []);
  known.set(prepared, edges);
  return edges;
}

function edgeOf({ criteria, cables, drawn, known: has }: PreparedStanding, a: string, b: string): EdgePicture | null {
  const pair = [a, b].map((id) => criteria.findIndex((c) => c.id === id));
  if (pair.some((k) => k < 0)) return null;
  const both = cables.flatMap((_, i) => (pair.every((k) => has[i][k]) ? [i] : []));
  if (both.length < 2) return null;
  const kept = drawn.figures[pair[0]].length / cables.length;
  const goods = pair.map((k) => {
    const sign = moreIsBetter(criteria[k].scale) ? 1 : -1;
    const of = new Float64Array(kept * both.length);
    for (let d = 0; d < kept; d++)
      both.forEach((i, q) => {
        of[d * both.length + q] = sign * drawn.figures[k][d * cables.length + i];
      });
    return of;
  });
  const middles = goods.map((of) => both.map((_, q) => meanOf(of, q, both.length)));
  const on = onEdge(
    both.flatMap((_, q) => middles.map((of) => of[q])),
    2,
  );
  const chance = chanceOnEdge(goods, both.length);
  return {
    a,
    b,
    cables: both.map((i, q) => ({
      cable: cables[i].cable,
      a: Math.abs(middles[0][q]),
      b: Math.abs(middles[1][q]),
      on_edge: on[q],
      probability: chance[q],
    })),
  };
}

function meanOf(values: Float64Array, at: number, step: number): number {
  let sum = 0;
  for (let q = at; q < values.length; q += step) sum += values[q];
  return (sum * step) / values.length;
}
