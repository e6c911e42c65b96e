/** Orders by weights against a published table and against an independent computation in another language. */
import { describe, expect, it } from 'vitest';
import { drawValues, type Source } from '../../src/methods/decide/standing/drawValues.ts';
import { leastChange } from '../../src/methods/decide/standing/leastChange.ts';
import { onEdge } from '../../src/methods/decide/standing/pareto.ts';
import { placesAtWeights, placesOverWeights } from '../../src/methods/decide/standing/places.ts';
import { rankOrderCentroid } from '../../src/methods/decide/standing/rankOrder.ts';
import { drawnAbout, drawnInOrder } from '../../src/methods/decide/standing/weightDraws.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { drawsFrom } from '../simulate/random.ts';
import { expectClose } from '../tolerance.ts';

describe('rank-order centroid weights (Barron and Barrett, Management Science 42, 1996, table of ROC weights: from memory)', () => {
  const table: [number, number[]][] = [
    [2, [0.75, 0.25]],
    [3, [0.6111, 0.2778, 0.1111]],
    [4, [0.5208, 0.2708, 0.1458, 0.0625]],
    [5, [0.4567, 0.2567, 0.1567, 0.09, 0.04]],
    [6, [0.4083, 0.2417, 0.1583, 0.1028, 0.0611, 0.0278]],
  ];
  it.each(table)('%i criteria', (m, wanted) => {
    const got = rankOrderCentroid(Array.from({ length: m }, (_, i) => [i]));
    wanted.forEach((w, i) => {
      expectClose(got[i], w, { absolute: 5.1e-5, because: 'four decimals printed' });
    });
  });
});

/**
 * Five invented things by four criteria: a mean worth, an error of its own for each (normal), and for each criterion one error common
 * to all five (uniform), which moves each by its own share. Computed independently: numpy 2.4.6, argsort of 2·10⁷ draws; standard
 * error of a chance below .00012. The linear programs by scipy 1.17.1 (HiGHS).
 */
const MEANS = [
  [0.62, 0.4, 0.55, 0.3],
  [0.58, 0.52, 0.5, 0.42],
  [0.7, 0.3, 0.35, 0.65],
  [0.45, 0.6, 0.62, 0.38],
  [0.55, 0.47, 0.47, 0.5],
];
const OWN = [0.05, 0.08, 0.06, 0.03];
const COMMON = [0.04, 0.1, 0, 0.02];
const FOLLOWS = [1, 0.8, 1.2, 0.6, 1.1];
const WEIGHTS = [0.4, 0.3, 0.2, 0.1];
const DRAWS = 200_000;
/** Four and a half standard errors of a chance from so many draws. */
const CHANCE = { absolute: 0.005, because: 'numpy, 2·10⁷ draws; here 200 000' };

const source = (i: number, k: number): Source => ({
  from: 'figure',
  figure: {
    ln: false,
    centre: MEANS[i][k],
    shared: new Map(COMMON[k] > 0 ? [[`tool ${k}`, COMMON[k] * FOLLOWS[i]]] : []),
    own: OWN[k],
    dof: Number.POSITIVE_INFINITY,
    scale: 1,
  },
});

const drawn = drawValues({
  criteria: OWN.map((_, k) => ({
    scale: { shape: 'linear', worst: 0, best: 1 },
    sources: MEANS.map((_m, i) => source(i, k)),
  })),
  count: 5,
  assay: null,
  abilities: null,
  seed: Uint8Array.from({ length: 16 }, (_, i) => i * 7 + 1),
  draws: DRAWS,
});

const expectRows = (got: ArrayLike<number>, wanted: readonly (readonly number[])[], tolerance = CHANCE) => {
  wanted.flat().forEach((w, q) => {
    expectClose(got[q], w, tolerance);
  });
};

describe('acceptability of five things by four criteria, computed independently', () => {
  it('places at the stated weights', () => {
    const { places, before } = placesAtWeights(drawn, WEIGHTS);
    expectRows(places, [
      [0.13767, 0.18187, 0.21741, 0.23076, 0.23228],
      [0.34392, 0.25314, 0.18257, 0.13226, 0.08812],
      [0.13063, 0.16551, 0.20048, 0.23308, 0.2703],
      [0.26382, 0.23307, 0.19288, 0.16537, 0.14486],
      [0.12396, 0.1664, 0.20666, 0.23852, 0.26445],
    ]);
    expectRows(before.subarray(0, 5), [[0.5, 0.32344, 0.52483, 0.3885, 0.52514]]);
    expectRows(before.subarray(5, 10), [[0.67656, 0.5, 0.69343, 0.56613, 0.69636]]);
  });

  it('places and central weights over tastes about the weights (Dirichlet, κ = 30)', () => {
    const tastes = drawnAbout(WEIGHTS, DRAWS, new SeededDraws('00112233445566778899'));
    const { places, firsts, centralWeights } = placesOverWeights(drawn, tastes);
    expectRows(places, [
      [0.13675, 0.18492, 0.2248, 0.23523, 0.21829],
      [0.29705, 0.27778, 0.20452, 0.14096, 0.07969],
      [0.1857, 0.15701, 0.16811, 0.20078, 0.2884],
      [0.27078, 0.20881, 0.17522, 0.16513, 0.18006],
      [0.10971, 0.17148, 0.22735, 0.2579, 0.23356],
    ]);
    expectRows(
      firsts.map((f) => f / DRAWS),
      [[0.13675, 0.29705, 0.1857, 0.27078, 0.10971]],
    );
    expectRows(
      centralWeights,
      [
        [0.42753, 0.27717, 0.21405, 0.08125],
        [0.40038, 0.30798, 0.19557, 0.09608],
        [0.4516, 0.25313, 0.17021, 0.12507],
        [0.35382, 0.33102, 0.22134, 0.09382],
        [0.39116, 0.30961, 0.19239, 0.10683],
      ],
      { absolute: 0.0035, because: 'numpy, 2·10⁷ draws; here at least 22 000 firsts each' },
    );
  });

  it('places and central weights over all weights that keep an order', () => {
    const tastes = drawnInOrder([[0], [1], [2], [3]], DRAWS, new SeededDraws('99887766554433221100'));
    const { places, centralWeights } = placesOverWeights(drawn, tastes);
    expectRows(places, [
      [0.1736, 0.23606, 0.23513, 0.2005, 0.15471],
      [0.2858, 0.26411, 0.22089, 0.15328, 0.07592],
      [0.29683, 0.19505, 0.16829, 0.16138, 0.17845],
      [0.15211, 0.15295, 0.15947, 0.19626, 0.33921],
      [0.09166, 0.15183, 0.21622, 0.28858, 0.25171],
    ]);
    expectRows(
      centralWeights,
      [
        [0.53857, 0.26605, 0.14493, 0.05045],
        [0.49202, 0.29316, 0.1518, 0.06302],
        [0.59958, 0.22176, 0.11729, 0.06137],
        [0.42716, 0.31593, 0.18524, 0.07167],
        [0.47822, 0.29435, 0.15544, 0.07199],
      ],
      { absolute: 0.006, because: 'numpy, 2·10⁷ draws; here at least 18 000 firsts each' },
    );
  });

  const changes: [number, number, number[] | null][] = [
    // Several sets of weights are equally near for the first and the last, so the distance alone is compared.
    [0, 0.25882352941176434, null],
    [1, 0, WEIGHTS],
    [2, 0.11111111111111113, [0.4, 0.24444444444444446, 0.2, 0.15555555555555556]],
    [3, 0.064, [0.368, 0.3, 0.232, 0.1]],
    [4, 0.91875, null],
  ];
  it.each(changes)('what would have to matter more for thing %i (scipy linprog, HiGHS)', (thing, change, weights) => {
    const got = leastChange(Float64Array.from(MEANS.flat()), WEIGHTS, thing)!;
    expectClose(got.change, change, { relative: 1e-9, absolute: 1e-12 });
    if (weights)
      weights.forEach((w, k) => {
        expectClose(got.weights[k], w, { absolute: 1e-9 });
      });
    const sums = MEANS.map((row) => row.reduce((sum, v, k) => sum + v * got.weights[k], 0));
    expect(Math.max(...sums) - sums[thing]).toBeLessThan(1e-9);
  });
});

describe('the edge', () => {
  it('is what a sweep from the best in one respect down leaves, for a thousand fields of two respects', () => {
    const random = drawsFrom(61);
    for (let field = 0; field < 1000; field++) {
      const n = random.whole(1, 12);
      // Few different figures, so that there are many equals.
      const goods = Array.from({ length: n }, () => [random.whole(0, 5), random.whole(0, 5)]);
      const got = onEdge(goods.flat(), 2);
      const order = goods.map((_, i) => i).sort((i, j) => goods[j][0] - goods[i][0] || goods[j][1] - goods[i][1]);
      let best = Number.NEGATIVE_INFINITY;
      let first = Number.NaN;
      const swept = new Array<boolean>(n).fill(false);
      for (const i of order) {
        const [a, b] = goods[i];
        if (b > best) {
          swept[i] = true;
          best = b;
          first = a;
        } else swept[i] = b === best && a === first;
      }
      expect(got, `field ${field}: ${JSON.stringify(goods)}`).toEqual(swept);
    }
  });
});
