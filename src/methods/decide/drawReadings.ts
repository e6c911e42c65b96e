import type { SeededDraws } from '../../numerics/random.ts';
import { LN_LAY } from '../assay/prior.ts';
import { type AssayRow, COEFFICIENTS, type SharedInput } from '../assay/row.ts';
import type { MetalHypothesis } from '../metal/hypotheses.ts';

/** What an imagined cable really is: (ln A, ln k, ln ρm, ln ρe), SI, and how its resistance follows temperature. */
export interface ImaginedCable {
  x: readonly [number, number, number, number];
  /** 1/K */
  alpha: number;
}

/** No strand is shorter than the cable, however the lay is drawn. */
const LEAST_LN_LAY = 0;

/**
 * One honest conductor of a given area: its metal one of the suppositions by their odds, its density, resistivity and lay
 * drawn from what the assay expects of such a metal.
 *
 * @param area true metal area, m²
 * @param metals suppositions that it may be of; their odds need not sum to 1
 */
export function drawCable(area: number, metals: readonly MetalHypothesis[], draws: SeededDraws): ImaginedCable {
  const metal = chosen(metals, draws.uniform());
  const lnLay = Math.max(LEAST_LN_LAY, LN_LAY.mean + LN_LAY.sd * draws.normal());
  const lnDensity = metal.lnDensity.mean + metal.lnDensity.sd * draws.normal();
  const lnResistivity = metal.lnResistivity.mean + metal.lnResistivity.sd * draws.normal();
  return { x: [Math.log(area), lnLay, lnDensity, lnResistivity], alpha: metal.alpha };
}

function chosen(metals: readonly MetalHypothesis[], share: number): MetalHypothesis {
  let left = share * metals.reduce((sum, m) => sum + m.prior, 0);
  for (const metal of metals) {
    left -= metal.prior;
    if (left < 0) return metal;
  }
  return metals[metals.length - 1];
}

/** One error for each instrument, SI unit of its input: uniform within the limit, or normal. */
export function drawToolErrors(inputs: readonly SharedInput[], draws: SeededDraws): Map<string, number> {
  return new Map(
    inputs.map(({ input, shape, limit, sd }) => [
      input,
      shape === 'uniform' ? limit * (2 * draws.uniform() - 1) : sd * draws.normal(),
    ]),
  );
}

/**
 * What the rows would read of that cable: `y = g·x + Σ power·ln(1 + slope·b) + Σ slope·e`, and for a resistance ln(1 + α·t)
 * with the thermometer's error in t.
 *
 * @param scatter for a row's own input, the standard deviation that its readings really have, where that is not the one that
 *   the assay will believe
 */
export function drawReadings(
  rows: readonly AssayRow[],
  cable: ImaginedCable,
  errors: ReadonlyMap<string, number>,
  scatter: Readonly<Record<string, number>>,
  draws: SeededDraws,
): Float64Array {
  const own = new Map<string, number>();
  const ownError = (input: string, variance: number): number => {
    const known = own.get(input);
    if (known !== undefined) return known;
    const drawn = draws.normal() * (scatter[input] ?? Math.sqrt(variance));
    own.set(input, drawn);
    return drawn;
  };
  return Float64Array.from(rows, (row) => {
    let y = 0;
    COEFFICIENTS[row.kind].forEach((g, k) => {
      y += g * cable.x[k];
    });
    for (const s of row.shared) y += s.power * Math.log1p(s.slope * (errors.get(s.input) ?? 0));
    for (const o of row.own) y += o.slope * ownError(o.input, o.variance);
    if (row.temperature) {
      const warmer = row.temperature.above20 + (errors.get(row.temperature.input) ?? 0);
      y += Math.log1p(cable.alpha * warmer);
    }
    return y;
  });
}
