/** The wall read at a cut face against half the difference of the diameters over and under the jacket. */
export interface CrossCheck {
  /** (D − d)/2, m */
  byDiameters: number;
  /** That less the wall as read, m. */
  difference: number;
  /** Within this the two agree: their joint expanded uncertainty, m. */
  limit: number;
  agrees: boolean;
  /**
   * What jaws on a soft jacket would explain: the `outer` diameter read too small, or the `wall` itself; null where the two agree or
   * nothing says which.
   */
  squeezed: 'outer diameter' | 'wall' | null;
}

/** Coverage factor for the comparison: about 95 in 100. */
const COVERAGE = 2;
/** Bare strands spread when the jacket comes off, so a bundle reads up to this much too thick, share of it. Common practice, no source. */
export const BUNDLE_SPREAD = 0.02;

/**
 * Compares the two. The bundle's own spreading is allowed for before anything is said.
 *
 * @param u standard uncertainties, m
 */
export function crossCheck(
  outer: { value: number; u: number },
  bundle: { value: number; u: number },
  wall: { value: number; u: number },
): CrossCheck {
  const byDiameters = (outer.value - bundle.value) / 2;
  const difference = byDiameters - wall.value;
  const limit = COVERAGE * Math.hypot(outer.u / 2, bundle.u / 2, wall.u) + (BUNDLE_SPREAD * bundle.value) / 2;
  const agrees = Math.abs(difference) <= limit;
  return {
    byDiameters,
    difference,
    limit,
    agrees,
    squeezed: agrees ? null : difference < 0 ? 'outer diameter' : 'wall',
  };
}
