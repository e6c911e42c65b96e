import { lnFigure } from '../../methods/assay/figures.ts';
import type { CableAssay } from '../../methods/assay/joint.ts';
import { mixtureMean, mixtureSd } from '../../numerics/mixture.ts';
import { measuredFromU } from '../measured.ts';
import { type CableGroups, doubt } from '../rows/cableGroups.ts';
import type { Group } from '../rows/groups.ts';
import type { CableFindings, Measured } from '../schema.ts';

const MM = 1e3;
const ROOT_THREE = Math.sqrt(3);

/** Mean of a quantity over all specimens, weighted by the number of readings, with its standard uncertainty; null when not read. */
export function meanOf(groups: readonly Group[]): { value: number; u: number } | null {
  if (groups.length === 0) return null;
  const n = groups.reduce((sum, g) => sum + g.n, 0);
  const value = groups.reduce((sum, g) => sum + g.n * g.mean, 0) / n;
  const scatter = groups.reduce((sum, g) => sum + (g.n / n) ** 2 * g.scatter.variance, 0);
  const limit = Math.max(...groups.map(doubt)) / ROOT_THREE;
  return { value, u: Math.hypot(Math.sqrt(scatter), limit) };
}

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
    mean: measuredFromU(m.value, m.u, { scale: MM, unit: 'mm', level, from }),
    least: measuredFromU(least, limit, { scale: MM, unit: 'mm', level, from }),
    // Least over greatest: of the several numbers that go by this name, the one that 1 means "even" for.
    concentricity:
      values.length > 2
        ? measuredFromU(least / most, (limit / most) * Math.hypot(1, least / most), {
            scale: 1,
            unit: '1',
            level,
            from,
          })
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
  return { mean, least: null, concentricity: null };
}

/** Metal as a share of the whole cut face: A / (π D² / 4). */
function metalOfSection(assay: CableAssay, outer: Measured | null, level: number): Measured | null {
  if (!outer || assay.components.length === 0) return null;
  const ln = lnFigure(assay, 'area');
  const D = outer.value / MM;
  const share = Math.exp(mixtureMean(ln)) / ((Math.PI * D * D) / 4);
  const relative = Math.hypot(mixtureSd(ln), (2 * outer.u) / outer.value);
  return measuredFromU(share, share * relative, {
    scale: 1,
    unit: '1',
    level,
    from: ['conductor_area', 'outer_diameter'],
  });
}

/** Diameters and wall as they were read, whether or not anything of the metal is known. */
export function diametersAndWall(groups: CableGroups, level: number) {
  const outer = diameter(groups, 'outer_diameter', level);
  const bundle = diameter(groups, 'conductor_diameter', level);
  return {
    outer_diameter: outer,
    bundle_diameter: bundle,
    wall: wallFromReadings(groups, level) ?? wallFromDiameters(outer, bundle, level),
  };
}

/** Diameters, wall and share of the section as they were read. */
export function geometryOf(groups: CableGroups, assay: CableAssay, level: number) {
  const read = diametersAndWall(groups, level);
  return { ...read, metal_of_section: metalOfSection(assay, read.outer_diameter, level) };
}
