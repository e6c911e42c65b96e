import type { OwnEffect } from '../../methods/assay/row.ts';
import { type CableGroups, doubt } from './cableGroups.ts';
import { effectsOf, ownNormal } from './effects.ts';
import type { Group } from './groups.ts';
import type { MeasuredRow } from './massRows.ts';
import type { StrandCount } from './strandCount.ts';
import type { ToolBox } from './tools.ts';

/** Strands of one cable differ in diameter by about this much, relative standard deviation. Common practice, no source. */
const STRAND_VARIATION = 0.005;

/** Diameter of one strand as a group of readings: by micrometer or caliper, or as turns side by side on a rod. */
export interface StrandDiameter {
  value: number;
  group: Group;
  /** What ln d does when the group's mean is off: 1/mean. */
  n: number;
}

/** The strand diameter by the tool that leaves the least doubt. */
export function strandDiameter(groups: CableGroups): StrandDiameter | null {
  const direct = mergedBySpecimen(groups.of('strand_diameter'));
  const candidates: StrandDiameter[] = direct.map((group) => ({ value: group.mean, group, n: group.n }));
  for (const specimen of groups.specimensWith('strand_row_width')) {
    const width = groups.on(specimen, 'strand_row_width');
    const count = groups.on(specimen, 'strand_row_count');
    if (width && count) candidates.push({ value: width.mean / count.mean, group: width, n: count.mean });
  }
  const relative = (c: StrandDiameter) => doubt(c.group) / c.group.mean;
  return candidates.reduce<StrandDiameter | null>((a, b) => (a === null || relative(b) < relative(a) ? b : a), null);
}

/** Readings by one tool on several specimens of a cable are repeats of one thing: the strand is the same everywhere. */
function mergedBySpecimen(groups: readonly Group[]): Group[] {
  const byTool = new Map<string, Group>();
  for (const g of groups) {
    const seen = byTool.get(g.tool.id);
    if (!seen) {
      byTool.set(g.tool.id, g);
      continue;
    }
    const n = seen.n + g.n;
    byTool.set(g.tool.id, {
      ...seen,
      n,
      readings: [...seen.readings, ...g.readings],
      mean: (seen.mean * seen.n + g.mean * g.n) / n,
      step: Math.max(seen.step, g.step),
    });
  }
  return [...byTool.values()];
}

/** The strand count's own doubt; one unknown however many rows use the count. */
export function countEffect(count: StrandCount): OwnEffect[] {
  if (count.sd === 0) return [];
  return [
    { input: 'strand count', label: 'Strand count', slope: 1, variance: (count.sd / count.value) ** 2, dof: count.dof },
  ];
}

/** Doubt of an area that was read on `looked` strands of a bundle; a single solid wire differs from nobody. */
function strandsThatDiffer(count: number, looked: number): OwnEffect[] {
  if (count < 2) return [];
  return [ownNormal('strand to strand', 'Strands that differ', (2 * STRAND_VARIATION) / Math.sqrt(looked))];
}

/** Area from count and diameter: n π d² / 4. */
function geometryRow(count: StrandCount, diameter: StrandDiameter, tools: ToolBox): MeasuredRow {
  const effects = effectsOf(diameter.group, tools, 'm', 1 / diameter.group.mean, 2);
  return {
    kind: 'strands',
    quantity: 'strand_count',
    text: 'Strand count and strand diameter',
    specimen: null,
    y: Math.log((count.value * Math.PI * diameter.value ** 2) / 4),
    shared: effects.shared,
    own: [...countEffect(count), ...effects.own, ...strandsThatDiffer(count.value, diameter.n)],
    temperature: null,
    mean: (count.value * Math.PI * diameter.value ** 2 * 1e6) / 4,
    unit: 'mm²',
    n: diameter.n,
    readings: [...count.readings, ...diameter.group.readings.map((r) => r.reading)],
  };
}

/** Mass per length of one straightened strand, times the count: A · ρm without the lay. */
function weighedStrandRow(
  specimen: string,
  count: StrandCount,
  groups: CableGroups,
  tools: ToolBox,
): MeasuredRow | null {
  const mass = groups.on(specimen, 'strand_sample_mass');
  const sample = groups.on(specimen, 'strand_sample_count');
  const length = groups.on(specimen, 'strand_sample_length');
  if (!mass || !sample || !length || count.how === 'by weight') return null;
  const byMass = effectsOf(mass, tools, 'kg', 1 / mass.mean, 1);
  const byLength = effectsOf(length, tools, 'm', 1 / length.mean, -1);
  return {
    kind: 'strand mass',
    quantity: 'strand_sample_mass',
    text: `Mass of ${Math.round(sample.mean)} strands, straightened`,
    specimen,
    y: Math.log((count.value * mass.mean) / (sample.mean * length.mean)),
    shared: [...byMass.shared, ...byLength.shared],
    own: [...countEffect(count), ...byMass.own, ...byLength.own, ...strandsThatDiffer(count.value, sample.mean)],
    temperature: null,
    mean: mass.mean * 1000,
    unit: 'g',
    n: mass.n,
    readings: [mass, sample, length].flatMap((g) => g.readings.map((r) => r.reading)),
  };
}

/** Rows that rest on the strands: by diameter, and by the weight of a few of them. */
export function strandRows(count: StrandCount | null, groups: CableGroups, tools: ToolBox): MeasuredRow[] {
  if (!count) return [];
  const diameter = strandDiameter(groups);
  const rows: MeasuredRow[] = diameter ? [geometryRow(count, diameter, tools)] : [];
  for (const specimen of groups.specimensWith('strand_sample_mass')) {
    const row = weighedStrandRow(specimen, count, groups, tools);
    if (row) rows.push(row);
  }
  return rows;
}
