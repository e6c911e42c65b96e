import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DrawnStanding, drawValues, type Source } from '../../../../src/methods/decide/standing/drawValues.ts';
import { likeCriteria } from '../../../../src/methods/decide/standing/likeCriteria.ts';
import { meanValues, placesAtWeights, placesOverWeights } from '../../../../src/methods/decide/standing/places.ts';
import { rankOrderCentroid } from '../../../../src/methods/decide/standing/rankOrder.ts';
import { type ValueFunction, worthOf } from '../../../../src/methods/decide/standing/valueFunction.ts';
import { drawnAbout, drawnInOrder } from '../../../../src/methods/decide/standing/weightDraws.ts';
import { SeededDraws } from '../../../../src/numerics/random.ts';
import { expectClose } from '../../../tolerance.ts';

const SEED = Uint8Array.from({ length: 12 }, (_, i) => i + 1);
const known = (value: number): Source => ({ from: 'known', value });
const straight: ValueFunction = { shape: 'linear', worst: 0, best: 1 };

function drawnOf(rows: readonly (readonly Source[])[], scales?: readonly ValueFunction[], draws = 400): DrawnStanding {
  return drawValues({
    criteria: rows[0].map((_, k) => ({ scale: scales?.[k] ?? straight, sources: rows.map((row) => row[k]) })),
    count: rows.length,
    assay: null,
    abilities: null,
    seed: SEED,
    draws,
  });
}

const scattered = (centre: number, own: number): Source => ({
  from: 'figure',
  figure: { ln: false, centre, shared: new Map(), own, dof: Number.POSITIVE_INFINITY, scale: 1 },
});

describe('worth on a fixed scale', () => {
  const cases: [string, ValueFunction, number, number][] = [
    ['half way', { shape: 'linear', worst: 0.7, best: 1 }, 0.85, 0.5],
    ['beyond the best end', { shape: 'linear', worst: 0.7, best: 1 }, 1.15, 1.5],
    ['beyond the best end of a flat one', { shape: 'flat', worst: 0.7, best: 1 }, 1.15, 1],
    ['short of the worst end of a flat one', { shape: 'flat', worst: 0.7, best: 1 }, 0.2, 0],
    ['less is better', { shape: 'linear', worst: 40, best: 4 }, 13, 0.75],
    ['at the threshold', { shape: 'threshold', worst: 0, best: 12 }, 12, 1],
    ['short of the threshold', { shape: 'threshold', worst: 0, best: 12 }, 11.99, 0],
    ['at most', { shape: 'threshold', worst: 20, best: 12 }, 12.01, 0],
  ];
  it.each(cases)('%s', (_what, scale, x, wanted) => {
    expectClose(worthOf(scale, x), wanted, { absolute: 1e-12 });
  });
});

describe('places', () => {
  it('are certain where nothing is in doubt, and shared where things are level', () => {
    const drawn = drawnOf([[known(0.9)], [known(0.5)], [known(0.5)]]);
    const { places, before, mean, sd } = placesAtWeights(drawn, [1]);
    expect([...places]).toEqual([1, 0, 0, 0, 0.5, 0.5, 0, 0.5, 0.5]);
    expect(before[1]).toBe(1);
    expect(before[5]).toBe(0.5);
    expectClose(mean[0], 0.9, { absolute: 1e-6, because: 'kept in single precision' });
    expectClose(sd[0], 0, { absolute: 1e-6 });
  });

  it('what is common to all parts none of them', () => {
    const common = (centre: number): Source => ({
      from: 'figure',
      figure: { ln: false, centre, shared: new Map([['scale', 5]]), own: 0, dof: Number.POSITIVE_INFINITY, scale: 1 },
    });
    const { before } = placesAtWeights(drawnOf([[common(0.51)], [common(0.5)]]), [1]);
    expect(before[1]).toBe(1);
  });

  it('something unknown is anything on its scale, never nothing', () => {
    const drawn = drawnOf([[{ from: 'unknown' }], [known(0.25)]], undefined, 20_000);
    expectClose(placesAtWeights(drawn, [1]).before[1], 0.75, { absolute: 0.015 });
    expectClose(meanValues(drawn)[0], 0.5, { absolute: 0.01 });
    expect(Number.isNaN(drawn.figures[0][0])).toBe(true);
  });

  it('chances sum to 1 by cable and by place, for any field', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: -1, max: 2, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
          minLength: 2,
          maxLength: 7,
        }),
        (field) => {
          const n = field.length;
          const drawn = drawnOf(
            field.map(([centre, own]) => [scattered(centre, own)]),
            undefined,
            200,
          );
          const { places, before } = placesAtWeights(drawn, [1]);
          for (let i = 0; i < n; i++) {
            const row = places.subarray(i * n, (i + 1) * n).reduce((a, b) => a + b, 0);
            const column = field.reduce((sum, _, j) => sum + places[j * n + i], 0);
            expectClose(row, 1, { relative: 1e-9 });
            expectClose(column, 1, { relative: 1e-9 });
            for (let j = 0; j < n; j++) expectClose(before[i * n + j] + before[j * n + i], 1, { relative: 1e-9 });
          }
        },
      ),
      { seed: 11, numRuns: 60 },
    );
  });

  const field = fc.array(fc.array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 3, maxLength: 3 }), {
    minLength: 3,
    maxLength: 8,
  });
  const SCALES: ValueFunction[] = [
    { shape: 'linear', worst: 40, best: 5 },
    { shape: 'flat', worst: 10, best: 30 },
    { shape: 'linear', worst: 0, best: 45 },
  ];
  const WEIGHTS = [0.5, 0.3, 0.2];
  const orderOf = (rows: readonly (readonly number[])[], scales = SCALES) => {
    const { mean } = placesAtWeights(
      drawnOf(
        rows.map((row) => row.map(known)),
        scales,
        2,
      ),
      WEIGHTS,
    );
    return rows.map((_, i) => i).sort((a, b) => mean[b] - mean[a] || a - b);
  };

  it('taking the last cable away changes nobody else’s place', () => {
    fc.assert(
      fc.property(field, (rows) => {
        const order = orderOf(rows);
        const last = order[order.length - 1];
        const left = rows.filter((_, i) => i !== last);
        const renamed = orderOf(left).map((i) => (i >= last ? i + 1 : i));
        expect(renamed).toEqual(order.slice(0, -1));
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('other units, with the ends of the scales in them, change nothing', () => {
    fc.assert(
      fc.property(field, fc.integer({ min: 1, max: 1000 }), (rows, factor) => {
        // Powers of two scale without rounding.
        const by = 2 ** (factor % 20);
        const scaled = rows.map((row) => row.map((x) => x * by));
        const scales = SCALES.map((s) => ({ ...s, worst: s.worst * by, best: s.best * by }));
        expect(orderOf(scaled, scales)).toEqual(orderOf(rows));
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('refuse weights that are not one for each criterion', () => {
    expect(() => placesAtWeights(drawnOf([[known(1)], [known(2)]]), [0.5, 0.5])).toThrow(/weights/);
  });
});

describe('tastes', () => {
  it('about stated weights keep their mean, sum to 1, and leave nothing at nothing', () => {
    const rows = drawnAbout([0.5, 0, 0.3, 0.2], 20_000, new SeededDraws('0123456789abcdef'));
    const mean = [0, 0, 0, 0];
    let square = 0;
    for (let d = 0; d < 20_000; d++) {
      let sum = 0;
      for (let k = 0; k < 4; k++) {
        sum += rows[d * 4 + k];
        mean[k] += rows[d * 4 + k] / 20_000;
      }
      square += (rows[d * 4 + 3] - 0.2) ** 2 / 20_000;
      expect(Math.abs(sum - 1)).toBeLessThan(1e-12);
    }
    [0.5, 0, 0.3, 0.2].forEach((w, k) => {
      expectClose(mean[k], w, { absolute: 0.003 });
    });
    // Dirichlet: variance w (1 − w)/(κ + 1).
    expectClose(Math.sqrt(square), Math.sqrt((0.2 * 0.8) / 31), { relative: 0.03 });
  });

  it('in an order of importance keep it, and their mean is the rank-order centroid', () => {
    const groups = [[2], [0, 3], [1]];
    const rows = drawnInOrder(groups, 20_000, new SeededDraws('fedcba9876543210'));
    const centroid = rankOrderCentroid(groups);
    const mean = [0, 0, 0, 0];
    for (let d = 0; d < 20_000; d++) {
      const w = rows.subarray(d * 4, d * 4 + 4);
      expect(w[2]).toBeGreaterThanOrEqual(Math.max(w[0], w[3]));
      expect(Math.min(w[0], w[3])).toBeGreaterThanOrEqual(w[1]);
      for (let k = 0; k < 4; k++) mean[k] += w[k] / 20_000;
    }
    centroid.forEach((w, k) => {
      expectClose(mean[k], w, { absolute: 0.004 });
    });
    expect(centroid[0]).toBe(centroid[3]);
  });

  it('an order that names a criterion twice is refused', () => {
    expect(() => rankOrderCentroid([[0], [0]])).toThrow(/once/);
  });

  it('firsts of all cables sum to the draws', () => {
    const drawn = drawnOf([
      [known(0.5), known(0.1)],
      [known(0.2), known(0.9)],
      [known(0.3), known(0.3)],
    ]);
    const tastes = drawnAbout([0.5, 0.5], drawn.draws, new SeededDraws('0011223344556677'));
    const { firsts, centralWeights } = placesOverWeights(drawn, tastes);
    expect(firsts.reduce((a, b) => a + b, 0)).toBe(drawn.draws);
    // The first is first only where its own strength weighs more.
    expect(centralWeights[0]).toBeGreaterThan(0.6);
    expect(centralWeights[3]).toBeGreaterThan(0.4);
    expect(firsts[2]).toBe(0);
  });
});

describe('criteria that rise and fall together', () => {
  const rows = (third: (i: number) => number) =>
    [0.1, 0.4, 0.6, 0.9].map((x, i) => [scattered(x, 0.01), scattered(x + 0.01 * i, 0.01), scattered(third(i), 0.01)]);
  it('are named, others are not', () => {
    const alike = likeCriteria(drawnOf(rows((i) => [0.5, 0.1, 0.9, 0.2][i])));
    expect(alike.map(({ a, b }) => [a, b])).toEqual([[0, 1]]);
    expect(alike[0].correlation).toBeGreaterThan(0.98);
  });
  it('are not looked for among three cables', () => {
    expect(likeCriteria(drawnOf(rows((i) => i).slice(0, 3)))).toEqual([]);
  });
});
