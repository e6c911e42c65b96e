/**
 * The assay a third time, by drawing: the errors of the tools and the constants that cables have in common are drawn from
 * what is supposed of them; given a draw every cable stands alone, and its readings weigh the draw.
 */
import type { AssayCable, SharedInput } from '../../../src/methods/assay/row.ts';
import type { MetalHypothesis } from '../../../src/methods/metal/hypotheses.ts';
import { SeededDraws } from '../../../src/numerics/random.ts';
import { eliminate, observe, priorOf, type Supposed, supposedOf } from './denseReference.ts';

/** Common standard deviations of ln k, ln ρm, ln ρe, written out again on purpose. */
const COMMON = [0, 0.006, 0.0015, 0.003];

interface Alone {
  /** What the readings say beyond the prior when no tool is off. */
  surprise: number[];
  /** How readings move with each drawn input. */
  slopes: number[][];
  /** Inverse of the readings' own covariance, and ½ ln of its determinant with the odds. */
  inverse: number[][];
  lnScale: number;
  /** Covariance of ln A with each reading, and its prior mean. */
  withArea: number[];
  meanArea: number;
}

/** One cable under one supposition, the drawn inputs held fixed. */
function aloneGiven(cable: AssayCable, s: Supposed, inputs: readonly SharedInput[]): Alone {
  const { mean, cov } = priorOf([cable], [s], inputs);
  const { y, design, noise } = observe([cable], [s], inputs);
  const commonOf = (k: number) => (k > 1 && !s.metal.sharesCopperConstants ? 0 : COMMON[k]);
  const own = [0, 1, 2, 3].map((k) => cov[k][k] - commonOf(k) ** 2);
  const spread = design.map((a, i) =>
    design.map((b, j) => noise[i][j] + own.reduce((t, v, k) => t + a[k] * v * b[k], 0)),
  );
  const identity = y.map((_, i) => y.map((__, j) => (i === j ? 1 : 0)));
  const { x, lnDet } = eliminate(spread, identity);
  return {
    surprise: y.map((v, i) => v - [0, 1, 2, 3].reduce((t, k) => t + design[i][k] * mean[k], 0)),
    slopes: design.map((line) => [...line.slice(4), ...[1, 2, 3].map((k) => line[k] * commonOf(k))]),
    inverse: x,
    lnScale: -0.5 * (lnDet + y.length * Math.log(2 * Math.PI)) + s.lnOdds,
    withArea: design.map((line) => line[0] * own[0]),
    meanArea: mean[0],
  };
}

function weighed(a: Alone, b: readonly number[]): { weight: number; lnArea: number } {
  const r = a.surprise.map((v, i) => v - a.slopes[i].reduce((t, s, k) => t + s * b[k], 0));
  const solved = a.inverse.map((row) => row.reduce((t, v, j) => t + v * r[j], 0));
  const chi2 = r.reduce((t, v, i) => t + v * solved[i], 0);
  return {
    weight: Math.exp(a.lnScale - 0.5 * chi2),
    lnArea: a.meanArea + a.withArea.reduce((t, v, i) => t + v * solved[i], 0),
  };
}

export interface DrawnMixture {
  weights: number[][];
  mean: number[];
  /** Draws of equal weight that would be worth as much. */
  effective: number;
}

/** Beliefs and mean ln A of every cable, averaged over draws of the common inputs. Not for control pieces. */
export function drawnMixture(
  cables: readonly AssayCable[],
  inputs: readonly SharedInput[],
  metals: readonly MetalHypothesis[],
  { seed, draws }: { seed: string; draws: number },
): DrawnMixture {
  const all = cables.map((cable) => supposedOf(cable, metals).map((s) => aloneGiven(cable, s, inputs)));
  const random = new SeededDraws(seed);
  const weights = all.map((list) => list.map(() => 0));
  const mean = cables.map(() => 0);
  let total = 0;
  let squares = 0;
  for (let n = 0; n < draws; n++) {
    const b = Array.from({ length: inputs.length + 3 }, () => random.normal());
    const each = all.map((list) => list.map((a) => weighed(a, b)));
    const sums = each.map((list) => list.reduce((t, e) => t + e.weight, 0));
    const draw = sums.reduce((t, v) => t * v, 1);
    total += draw;
    squares += draw * draw;
    each.forEach((list, c) => {
      const others = draw / sums[c];
      list.forEach((e, h) => {
        weights[c][h] += e.weight * others;
        mean[c] += e.weight * others * e.lnArea;
      });
    });
  }
  return {
    weights: weights.map((list) => list.map((w) => w / total)),
    mean: mean.map((m) => m / total),
    effective: (total * total) / squares,
  };
}
