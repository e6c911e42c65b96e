import { linearProgram } from '../../../numerics/linearProgram.ts';

/** What would have to matter more for one cable to come first. */
export interface LeastChange {
  /** The nearest weights at which its mean worth is the greatest (or level with the greatest). */
  weights: number[];
  /** Σ |w − w₀|: 0 when it is first already, 2 at most. */
  change: number;
}

/** What a weight of nothing may come to by rounding. */
const ROUNDING = 1e-12;

/**
 * The weights nearest to the stated ones at which a cable's mean worth is the greatest: least Σ |w − w₀| with w ≥ 0, Σ w = 1 and
 * Σ_k w_k (v_bk − v_jk) ≥ 0 for every other cable j; a linear program in the gains and losses of each weight.
 *
 * @param means cables × criteria, row-major
 * @returns null when no weights bring it first.
 */
export function leastChange(means: Float64Array, weights: ArrayLike<number>, cable: number): LeastChange | null {
  const m = weights.length;
  const count = means.length / m;
  const ones = new Array<number>(m).fill(1);
  const none = new Array<number>(m).fill(0);
  const losesNoMoreThanThereIs = Array.from({ length: m }, (_, k) => ({
    row: [...none.map((_z, i) => (i === k ? -1 : 0)), ...none.map((_z, i) => (i === k ? 1 : 0))],
    bound: weights[k],
  }));
  const ahead = Array.from({ length: count }, (_, j) => j)
    .filter((j) => j !== cable)
    .map((j) => {
      const lead = Array.from({ length: m }, (_, k) => means[cable * m + k] - means[j * m + k]);
      const now = lead.reduce((sum, l, k) => sum + l * weights[k], 0);
      // Rows are brought to the order of 1, which the solver's tolerances are for.
      const scale = Math.max(...lead.map(Math.abs)) || 1;
      return { row: [...lead.map((l) => -l / scale), ...lead.map((l) => l / scale)], bound: now / scale };
    });
  const answer = linearProgram({
    cost: [...ones, ...ones],
    atMost: [...losesNoMoreThanThereIs, ...ahead],
    equal: [{ row: [...ones, ...ones.map((one) => -one)], bound: 0 }],
  });
  if (answer === null) return null;
  const moved = Array.from({ length: m }, (_, k) => {
    const weight = weights[k] + answer.x[k] - answer.x[m + k];
    return weight < ROUNDING ? 0 : weight;
  });
  return { weights: moved, change: answer.cost };
}
