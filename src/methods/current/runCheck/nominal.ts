import { awgArea, awgName } from '../../../units/gauge.ts';
import { METRIC_SIZES } from '../../../units/standardSizes.ts';
import { bundleDiameter } from '../../decide/conductorSize.ts';
import { COPPER_DENSITY, COPPER_RESISTIVITY } from '../../metal/constants.ts';
import { conductorMetal, USUAL_JACKET } from '../materials.ts';
import { MODEL_LOSS_U } from '../thermal/calibrate.ts';
import { jacketArea } from '../thermal/run.ts';
import type { RunCable } from './question.ts';

/** Rope-laid flexible copper is about 4 % longer in its strands than the cable. ASTM B172, pattern of lay allowances, from memory. */
const USUAL_LAY = 1.04;
/** Wall of a flexible battery cable, m: 1 mm and a ninth of the bundle. Common practice, no source. */
const USUAL_WALL = { least: 1e-3, share: 0.11 };
/** Jackets of PVC and rubber, kg/m³. Common practice, no source. */
const USUAL_JACKET_DENSITY = 1400;
/** Resistance of a nominal size may lie so far either way: lay, purity, the allowance on area. Common practice, no source. */
const NOMINAL_SPREAD = 0.03;

export const NOMINAL_AWG: readonly number[] = [8, 6, 4, 2, 1, 0, -1, -2, -3];
/** Size names from 10 mm² on, as the tables have them. */
const LEAST_METRIC = 10;
export const NOMINAL_METRIC: readonly number[] = METRIC_SIZES.filter((mm2) => mm2 >= LEAST_METRIC);

/** A flexible copper cable of exactly its nominal area, rated as said: what a label of that size would mean. */
export function nominalCable(id: string, name: string, area: number, rating: number): RunCable {
  const bundle = bundleDiameter(area);
  const outerDiameter = bundle + 2 * (USUAL_WALL.least + USUAL_WALL.share * bundle);
  const ohms = (COPPER_RESISTIVITY * USUAL_LAY) / area;
  const metalVolume = area * USUAL_LAY;
  const jacket = jacketArea({ outerDiameter, bundleDiameter: bundle });
  return {
    id,
    name,
    measured: false,
    heated: {
      metal: conductorMetal('copper'),
      resistance20: ohms,
      metalVolume,
      bundleDiameter: bundle,
      outerDiameter,
      jacket: USUAL_JACKET,
    },
    ohmsPerMetre: { value: ohms, low: ohms * (1 - NOMINAL_SPREAD), high: ohms * (1 + NOMINAL_SPREAD) },
    area,
    rating,
    ratingAssumed: false,
    loss: { factor: 1, u: MODEL_LOSS_U },
    massPerMetre: metalVolume * COPPER_DENSITY + jacket * USUAL_JACKET_DENSITY,
    price: null,
  };
}

/** The nominal sizes of one system, the thinnest first. @param rating K of the jacket that they are taken to have. */
export function nominalSizes(system: 'awg' | 'mm2', rating: number): RunCable[] {
  if (system === 'awg')
    return NOMINAL_AWG.map((n) => nominalCable(`nominal ${awgName(n)} AWG`, `${awgName(n)} AWG`, awgArea(n), rating));
  return NOMINAL_METRIC.map((mm2) => nominalCable(`nominal ${mm2} mm2`, `${mm2} mm²`, mm2 * 1e-6, rating));
}
