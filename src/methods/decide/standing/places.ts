/**
 * What the criteria are worth in many joint draws: one array for each criterion, and in it draw after draw one number for each
 * cable. All cables of one draw share the errors of the tools.
 */
export interface DrawnValues {
  /** Cables. */
  count: number;
  draws: number;
  values: readonly Float32Array[];
}

/** Who stands where, from the draws. */
export interface Places {
  /** count × count: row i holds the chances of place 1, 2 … of cable i. Ties share their places evenly. */
  places: Float64Array;
  /** count × count: chance that i stands before j; ½ on the diagonal and for a tie. */
  before: Float64Array;
}

export interface PlacesAtWeights extends Places {
  /** Mean and standard deviation of each cable's weighted value. */
  mean: Float64Array;
  sd: Float64Array;
}

export interface PlacesOverWeights extends Places {
  /** Draws in which each cable is first; ties shared. */
  firsts: Float64Array;
  /** count × criteria: mean of the weights of the draws in which the cable is first; NaN where it never is. */
  centralWeights: Float64Array;
}

/** Counts places of one draw after the other. */
class PlaceCount {
  private readonly n: number;
  private readonly placed: Float64Array;
  private readonly beaten: Float64Array;
  private readonly above: Int32Array;
  private readonly level: Int32Array;
  private counted = 0;

  constructor(count: number) {
    this.n = count;
    this.placed = new Float64Array(count * count);
    this.beaten = new Float64Array(count * count);
    this.above = new Int32Array(count);
    this.level = new Int32Array(count);
  }

  /** How many share the first place of the draw just counted with cable i; 0 when i is not first. */
  firstWith(i: number): number {
    return this.above[i] === 0 ? this.level[i] : 0;
  }

  add(scores: Float64Array): void {
    const { n, above, level, beaten, placed } = this;
    above.fill(0);
    level.fill(1);
    for (let i = 0; i < n; i++) {
      const mine = scores[i];
      for (let j = i + 1; j < n; j++) {
        const other = scores[j];
        if (mine > other) {
          above[j]++;
          beaten[i * n + j]++;
        } else if (mine < other) {
          above[i]++;
          beaten[j * n + i]++;
        } else {
          level[i]++;
          level[j]++;
          beaten[i * n + j] += 0.5;
          beaten[j * n + i] += 0.5;
        }
      }
    }
    for (let i = 0; i < n; i++) {
      if (level[i] === 1) placed[i * n + above[i]]++;
      else for (let q = 0; q < level[i]; q++) placed[i * n + above[i] + q] += 1 / level[i];
    }
    this.counted++;
  }

  get result(): Places {
    const { n, counted } = this;
    const before = this.beaten.map((c) => c / counted);
    for (let i = 0; i < n; i++) before[i * n + i] = 0.5;
    return { places: this.placed.map((c) => Math.min(1, c / counted)), before };
  }
}

function check({ values, count, draws }: DrawnValues, weights: number): void {
  if (values.length === 0 || values.length !== weights)
    throw new RangeError(`${values.length} criteria need as many weights, got ${weights}`);
  if (count < 1 || draws < 2 || values.some((v) => v.length !== draws * count))
    throw new RangeError('values must hold one number for each draw and cable');
}

/** Chances of places at the stated weights: doubt about the measurements alone. */
export function placesAtWeights(drawn: DrawnValues, weights: ArrayLike<number>): PlacesAtWeights {
  const { count: n, draws, values } = drawn;
  check(drawn, weights.length);
  const counted = new PlaceCount(n);
  const scores = new Float64Array(n);
  const sum = new Float64Array(n);
  const squares = new Float64Array(n);
  const m = values.length;
  for (let d = 0; d < draws; d++) {
    const at = d * n;
    scores.fill(0);
    for (let k = 0; k < m; k++) {
      const w = weights[k];
      const of = values[k];
      for (let i = 0; i < n; i++) scores[i] += w * of[at + i];
    }
    for (let i = 0; i < n; i++) {
      sum[i] += scores[i];
      squares[i] += scores[i] * scores[i];
    }
    counted.add(scores);
  }
  const mean = sum.map((s) => s / draws);
  const sd = squares.map((s, i) => Math.sqrt(Math.max(0, (s - draws * mean[i] ** 2) / (draws - 1))));
  return { ...counted.result, mean, sd };
}

/**
 * Acceptability: chances of places over a spread of weights, one row of weights for each draw. Measurement and taste are both in
 * it; show it beside `placesAtWeights`, never instead.
 *
 * Source of rank acceptability and central weights: R. Lahdelma, P. Salminen, "SMAA-2: stochastic multicriteria acceptability
 * analysis for group decision making", Operations Research 49 (2001).
 *
 * @param weightRows draws × criteria
 */
export function placesOverWeights(drawn: DrawnValues, weightRows: Float64Array): PlacesOverWeights {
  const { count: n, draws, values } = drawn;
  const m = values.length;
  check(drawn, weightRows.length / draws);
  const counted = new PlaceCount(n);
  const scores = new Float64Array(n);
  const firsts = new Float64Array(n);
  const centralWeights = new Float64Array(n * m);
  for (let d = 0; d < draws; d++) {
    const at = d * n;
    scores.fill(0);
    for (let k = 0; k < m; k++) {
      const w = weightRows[d * m + k];
      const of = values[k];
      for (let i = 0; i < n; i++) scores[i] += w * of[at + i];
    }
    counted.add(scores);
    for (let i = 0; i < n; i++) {
      const shared = counted.firstWith(i);
      if (shared === 0) continue;
      firsts[i] += 1 / shared;
      for (let k = 0; k < m; k++) centralWeights[i * m + k] += weightRows[d * m + k] / shared;
    }
  }
  for (let i = 0; i < n; i++) for (let k = 0; k < m; k++) centralWeights[i * m + k] /= firsts[i];
  return { ...counted.result, firsts, centralWeights };
}

/** Mean worth of each cable by each criterion, row-major cables × criteria. */
export function meanValues({ values, count, draws }: DrawnValues): Float64Array {
  const m = values.length;
  const means = new Float64Array(count * m);
  values.forEach((of, k) => {
    for (let i = 0; i < count; i++) {
      let sum = 0;
      for (let q = i; q < of.length; q += count) sum += of[q];
      means[i * m + k] = sum;
    }
  });
  return means.map((sum) => sum / draws);
}
