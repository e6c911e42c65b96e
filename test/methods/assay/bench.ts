/** Invented cables with their truth, read with invented tools, as rows of the assay: what the tests of this folder share. */
import type { AssayCable, AssayRow, OwnEffect, SharedInput } from '../../../src/methods/assay/row.ts';
import { METALS } from '../../../src/methods/metal/hypotheses.ts';

/** What a cable really is: m², lay factor, kg/m³, Ω·m at 20 °C. */
export interface Truth {
  area: number;
  lay: number;
  density: number;
  resistivity: number;
}

/** The middle of what the assay expects of bare copper: every reading of such a cable agrees with every other. */
export const EXPECTED_COPPER = { lay: Math.exp(0.034), density: 8890, resistivity: 1.7241e-8 / 1.004 };
export const COPPER_ALPHA = 0.00393;

export const copperOf = (mm2: number, more: Partial<Truth> = {}): Truth => ({
  area: mm2 * 1e-6,
  ...EXPECTED_COPPER,
  ...more,
});

const uniform = (input: string, limit: number, unit: string): SharedInput => ({
  input,
  label: `${input}, its limit`,
  limit,
  unit,
  shape: 'uniform',
  sd: limit / Math.sqrt(3),
  assumed: false,
});

/** Careful hobby tools: scale ±0.03 g, rule ±0.5 mm, meter ±(0.5 % + 2 µΩ), thermometer ±1 K, micrometer ±4 µm. */
export function tools(factor = 1): SharedInput[] {
  return [
    uniform('scale', 3e-5 * factor, 'kg'),
    uniform('rule', 5e-4 * factor, 'm'),
    uniform('meter gain', 0.005 * factor, '1'),
    uniform('meter zero', 2e-6 * factor, 'ohm'),
    uniform('thermometer', 1 * factor, 'K'),
    uniform('micrometer', 4e-6 * factor, 'm'),
  ];
}

export interface Readings {
  /** Lengths in m of the pieces weighed. */
  weighed?: readonly number[];
  /** Distance in m between the voltage contacts, and how warm the copper was, K above 20 °C. */
  ohmed?: { over: number; above20?: number };
  /** Strands counted and gauged. */
  strands?: number;
  density?: boolean;
}

/** Shares by which readings are off, in logs. */
export interface Slips {
  mass?: number;
  resistance?: number;
  strands?: number;
}

const own = (input: string, sd: number, dof = Number.POSITIVE_INFINITY): OwnEffect => ({
  input,
  label: input,
  slope: 1,
  variance: sd * sd,
  dof,
});

export function massRow(t: Truth, length: number, name: string, slip = 0): AssayRow {
  const mass = t.area * t.lay * t.density * length;
  return {
    kind: 'mass',
    text: `Mass of ${name}`,
    specimen: name,
    y: Math.log(mass / length) + slip,
    shared: [
      { input: 'scale', slope: 1 / mass, power: 1 },
      { input: 'rule', slope: 1 / length, power: -1 },
    ],
    own: [own(`${name} itself`, 0.002)],
    temperature: null,
  };
}

export function ohmsRow(t: Truth, over: number, above20: number, slip = 0): AssayRow {
  const factor = 1 + COPPER_ALPHA * above20;
  const ohms = (t.resistivity * factor * t.lay * over) / t.area;
  return {
    kind: 'resistance',
    text: 'Resistance',
    specimen: null,
    y: Math.log(ohms / over) + slip,
    shared: [
      { input: 'meter gain', slope: 1, power: 1 },
      { input: 'meter zero', slope: 1 / ohms, power: 1 },
    ],
    own: [own('contacts', 0.001)],
    temperature: { above20, input: 'thermometer' },
  };
}

export function strandsRow(t: Truth, count: number, slip = 0): AssayRow {
  const diameter = Math.sqrt((4 * t.area) / (Math.PI * count));
  return {
    kind: 'strands',
    text: 'Strands',
    specimen: null,
    y: Math.log(t.area) + slip,
    shared: [{ input: 'micrometer', slope: 1 / diameter, power: 2 }],
    own: [own('strand count', 0.003)],
    temperature: null,
  };
}

export function densityRow(t: Truth): AssayRow {
  const weighed = t.area * t.density * 0.1;
  return {
    kind: 'density',
    text: 'Density',
    specimen: null,
    y: Math.log(t.density),
    shared: [{ input: 'scale', slope: 5 / weighed, power: 1 }],
    own: [own('air under water', 0.01)],
    temperature: null,
  };
}

/** The rows that such readings of such a cable give. */
export function cableOf(cable: string, t: Truth, readings: Readings, slips: Slips = {}): AssayCable {
  const { weighed = [], ohmed, strands, density } = readings;
  return {
    cable,
    rows: [
      ...weighed.map((length, i) => massRow(t, length, `${cable}-${i + 1}`, slips.mass)),
      ...(ohmed ? [ohmsRow(t, ohmed.over, ohmed.above20 ?? 0, slips.resistance)] : []),
      ...(strands ? [strandsRow(t, strands, slips.strands)] : []),
      ...(density ? [densityRow(t)] : []),
    ],
    sight: Object.fromEntries(METALS.map((m) => [m, 0])),
    control: false,
  };
}

export const EVERYTHING: Readings = { weighed: [0.3], ohmed: { over: 1 }, strands: 665 };
export const MASS_AND_OHMS: Readings = { weighed: [0.15], ohmed: { over: 1 } };
