import { densityByDiameters, densityUnderWater } from '../../methods/jacket/density.ts';
import type { Known } from '../../methods/jacket/shares.ts';
import { type CableGroups, doubt } from '../rows/cableGroups.ts';
import type { Group } from '../rows/groups.ts';
import { CUT_TO_LENGTH } from '../rows/massRows.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';

const ROOT_THREE = Math.sqrt(3);
/** Air that clings to a jacket under water, relative standard deviation of the density. Common practice, no source. */
const AIR_UNDER_WATER = 0.005;

const knownOf = (g: Group): Known => ({
  value: g.mean,
  u: Math.hypot(Math.sqrt(g.scatter.variance), doubt(g) / ROOT_THREE),
});

/** The mean of what several pieces give; a common tool keeps its doubt however many there are. */
function together(all: readonly Known[]): Known | null {
  if (all.length === 0) return null;
  const value = all.reduce((sum, k) => sum + k.value, 0) / all.length;
  const apart =
    all.length > 1
      ? Math.sqrt(all.reduce((sum, k) => sum + (k.value - value) ** 2, 0) / (all.length - 1) / all.length)
      : 0;
  return { value, u: Math.hypot(Math.max(...all.map((k) => k.u)), apart) };
}

function lengthOf(specimen: string, cutLength: number | null, step: number, groups: CableGroups): Known | null {
  for (const quantity of ['specimen_length', 'conductor_length']) {
    const g = groups.on(specimen, quantity);
    if (g) return knownOf(g);
  }
  return cutLength === null ? null : { value: cutLength, u: Math.max(CUT_TO_LENGTH, step / 2) / ROOT_THREE };
}

/** Mass of the jacket per length of cable, kg/m, what would not come off the strands included; null where no jacket was weighed. */
export function jacketMassPerMetre({ specimens, groups }: CableReadings): Known | null {
  return together(
    specimens.flatMap(({ specimen, cutLength, cutLengthStep }) => {
      const jacket = groups.on(specimen, 'jacket_mass');
      const length = lengthOf(specimen, cutLength, cutLengthStep, groups);
      if (!jacket || !length) return [];
      const residue = groups.on(specimen, 'residue');
      const mass = knownOf(jacket);
      const value = (mass.value + (residue?.mean ?? 0)) / length.value;
      return [{ value, u: value * Math.hypot(mass.u / mass.value, length.u / length.value) }];
    }),
  );
}

export interface DensityFound {
  density: Known;
  by: 'weighed in water' | 'mass and diameters';
  from: string[];
}

/** Density of the jacket, kg/m³: weighed in air and under water where that was done, else from mass per metre and the wall. */
export function jacketDensity(
  c: CableReadings,
  massPerMetre: Known | null,
  outer: Known | null,
  wall: Known | null,
): DensityFound | null {
  const inWater = together(
    c.specimens.flatMap(({ specimen }) => {
      const air = c.groups.on(specimen, 'jacket_mass');
      const water = c.groups.on(specimen, 'submerged_mass', 'jacket');
      if (!air || !water || water.mean >= air.mean) return [];
      const found = densityUnderWater(knownOf(air), knownOf(water));
      return [{ value: found.value, u: Math.hypot(found.u, AIR_UNDER_WATER * found.value) }];
    }),
  );
  if (inWater) return { density: inWater, by: 'weighed in water', from: ['jacket_mass', 'submerged_mass'] };
  if (!massPerMetre || !outer || !wall || outer.value <= 2 * wall.value) return null;
  return {
    density: densityByDiameters(massPerMetre, outer, wall),
    by: 'mass and diameters',
    from: ['jacket_mass', 'outer_diameter', 'wall_thickness'],
  };
}
