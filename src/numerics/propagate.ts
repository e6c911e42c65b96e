/**
 * The law of propagation of uncertainty: how the standard uncertainties of inputs become that of a result.
 *
 * Source: JCGM 100:2008 (GUM), clauses 5 and G.4.
 */

/**
 * Sensitivity of a result to one input by a central difference over ± its standard uncertainty:
 * (f(x + uₖ) − f(x − uₖ)) / (2 uₖ), GUM 5.1.3 note 2.
 *
 * Not where f bends strongly within ±u; there draw at random (monteCarlo.ts).
 *
 * @param f the result as a function of all inputs.
 * @param x input values.
 * @param u standard uncertainties; where one is 0 a step of 1e-6 of the value (or 1e-6 at 0) is taken instead.
 * @returns one sensitivity for each input, unit of the result over unit of the input.
 * @throws RangeError when lengths differ or f is not finite at a point that is tried.
 */
export function sensitivity(f: (x: readonly number[]) => number, x: readonly number[], u: readonly number[]): number[] {
  if (x.length !== u.length) throw new RangeError(`${x.length} inputs but ${u.length} uncertainties`);
  return x.map((value, k) => {
    const wish = u[k] > 0 ? u[k] : 1e-6 * (Math.abs(value) || 1);
    // The step as the machine really takes it on each side.
    const above = value + wish;
    const below = value - wish;
    const slope = (valueAt(f, x, k, above) - valueAt(f, x, k, below)) / (above - below);
    if (!Number.isFinite(slope)) throw new RangeError(`the result is not finite near input ${k + 1} = ${value}`);
    return slope;
  });
}

function valueAt(f: (x: readonly number[]) => number, x: readonly number[], k: number, value: number): number {
  const moved = x.slice();
  moved[k] = value;
  return f(moved);
}

/**
 * Combined standard uncertainty √(Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ), GUM equations (10) and (16).
 *
 * @param sensitivities cᵢ.
 * @param u standard uncertainties uᵢ.
 * @param correlation rᵢⱼ, full matrix with ones on the diagonal; independent inputs when left out. Leaving out a real
 *   correlation can make the result several times too large or too small.
 * @throws RangeError when lengths differ, an uncertainty is negative, a correlation lies outside [−1, 1] or the matrix is not
 *   symmetric.
 */
export function combineUncertainty(
  sensitivities: readonly number[],
  u: readonly number[],
  correlation?: readonly (readonly number[])[],
): number {
  return Math.sqrt(Math.max(0, combineCovariance(sensitivities, sensitivities, u, correlation)));
}

/**
 * Covariance of two results of the same inputs, Σᵢ Σⱼ aᵢ bⱼ uᵢ uⱼ rᵢⱼ, GUM F.1.2.3 and H.2.3: with both the same, the square of
 * the combined uncertainty. Arguments and throws as in {@link combineUncertainty}.
 */
export function combineCovariance(
  a: readonly number[],
  b: readonly number[],
  u: readonly number[],
  correlation?: readonly (readonly number[])[],
): number {
  const n = u.length;
  if (a.length !== n || b.length !== n)
    throw new RangeError(`${a.length} and ${b.length} sensitivities for ${n} uncertainties`);
  const negative = u.findIndex((value) => !(value >= 0));
  if (negative >= 0) throw new RangeError(`uncertainty ${negative + 1} must not be negative, got ${u[negative]}`);
  if (correlation) requireCorrelation(correlation, n);
  let sum = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const r = correlation ? correlation[i][j] : Number(i === j);
      if (r !== 0) sum += a[i] * b[j] * u[i] * u[j] * r;
    }
  return sum;
}

function requireCorrelation(r: readonly (readonly number[])[], n: number): void {
  if (r.length !== n || r.some((row) => row.length !== n))
    throw new RangeError(`the correlation matrix must be ${n} × ${n}`);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      if (!(Math.abs(r[i][j]) <= 1) || r[i][j] !== r[j][i] || (i === j && r[i][i] !== 1))
        throw new RangeError(`correlation of inputs ${i + 1} and ${j + 1} is not one: ${r[i][j]} and ${r[j][i]}`);
    }
}

/**
 * Effective degrees of freedom by the Welch–Satterthwaite formula, ν = u⁴ / Σ(uᵢ⁴/νᵢ), GUM equation (G.2b); for a coverage factor
 * from a t table the GUM truncates it downward, which is left to the caller.
 *
 * Only for independent contributions.
 *
 * @param contributions uᵢ = |cᵢ| u(xᵢ), in the unit of the result.
 * @param dof νᵢ; Infinity for a contribution known exactly.
 * @returns Infinity when no contribution has finite degrees of freedom.
 * @throws RangeError when lengths differ or a νᵢ is not positive.
 */
export function effectiveDegreesOfFreedom(contributions: readonly number[], dof: readonly number[]): number {
  if (contributions.length !== dof.length)
    throw new RangeError(`${contributions.length} contributions but ${dof.length} degrees of freedom`);
  let variance = 0;
  let sum = 0;
  contributions.forEach((u, i) => {
    if (!(dof[i] > 0)) throw new RangeError(`degrees of freedom ${i + 1} must be positive, got ${dof[i]}`);
    variance += u * u;
    sum += (u * u * (u * u)) / dof[i];
  });
  return sum === 0 ? Number.POSITIVE_INFINITY : (variance * variance) / sum;
}
