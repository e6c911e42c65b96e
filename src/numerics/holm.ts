/**
 * Holm's correction: the p-values of several tests, each raised so that the chance of any false difference among all of them
 * stays below the level at which they are read. The i-th smallest of m is multiplied by m − i + 1, never below the one before it,
 * never above 1. In the order given.
 *
 * Source: S. Holm, Scandinavian Journal of Statistics 6 (1979) 65.
 *
 * @example holm([0.01, 0.02, 0.03]) // [0.03, 0.04, 0.04]
 */
export function holm(p: readonly number[]): number[] {
  const order = p.map((_, i) => i).sort((a, b) => p[a] - p[b]);
  const adjusted = new Array<number>(p.length);
  let least = 0;
  order.forEach((test, place) => {
    least = Math.max(least, Math.min(1, (p.length - place) * p[test]));
    adjusted[test] = least;
  });
  return adjusted;
}
