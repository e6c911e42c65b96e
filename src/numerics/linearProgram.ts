/** Least c·x over x ≥ 0 with `atMost` rows a·x ≤ b and `equal` rows a·x = b. */
export interface LinearProgram {
  cost: readonly number[];
  atMost: readonly { row: readonly number[]; bound: number }[];
  equal: readonly { row: readonly number[]; bound: number }[];
}

export interface LinearAnswer {
  x: number[];
  cost: number;
}

/** Entries and reduced costs smaller than this are rounding: rows and bounds here are of the order of 1. */
const ZERO = 1e-10;
/** What may be left of the artificial unknowns in a program that has an answer. */
const FEASIBLE = 1e-8;
const MOST_STEPS = 10_000;

/**
 * Solves a small linear program by the two-phase simplex method on a dense table, the pivot chosen by Bland's rule (the least
 * index that helps), so that it cannot go round in circles.
 *
 * For tens of unknowns; numbers are to be scaled to the order of 1. Source of the rule: R. G. Bland, "New finite pivoting rules
 * for the simplex method", Mathematics of Operations Research 2 (1977).
 *
 * @returns null when no x fits all rows.
 * @throws RangeError when rows are of unequal length, or the cost has no least value.
 * @example linearProgram({ cost: [1, 1], atMost: [{ row: [-1, 0], bound: -2 }], equal: [] }) // x = [2, 0], cost 2
 */
export function linearProgram(program: LinearProgram): LinearAnswer | null {
  const n = program.cost.length;
  const rows = [...program.atMost, ...program.equal];
  if (rows.some(({ row }) => row.length !== n))
    throw new RangeError(`every row needs ${n} numbers, as many as the cost`);
  const slacks = program.atMost.length;
  const m = rows.length;
  const width = n + slacks + m + 1;
  const table = rows.map(({ row, bound }, i) => {
    const sign = bound < 0 ? -1 : 1;
    const line = new Float64Array(width);
    for (let j = 0; j < n; j++) line[j] = sign * row[j];
    if (i < slacks) line[n + i] = sign;
    line[n + slacks + i] = 1;
    line[width - 1] = sign * bound;
    return line;
  });
  const basis = rows.map((_, i) => n + slacks + i);
  const artificial = new Float64Array(width - 1).fill(0);
  artificial.fill(1, n + slacks);
  if (minimise(table, basis, artificial, width - 1) > FEASIBLE) return null;
  const real = new Float64Array(width - 1);
  real.set(program.cost);
  const cost = minimise(table, basis, real, n + slacks);
  const x = new Array<number>(n).fill(0);
  basis.forEach((unknown, i) => {
    if (unknown < n) x[unknown] = table[i][width - 1];
  });
  return { x, cost };
}

/** Pivots until no unknown below `usable` lowers the cost; gives the least cost. */
function minimise(table: Float64Array[], basis: number[], cost: Float64Array, usable: number): number {
  const last = cost.length;
  for (let step = 0; step < MOST_STEPS; step++) {
    const enter = firstThatHelps(table, basis, cost, usable);
    if (enter === -1) return basis.reduce((sum, unknown, i) => sum + cost[unknown] * table[i][last], 0);
    let leave = -1;
    let least = Infinity;
    table.forEach((line, i) => {
      if (line[enter] <= ZERO) return;
      const ratio = line[last] / line[enter];
      if (ratio < least - ZERO || (ratio < least + ZERO && leave >= 0 && basis[i] < basis[leave])) {
        least = Math.min(ratio, least);
        leave = i;
      }
    });
    if (leave === -1) throw new RangeError('the cost has no least value');
    pivot(table, leave, enter);
    basis[leave] = enter;
  }
  throw new RangeError('the linear program did not come to an end');
}

function firstThatHelps(table: readonly Float64Array[], basis: readonly number[], cost: Float64Array, usable: number) {
  for (let j = 0; j < usable; j++) {
    if (basis.includes(j)) continue;
    let reduced = cost[j];
    for (let i = 0; i < table.length; i++) reduced -= cost[basis[i]] * table[i][j];
    if (reduced < -ZERO) return j;
  }
  return -1;
}

function pivot(table: readonly Float64Array[], row: number, column: number): void {
  const line = table[row];
  const by = line[column];
  for (let j = 0; j < line.length; j++) line[j] /= by;
  table.forEach((other, i) => {
    const factor = other[column];
    if (i === row || factor === 0) return;
    for (let j = 0; j < other.length; j++) other[j] -= factor * line[j];
  });
}
