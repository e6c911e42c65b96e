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
 * Shares of the section: metal A / (π D²/4), jacket 1 − (1 − 2w/D)², air the rest. First order in the uncertainties, the three
 * inputs independent.
 *
 * A is the metal's area square to its strands; on a square cut they lie aslant and show some per cent more, which counts as air here.
 *
 * @param area m² @param outer D, m @param wall w, m
 * @throws RangeError unless 0 < 2w < D.
 */
export function sectionShares(area: Known, outer: Known, wall: Known): SectionShares {
  const D = outer.value;
  const bore = D - 2 * wall.value;
  if (!(wall.value > 0 && bore > 0)) throw new RangeError('a jacket is wider outside than inside');
  const face = (Math.PI * D * D) / 4;
  const metal = area.value / face;
  const within = (bore / D) ** 2;
  const metalBy = { area: 1 / face, outer: (-2 * metal) / D };
  const withinBy = { outer: (4 * wall.value * bore) / D ** 3, wall: (-4 * bore) / D ** 2 };
  return {
    metal: { value: metal, u: Math.hypot(metalBy.area * area.u, metalBy.outer * outer.u) },
    air: {
      value: within - metal,
      u: Math.hypot(metalBy.area * area.u, withinBy.wall * wall.u, (withinBy.outer - metalBy.outer) * outer.u),
    },
    jacket: { value: 1 - within, u: Math.hypot(withinBy.wall * wall.u, withinBy.outer * outer.u) },
  };
}
