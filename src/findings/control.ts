import type { SharedInput } from '../methods/assay/row.ts';
import { COPPER_ALPHA, MASS_RESISTIVITY_OF_COPPER } from '../methods/metal/constants.ts';
import { measuredFromU, plusMinus } from './measured.ts';
import type { CableReadings } from './rows/rowsOfTrial.ts';
import type { Control } from './schema.ts';

/** Building wire conducts between 100 and 101.5 % of the standard; half that spread, relative. Common practice, no source. */
const WIRE_SPREAD = 0.006;
/** Further than this from copper's figure, in standard uncertainties, the tools do not say copper. */
const AGREES_WITHIN = 2.5;

/**
 * The control piece on its own: mass per length times ohms per length of plain solid copper wire must come out at copper's
 * mass resistivity (no lay). One check of scale, rule, meter and thermometer together.
 *
 * Worked from its own readings and the tools' limits only, not from the joint assay, which takes the wire to be copper.
 */
export function controlOf(c: CableReadings, inputs: readonly SharedInput[], level: number): Control | null {
  const mass = c.rows.find((r) => r.kind === 'mass');
  const ohms = c.rows.find((r) => r.kind === 'resistance');
  if (!mass || !ohms) return null;
  const above20 = ohms.temperature?.above20 ?? 0;
  const value = Math.exp(mass.y + ohms.y) / (1 + COPPER_ALPHA * above20);
  const sd = new Map(inputs.map((i) => [i.input, i.sd]));
  let variance = 0;
  for (const row of [mass, ohms]) {
    for (const o of row.own) variance += o.slope ** 2 * o.variance;
    for (const s of row.shared) variance += (s.slope * s.power * (sd.get(s.input) ?? 0)) ** 2;
  }
  if (ohms.temperature) variance += (COPPER_ALPHA * (sd.get(ohms.temperature.input) ?? 0)) ** 2;
  const u = value * Math.sqrt(variance);
  const found = measuredFromU(value, u, {
    scale: 1e3,
    unit: 'ohm g/m2',
    level,
    from: ['conductor_mass', 'resistance'],
  });
  const expected = MASS_RESISTIVITY_OF_COPPER * 1e3;
  const distance = (found.value - expected) / Math.hypot(found.u, WIRE_SPREAD * expected);
  const agrees = Math.abs(distance) <= AGREES_WITHIN;
  const figure = `${found.value.toFixed(4)} ± ${plusMinus(found).toFixed(4)} Ω·g/m²`;
  return {
    cable: c.cable.cable,
    mass_resistivity: found,
    expected,
    distance,
    agrees,
    sentence: agrees
      ? `Our tools said copper for copper: plain building wire came out at ${figure}, and copper is ${expected.toFixed(4)}.`
      : `The tools do not agree on copper: plain building wire came out at ${figure}, and copper is ${expected.toFixed(4)}. Check scale, rule, meter and thermometer before anything is said of the cables.`,
  };
}
