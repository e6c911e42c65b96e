import { type FourWire, type FourWirePoint, fourWire } from '../../methods/current/fourWire.ts';
import { mean } from '../../numerics/describe.ts';
import type { Reading, Specimen, Trial } from '../../trial/trial.ts';
import { isOrdinaryMultimeter } from '../../trial/usualLimits.ts';
import { TWENTY_CELSIUS } from '../../units/dimension.ts';
import type { CableGroups } from './cableGroups.ts';
import { effectsOf, ownUniform } from './effects.ts';
import type { Group } from './groups.ts';
import type { MeasuredRow } from './massRows.ts';
import { ownVariance, testPairsOf, toolShare } from './testPairs.ts';
import { TARGET_TEMPERATURE_HALF_WIDTH, type ToolBox, UNTAKEN_TEMPERATURE } from './tools.ts';
import { trustedLengthStep } from './trustedStep.ts';

/** How far a voltage contact may stand from where it was measured: ±1 mm and a tape's 0.1 %. Common practice, no source. */
const CONTACT_PLACING = 1e-3;
const CONTACT_TAPE = 1e-3;

/** Why a resistance could not be used, in words. */
export interface Unusable {
  specimen: string;
  code: string;
  text: string;
}

/** The copper's temperature at a group of readings, with the shared input that its error is. */
function temperatureOf(readings: readonly Reading[], trial: Trial, tools: ToolBox) {
  const taken = readings.flatMap((r) => (r.temperature === null ? [] : [r.temperature]));
  if (taken.length) return { kelvin: mean(taken), input: tools.thermometer().input };
  if (trial.targetTemperature !== null)
    return {
      kelvin: trial.targetTemperature,
      input: tools.untakenTemperature(TARGET_TEMPERATURE_HALF_WIDTH).input,
    };
  return {
    kelvin: UNTAKEN_TEMPERATURE.middle,
    input: tools.untakenTemperature(UNTAKEN_TEMPERATURE.halfWidth).input,
  };
}

/** Distance between the voltage contacts, m: as read, else null. */
function contactDistance(g: Group): { value: number; step: number } | null {
  const known = g.readings.flatMap((r) => (r.atLength === null ? [] : [r.atLength]));
  if (known.length === 0) return null;
  return { value: mean(known), step: trustedLengthStep(Math.max(...g.readings.map((r) => r.atLengthStep))) };
}

function rowFrom(g: Group, specimen: Specimen, trial: Trial, tools: ToolBox): MeasuredRow | Unusable {
  const unusable = (code: string, text: string): Unusable => ({ specimen: g.specimen, code, text });
  if (isOrdinaryMultimeter(g.tool.kind))
    return unusable(
      'two-wire-meter',
      `The resistance of ${specimen.code || g.specimen} was read with an ordinary multimeter. Its leads and contacts are tenths of an ohm, this cable is thousandths: the reading is left out. Use a four-wire meter, or a known current and a millivolt reading.`,
    );
  const at = contactDistance(g);
  if (!at)
    return unusable(
      'no-contact-distance',
      `The ohms of ${specimen.code || g.specimen} have no distance between the voltage contacts, so they say nothing per metre. Add it at the Bench.`,
    );
  const { kelvin, input } = temperatureOf(g.readings, trial, tools);
  // Repeats over differing distances are averaged per metre; the scatter stays that of the ohms.
  const perMetre = mean(g.readings.map((r) => r.value / (r.atLength ?? at.value)));
  const effects = effectsOf(g, tools, 'ohm', 1 / g.mean, 1);
  const placing = (CONTACT_PLACING + at.step / 2) / at.value + CONTACT_TAPE;
  return {
    kind: 'resistance',
    quantity: 'resistance',
    text: `Resistance over ${Math.round(at.value * 1000)} mm`,
    specimen: specimen.specimen,
    y: Math.log(perMetre),
    shared: effects.shared,
    own: [...effects.own, ownUniform(`${g.specimen} contacts`, 'Where the voltage contacts stood', placing)],
    temperature: { above20: kelvin - TWENTY_CELSIUS, input },
    mean: g.mean * 1000,
    unit: 'mΩ',
    n: g.n,
    readings: g.readings.map((r) => r.reading),
  };
}

/**
 * Voltages and currents taken together (same `set`), turned into one resistance: the slope of V on I where several currents or
 * both polarities were taken (see methods/current/fourWire.ts). null when they give none, which the part on current explains.
 */
function fromVoltageAndCurrent(specimen: string, groups: CableGroups): Group | null {
  const pairs = testPairsOf(specimen, groups);
  if (!pairs) return null;
  const found = resistanceOrNull(pairs.points);
  if (!found) return null;
  const { volts, amps } = pairs;
  const value = found.resistance;
  return {
    ...volts,
    quantity: 'resistance',
    readings: pairs.pairs.map(({ voltage }) => ({
      ...voltage,
      quantity: 'resistance',
      value,
      atLength: pairs.atLength,
    })),
    n: pairs.pairs.length,
    mean: value,
    step: 0,
    scatter: ownVariance(pairs, found),
    tool: {
      ...volts.tool,
      // A multimeter is no ohmmeter for this cable, but its millivolts beside a known current are as good as any.
      kind: 'voltage and current',
      id: `${volts.tool.id} with ${amps.tool.id}`,
      name: `${volts.tool.name} with ${amps.tool.name}`,
      limit: {
        absolute: 0,
        fraction: toolShare(pairs, found.way),
        assumed: volts.tool.limit.assumed || amps.tool.limit.assumed,
      },
    },
  };
}

function resistanceOrNull(points: readonly FourWirePoint[]): FourWire | null {
  try {
    return fourWire(points);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Resistance rows of one specimen: one for each meter used on it. */
export function resistanceRows(
  specimen: Specimen,
  groups: CableGroups,
  trial: Trial,
  tools: ToolBox,
): (MeasuredRow | Unusable)[] {
  const direct = groups.all.filter((g) => g.specimen === specimen.specimen && g.quantity === 'resistance');
  const derived = fromVoltageAndCurrent(specimen.specimen, groups);
  return [...direct, ...(derived ? [derived] : [])].map((g) => rowFrom(g, specimen, trial, tools));
}
