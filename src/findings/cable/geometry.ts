import { lnFigure } from '../../methods/assay/figures.ts';
import type { CableAssay } from '../../methods/assay/joint.ts';
import { mixtureMean, mixtureSd } from '../../numerics/mixture.ts';
import { measuredFromU, withinLimits } from '../measured.ts';
import { type CableGroups, doubt } from '../rows/cableGroups.ts';
import type { CableFindings, Measured } from '../schema.ts';
import { meanOf } from './meanOf.ts';
import { wallDoubt } from './wallDoubt.ts';

const MM = 1e3;
const ROOT_THREE = Math.sqrt(3);

function diameter(groups: CableGroups, quantity: string, level: number): Measured | null {
  const m = meanOf(groups.of(quantity));
  return m && measuredFromU(m.value, m.u, { scale: MM, unit: 'mm', level, from: [quantity] });
}

function wallFromReadings(groups: CableGroups, level: number): CableFindings['wall'] {
  const read = groups.of('wall_thickness');
  const m = meanOf(read);
  if (!m) return null;
  const values = read.flatMap((g) => g.readings.map((r) => r.value));
  const limit = Math.max(...read.map(doubt)) / ROOT_THREE;
  const least = Math.min(...values);
  const most = Math.max(...values);
  const from = ['wall_thickness'];
  return {
    mean: withinLimits(measuredFromU(m.value, m.u, { scale: MM, unit: 'mm', level, from }), 0),
    least: withinLimits(measuredFromU(least, limit, { scale: MM, unit: 'mm', level, from }), 0),
    // Least over greatest: of the several numbers that go by this name, the one that 1 means "even" for.
    concentricity:
      values.length > 2
        ? withinLimits(
            measuredFromU(least / most, (limit / most) * Math.hypot(1, least / most), {
              scale: 1,
              unit: '1',
              level,
              from,
            }),
            0,
            1,
          )
        : null,
  };
}

function wallFromDiameters(outer: Measured | null, bundle: Measured | null, level: number): CableFindings['wall'] {
  if (!outer || !bundle || outer.value <= bundle.value) return null;
  const u = Math.hypot(outer.u, bundle.u) / 2;
  const mean = measuredFromU((outer.value - bundle.value) / 2, u, {
    scale: 1,
    unit: 'mm',
    level,
    from: ['outer_diameter', 'conductor_diameter'],
  });
  return { mean: withinLimits(mean, 0), least: null, concentricity: null };
}

/** Metal as a share of the whole cut face: A / (π D² / 4). */
function metalOfSection(assay: CableAssay, outer: Measured | null, level: number): Measured | null {
  if (!outer || assay.components.length === 0) return null;
  const ln = lnFigure(assay, 'area');
  const D = outer.value / MM;
  const share = Math.exp(mixtureMean(ln)) / ((Math.PI * D * D) / 4);
  const relative = Math.hypot(mixtureSd(ln), (2 * outer.u) / outer.value);
  const found = measuredFromU(share, share * relative, {
    scale: 1,
    unit: '1',
    level,
    from: ['conductor_area', 'outer_diameter'],
  });
  return withinLimits(found, 0, 1);
}

/** Diameters and wall as they were read, whether or not anything of the metal is known. A wall that cannot be is held back. */
export function diametersAndWall(groups: CableGroups, level: number) {
  const outer = diameter(groups, 'outer_diameter', level);
  const bundle = diameter(groups, 'conductor_diameter', level);
  return {
    outer_diameter: outer,
    bundle_diameter: bundle,
    wall:
      wallDoubt(groups) === '' ? (wallFromReadings(groups, level) ?? wallFromDiameters(outer, bundle, level)) : null,
  };
}

/** Diameters, wall and share of the section as they were read. */
export function geometryOf(groups: CableGroups, assay: CableAssay, level: number) {
  const read = diametersAndWall(groups, level);
  return { ...read, metal_of_section: metalOfSection(assay, read.outer_diameter, level) };
}
