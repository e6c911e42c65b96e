/**
 * Lay factor of a twisted bundle: strand length over cable length, averaged over the area of the bundle.
 *
 * A strand at radius r in a lay of length l is longer by √(1 + (2πr/l)²); averaged over the disc of diameter D with
 * q = πD/l this is `2/(3q²) · ((1 + q²)^{3/2} − 1)`.
 *
 * @param bundleDiameter m
 * @param layLength m, the length in which the outer strands go once round
 * @returns k ≥ 1. For bundles laid within bundles this is the least that it can be.
 * @example layFactorOfBundle(0.008, 0.1) // 1.0156
 */
export function layFactorOfBundle(bundleDiameter: number, layLength: number): number {
  const q = (Math.PI * bundleDiameter) / layLength;
  // Below this the closed form loses its digits; the series is exact to 1e-9.
  if (q < 0.01) return 1 + (q * q) / 4;
  return (2 / (3 * q * q)) * ((1 + q * q) ** 1.5 - 1);
}
