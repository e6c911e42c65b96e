import { layFactorOfBundle } from '../../methods/assay/lay.ts';
import { WATER_DENSITY } from '../../methods/metal/constants.ts';
import type { CableGroups } from './cableGroups.ts';
import { effectsOf, ownNormal } from './effects.ts';
import type { MeasuredRow } from './massRows.ts';
import type { ToolBox } from './tools.ts';

/** Bundles are laid within bundles, so the outer lay is the least there is: the factor may be up to 2 % more. Common practice, no source. */
const LAY_WITHIN = { mean: 0.01, sd: 0.01 };
/** Air that clings between strands under water, relative standard deviation of the density. Common practice, no source. */
const AIR_UNDER_WATER = 0.01;

/** Lay factor from the length of lay and the bundle's diameter. */
function layRow(groups: CableGroups): MeasuredRow | null {
  const [lay] = groups.of('lay_length');
  const [bundle] = groups.of('conductor_diameter');
  if (!lay || !bundle) return null;
  return {
    kind: 'lay',
    quantity: 'lay_length',
    text: 'Lay length',
    specimen: lay.specimen,
    y: Math.log(layFactorOfBundle(bundle.mean, lay.mean)) + LAY_WITHIN.mean,
    shared: [],
    own: [ownNormal('lay within lay', 'Lay of bundles within bundles', LAY_WITHIN.sd)],
    temperature: null,
    mean: lay.mean * 1000,
    unit: 'mm',
    n: lay.n,
    readings: [...lay.readings, ...bundle.readings].map((r) => r.reading),
  };
}

/** Density of the metal weighed in air and under water: ρ = m · ρ(water) / (m − m under water). */
function densityRow(specimen: string, groups: CableGroups, tools: ToolBox): MeasuredRow | null {
  const under = groups.on(specimen, 'submerged_mass', 'conductor') ?? groups.on(specimen, 'submerged_mass', '');
  const air = groups.on(specimen, 'conductor_mass');
  if (!under || !air || under.mean >= air.mean) return null;
  const lost = air.mean - under.mean;
  // d ln ρ = dm/m − (dm − dm')/(m − m'): the two weighings pull opposite ways through the loss.
  const byAir = effectsOf(air, tools, 'kg', 1 / air.mean - 1 / lost, 1);
  const byWater = effectsOf(under, tools, 'kg', 1 / lost, 1);
  return {
    kind: 'density',
    quantity: 'submerged_mass',
    text: 'Conductor under water',
    specimen,
    y: Math.log((air.mean * WATER_DENSITY) / lost),
    shared: [...byAir.shared, ...byWater.shared],
    own: [...byAir.own, ...byWater.own, ownNormal('air under water', 'Air between strands', AIR_UNDER_WATER)],
    temperature: null,
    mean: under.mean * 1000,
    unit: 'g',
    n: under.n,
    readings: [...air.readings, ...under.readings].map((r) => r.reading),
  };
}

/** Rows that help the assay without touching the area: lay length, density under water. */
export function otherRows(groups: CableGroups, tools: ToolBox): MeasuredRow[] {
  const lay = layRow(groups);
  const densities = groups
    .specimensWith('submerged_mass')
    .flatMap((specimen) => densityRow(specimen, groups, tools) ?? []);
  return [...(lay ? [lay] : []), ...densities];
}
