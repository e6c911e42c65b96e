import { mean } from '../../numerics/describe.ts';
import type { Reading, Specimen, Trial } from '../../trial/trial.ts';
import { isOrdinaryMultimeter } from '../../trial/usualLimits.ts';
import { TWENTY_CELSIUS } from '../../units/dimension.ts';
import type { CableGroups } from './cableGroups.ts';
import { effectsOf, ownUniform } from './effects.ts';
import type { Group } from './groups.ts';
import type { MeasuredRow } from './massRows.ts';
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
      `The resistance of ${g.specimen} was read with an ordinary multimeter. Its leads and contacts are tenths of an ohm, this cable is thousandths: the reading is left out. Use a four-wire meter, or a known current and a millivolt reading.`,
    );
  const at = contactDistance(g);
  if (!at)
    return unusable(
      'no-contact-distance',
      `The resistance of ${g.specimen} has no distance between the voltage contacts, so it says nothing per metre. Enter at_length.`,
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

/** Voltage and current taken together (same `set`), turned into resistances: |V| / |I|, both polarities alike. */
function fromVoltageAndCurrent(specimen: string, groups: CableGroups): Group | null {
  const volts = groups.on(specimen, 'test_voltage');
  const amps = groups.on(specimen, 'test_current');
  if (!volts || !amps) return null;
  const readings = volts.readings.flatMap((v) => {
    const i = amps.readings.find((a) => a.set === v.set);
    if (!i || i.value === 0) return [];
    const value = Math.abs(v.value / i.value);
    const step = value * (v.step / Math.abs(v.value) + i.step / Math.abs(i.value));
    return [{ ...v, quantity: 'resistance', value, step, atLength: v.atLength ?? i.atLength }];
  });
  if (readings.length === 0) return null;
  const relative = (g: Group) => g.tool.limit.fraction + g.tool.limit.absolute / Math.abs(g.mean);
  return {
    ...volts,
    quantity: 'resistance',
    readings,
    n: readings.length,
    mean: mean(readings.map((r) => r.value)),
    step: Math.max(...readings.map((r) => r.step)),
    tool: {
      ...volts.tool,
      id: `${volts.tool.id} with ${amps.tool.id}`,
      name: `${volts.tool.name} with ${amps.tool.name}`,
      limit: {
        absolute: 0,
        fraction: relative(volts) + relative(amps),
        assumed: volts.tool.limit.assumed || amps.tool.limit.assumed,
      },
    },
  };
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
