/** A value with its standard uncertainty. */
export interface Known {
  value: number;
  u: number;
}

/** What the cut face is made of, as shares of the whole; they sum to 1. */
export interface SectionShares {
  metal: Known;
  /** Between the strands and round the bundle; holds paper and talc, and what the lay takes up. */
  air: Known;
  jacket: Known;
}

/**
 * Shares of the section: metal A / (π D²/4), jacket 1 − (d/D)², air the rest, where d is the bore of the jacket. First order in the
 * uncertainties, the three inputs independent.
 *
 * A is the metal's area square to its strands; on a square cut they lie aslant and show some per cent more, which counts as air here.
 *
 * @param area m² @param outer m @param bore m
 * @throws RangeError unless 0 < bore < outer.
 */
export function sectionShares(area: Known, outer: Known, bore: Known): SectionShares {
  if (!(bore.value > 0 && bore.value < outer.value)) throw new RangeError('a jacket is wider outside than inside');
  const D = outer.value;
  const face = (Math.PI * D * D) / 4;
  const ratio = bore.value / D;
  const metal = area.value / face;
  const within = ratio * ratio;
  const dMetal = { area: 1 / face, outer: (-2 * metal) / D };
  const dWithin = { bore: (2 * ratio) / D, outer: (-2 * within) / D };
  return {
    metal: { value: metal, u: Math.hypot(dMetal.area * area.u, dMetal.outer * outer.u) },
    air: {
      value: within - metal,
      u: Math.hypot(dMetal.area * area.u, dWithin.bore * bore.u, (dWithin.outer - dMetal.outer) * outer.u),
    },
    jacket: { value: 1 - within, u: Math.hypot(dWithin.bore * bore.u, dWithin.outer * outer.u) },
  };
}
