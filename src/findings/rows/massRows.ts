import type { AssayRow, OwnEffect, SharedEffect } from '../../methods/assay/row.ts';
import type { Specimen } from '../../trial/trial.ts';
import type { CableGroups } from './cableGroups.ts';
import { effectsOf, ownNormal, ownUniform } from './effects.ts';
import type { Group } from './groups.ts';
import type { ToolBox } from './tools.ts';

/** A row with what the findings say about it. */
export interface MeasuredRow extends AssayRow {
  quantity: string;
  /** In `unit`, for showing. */
  mean: number;
  unit: string;
  n: number;
  readings: string[];
}

/** Real difference of metal per length between specimens of one cable, relative. Tried by simulation with 0.2 %. */
export const SPECIMEN_VARIATION = 0.002;
/**
 * Allowance for what redundancy cannot see: talc, oxide, paper shreds, a cut face not quite square. Uniform within ±0.35 %
 * of mass, common to a cable. Common practice, no source.
 */
export const UNSEEN_ON_MASS = 0.0035;
/** A length that was only cut to, not measured, m. Common practice, no source. */
export const CUT_TO_LENGTH = 1e-3;

/** Length of conductor on a specimen and what it does to ln(mass / length); null when no length is known. */
export interface KnownLength {
  value: number;
  shared: SharedEffect[];
  own: OwnEffect[];
  from: string;
  readings: string[];
}

/** The best length there is: of the bare conductor, else of the piece, else as it was cut to. */
export function lengthOf(specimen: Specimen, groups: CableGroups, tools: ToolBox): KnownLength | null {
  for (const quantity of ['conductor_length', 'specimen_length']) {
    const g = groups.on(specimen.specimen, quantity);
    if (!g) continue;
    const effects = effectsOf(g, tools, 'm', 1 / g.mean, -1);
    return { value: g.mean, ...effects, from: quantity, readings: g.readings.map((r) => r.reading) };
  }
  if (specimen.cutLength === null) return null;
  const half = Math.max(CUT_TO_LENGTH, specimen.cutLengthStep / 2) / specimen.cutLength;
  return {
    value: specimen.cutLength,
    shared: [],
    own: [ownUniform(`${specimen.specimen} cut length`, 'Length as cut, not measured', half)],
    from: 'cut_length',
    readings: [],
  };
}

interface Part {
  group: Group;
  sign: 1 | -1;
}

/** The weighings that make up the conductor's mass: itself, or the whole less everything else. */
function partsOf(specimen: string, groups: CableGroups): Part[] | null {
  const part = (quantity: string, sign: 1 | -1): Part[] => {
    const group = groups.on(specimen, quantity);
    return group ? [{ group, sign }] : [];
  };
  const corrections = [...part('strands_lost', 1), ...part('residue', -1)];
  const conductor = part('conductor_mass', 1);
  if (conductor.length) return [...conductor, ...corrections];
  const whole = part('specimen_mass', 1);
  const jacket = part('jacket_mass', -1);
  if (whole.length && jacket.length) return [...whole, ...jacket, ...part('separator_mass', -1)];
  return null;
}

/** Mass per length of one specimen's conductor as a row of the assay; null when it was not weighed or has no length. */
export function massRow(specimen: Specimen, groups: CableGroups, tools: ToolBox): MeasuredRow | null {
  const parts = partsOf(specimen.specimen, groups);
  const length = parts && lengthOf(specimen, groups, tools);
  if (!parts || !length) return null;
  const mass = parts.reduce((sum, p) => sum + p.sign * p.group.mean, 0);
  if (!(mass > 0)) return null;
  const effects = parts.map((p) => effectsOf(p.group, tools, 'kg', p.sign / mass, 1));
  const byDifference = parts[0].group.quantity !== 'conductor_mass';
  const over = `over ${Math.round(length.value * 1000)} mm`;
  return {
    kind: 'mass',
    quantity: 'conductor_mass',
    text: byDifference ? `Conductor mass by difference, ${over}` : `Conductor mass ${over}`,
    specimen: specimen.specimen,
    y: Math.log(mass / length.value),
    shared: [...effects.flatMap((e) => e.shared), ...length.shared],
    own: [
      ...effects.flatMap((e) => e.own),
      ...length.own,
      ownNormal(`${specimen.specimen} itself`, 'Difference between specimens', SPECIMEN_VARIATION),
      ownUniform('unseen on mass', 'What else weighs, and cut faces', UNSEEN_ON_MASS),
    ],
    temperature: null,
    mean: mass * 1000,
    unit: 'g',
    n: parts[0].group.n,
    readings: [...parts.flatMap((p) => p.group.readings.map((r) => r.reading)), ...length.readings],
  };
}
