import { group } from 'd3-array';
import { crossCheck } from '../../methods/jacket/crossCheck.ts';
import { materialsOfDensity } from '../../methods/jacket/density.ts';
import type { Known } from '../../methods/jacket/shares.ts';
import { angleOfPosition, meanToTwoDecimals, outOfRound, wallOfFace } from '../../methods/jacket/wall.ts';
import { mean } from '../../numerics/describe.ts';
import type { Reading } from '../../trial/trial.ts';
import { formatPlain } from '../../units/digits.ts';
import { iso6722LeastWall, METRIC_SIZES } from '../../units/standardSizes.ts';
import { diametersAndWall } from '../cable/geometry.ts';
import { wallDoubt } from '../cable/wallDoubt.ts';
import { listed } from '../flex/words.ts';
import { measuredFromU, withinLimits } from '../measured.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Measured } from '../schema.ts';
import type { JacketCable } from '../shapes/jacket.ts';
import { faceShares } from './faceShares.ts';
import { jacketDensity, jacketMassPerMetre } from './massAndDensity.ts';

const MM = 1000;
/** A claimed size belongs to a metric size when their areas are this near, by ratio. */
const SAME_SIZE = 0.15;

const known = (m: Measured | null): Known | null => m && { value: m.value / MM, u: m.u / MM };
const mm = (metres: number) => formatPlain(metres * MM, 3);

/** What is known of one cable's jacket as a piece of stuff: wall, evenness, shares, density. */
export function jacketCableOf(c: CableReadings, cable: CableFindings, level: number): JacketCable {
  // Of a cable that was never weighed the face may still have been read.
  const found: CableFindings = { ...cable, ...diametersAndWall(c.groups, level) };
  const readings = c.groups.of('wall_thickness').flatMap((g) => g.readings);
  const outer = known(found.outer_diameter);
  const wall = known(found.wall?.mean ?? null);
  const area = found.conductor_area && { value: found.conductor_area.value * 1e-6, u: found.conductor_area.u * 1e-6 };
  const perMetre = jacketMassPerMetre(c);
  const density = jacketDensity(c, perMetre, outer, wall);
  const measured = (k: Known, unit: string, scale: number, from: string[]): Measured =>
    withinLimits(measuredFromU(k.value, k.u, { scale, unit, level, from }), 0);
  const doubt = wallDoubt(c.groups);
  const face = faceOf(readings);
  const shown: JacketCable = {
    cable: found.cable,
    name: found.name,
    role: found.role,
    wall: found.wall && { mean: found.wall.mean, least: found.wall.least },
    wall_doubt: doubt,
    wall_readings: readings.length,
    // What is held back shows its readings, so that the slip can be found, and nothing made from them.
    ...(doubt === '' ? face : { stated: null, eccentricity: null, off_centre: null, round: face.round }),
    concentricity: found.wall?.concentricity ?? null,
    out_of_round: outOfRoundOf(c),
    cross_check: readings.length > 0 ? crossCheckOf(found, level) : null,
    ...faceShares(area, outer, wall, found, level),
    mass_per_metre: perMetre && measured(perMetre, 'g/m', 1000, ['jacket_mass', 'specimen_length']),
    density: density && measured(density.density, 'g/cm3', 1e-3, density.from),
    density_by: density?.by ?? null,
    ...hintsOf(density && measured(density.density, 'kg/m3', 1, density.from)),
    context: doubt === '' ? contextOf(found, readings) : [],
    sentence: '',
  };
  return { ...shown, sentence: wallSentence(shown) };
}

/** The readings themselves, and what the face with the most of them shows. */
function faceOf(readings: readonly Reading[]): Pick<JacketCable, 'stated' | 'eccentricity' | 'off_centre' | 'round'> {
  const round = readings.map((r) => ({
    reading: r.reading,
    specimen: r.specimen,
    position: r.position,
    angle_degrees: angleOfPosition(r.position),
    thickness_mm: r.value * MM,
  }));
  if (readings.length === 0) return { stated: null, eccentricity: null, off_centre: null, round };
  const placed = (rs: readonly Reading[]) =>
    rs.map((r) => ({ thickness: r.value, angle: angleOfPosition(r.position) }));
  const all = wallOfFace(placed(readings));
  const faces = [...group(readings, (r) => r.specimen).values()].sort((a, b) => b.length - a.length);
  const face = wallOfFace(placed(faces[0]));
  return {
    stated: { mean_mm: meanToTwoDecimals(all.mean) * MM, least_mm: all.least * MM },
    eccentricity: readings.length > 2 ? all.eccentricity : null,
    off_centre:
      face.offset === null || face.thinnestAt === null
        ? null
        : { distance_mm: face.offset * MM, thinnest_at_degrees: face.thinnestAt },
    round,
  };
}

/** Directions of the outer diameter apart, repeats of one direction as their mean; those of the piece with the most. */
function outOfRoundOf(c: CableReadings): number | null {
  const read = c.groups.of('outer_diameter').flatMap((g) => g.readings);
  const pieces = [...group(read, (r) => r.specimen).values()].map((of) =>
    [...group(of, (r) => r.position.trim().toLowerCase())].filter(([position]) => position !== ''),
  );
  const [most] = pieces.sort((a, b) => b.length - a.length);
  return most ? outOfRound(most.map(([, rs]) => mean(rs.map((r) => r.value)))) : null;
}

function crossCheckOf(found: CableFindings, level: number): JacketCable['cross_check'] {
  const { outer_diameter, bundle_diameter, wall } = found;
  const [outer, bundle, read] = [known(outer_diameter), known(bundle_diameter), known(wall?.mean ?? null)];
  if (!outer || !bundle || !read || outer.value <= bundle.value) return null;
  const check = crossCheck(outer, bundle, read);
  const u = Math.hypot(outer.u, bundle.u) / 2;
  const by = `Half the difference of the diameters is ${mm(check.byDiameters)} mm, the wall as read ${mm(read.value)} mm`;
  return {
    by_diameters: withinLimits(
      measuredFromU(check.byDiameters, u, {
        scale: MM,
        unit: 'mm',
        level,
        from: ['outer_diameter', 'conductor_diameter'],
      }),
      0,
    ),
    difference_mm: check.difference * MM,
    limit_mm: check.limit * MM,
    agrees: check.agrees,
    squeezed: check.squeezed,
    text: check.agrees
      ? `${by}: they agree.`
      : check.squeezed === 'outer diameter'
        ? `${by}: the cable over its jacket reads too thin, as jaws do that squeeze a soft jacket, or the bundle too thick. Read the girth with a paper strip instead.`
        : `${by}: the wall reads too thin, as jaws do that squeeze it, or the bundle was flattened. Read the wall at the cut face with a lens and a scale.`,
  };
}

function hintsOf(density: Measured | null): Pick<JacketCable, 'hints' | 'hint_text'> {
  if (!density) return { hints: [], hint_text: '' };
  const materials = materialsOfDensity(...density.interval);
  const value = formatPlain(density.value / 1000, 3);
  const hint_text =
    materials.length === 0
      ? `A density of ${value} g/cm³ is none that jackets usually have: weigh and measure again.`
      : `A density of ${value} g/cm³ would suit ${listed(materials.map((m) => m.name)).replace(/ and (?=[^,]*$)/, ' or ')}. A hint: density alone names no material.`;
  return { hints: materials.map((m) => ({ material: m.name, low: m.low / 1000, high: m.high / 1000 })), hint_text };
}

/** What road-vehicle standards ask of a cable of the claimed size: context, no claim of this cable. */
function contextOf(found: CableFindings, readings: readonly Reading[]): JacketCable['context'] {
  const claimed = found.label.claimed_area_mm2;
  if (claimed === null || readings.length === 0) return [];
  const [size] = [...METRIC_SIZES].sort((a, b) => Math.abs(Math.log(a / claimed)) - Math.abs(Math.log(b / claimed)));
  if (Math.abs(size / claimed - 1) > SAME_SIZE) return [];
  const least = Math.min(...readings.map((r) => r.value));
  return (['thick', 'thin'] as const).flatMap((kind) => {
    const limit = iso6722LeastWall(size, kind);
    if (!limit) return [];
    const compared = least >= limit.value ? 'not below that' : 'below that';
    return [
      {
        standard: `${limit.source.standard}, ${kind} wall, ${size} mm²`,
        least_mm: limit.value * MM,
        text: `A road-vehicle cable of ${size} mm² with a ${kind} wall has ${mm(limit.value)} mm at its least place (${limit.source.known}). The least reading here, ${mm(least)} mm, is ${compared}. The label claims no such standard unless it says so.`,
        source: `${limit.source.table}, ${limit.source.known}`,
      },
    ];
  });
}

function wallSentence({ wall, wall_doubt, wall_readings, concentricity, stated }: JacketCable): string {
  if (!wall) return wall_doubt;
  if (!stated) return `Wall ${formatPlain(wall.mean.value, 3)} mm, from the diameters; the face was not read.`;
  const even = concentricity ? `, the thinnest place ${(100 * concentricity.value).toFixed(0)} % of the thickest` : '';
  return `Wall ${stated.mean_mm.toFixed(2)} mm on average of ${wall_readings} readings, ${stated.least_mm.toFixed(2)} mm at its least${even}.`;
}
