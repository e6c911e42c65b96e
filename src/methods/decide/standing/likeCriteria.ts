import type { DrawnValues } from './places.ts';

/** Criteria that rise and fall together so much say one thing twice. */
export const LIKE_ABOVE = 0.9;
/** Two or three cables rise and fall together by chance too often to say anything. */
const FEWEST_CABLES = 4;

/** A correlation of .9 is told to ±.01 by so many draws. */
const DRAWS_LOOKED_AT = 2000;

export interface LikeCriteria {
  a: number;
  b: number;
  correlation: number;
}

/** Pairs of criteria whose worth correlates above 0.9 over draws and cables; none for fewer than four cables. */
export function likeCriteria({ values: all, count }: DrawnValues): LikeCriteria[] {
  if (count < FEWEST_CABLES) return [];
  const values = all.map((v) => v.subarray(0, DRAWS_LOOKED_AT * count));
  const means = values.map((v) => v.reduce((sum, x) => sum + x, 0) / v.length);
  const product = (a: number, b: number) => {
    let sum = 0;
    for (let q = 0; q < values[a].length; q++) sum += (values[a][q] - means[a]) * (values[b][q] - means[b]);
    return sum;
  };
  const squares = values.map((_, k) => product(k, k));
  return values.flatMap((_, a) =>
    values.slice(a + 1).flatMap((_later, offset) => {
      const b = a + 1 + offset;
      const spread = Math.sqrt(squares[a] * squares[b]);
      const correlation = spread > 0 ? product(a, b) / spread : 0;
      return correlation > LIKE_ABOVE ? [{ a, b, correlation }] : [];
    }),
  );
}
