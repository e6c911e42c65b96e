import type { SharedInput } from '../../methods/assay/row.ts';
import type { ErrorLimit, Instrument, Reading, Trial } from '../../trial/trial.ts';
import { usualInstrumentFor } from '../../trial/usualLimits.ts';
import { capital } from '../../units/capital.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';

/** The tool behind a group of readings: one that the trial lists, or the usual one for the job. */
export interface Tool {
  id: string;
  /** As people call it: 'pocket scale'. */
  name: string;
  kind: string;
  /** SI unit of what it reads. */
  resolution: number;
  limit: ErrorLimit;
}

/** Outside the span in which its limit holds, an instrument is taken to be twice as wrong. Common practice, no source. */
const OUT_OF_SPAN_FACTOR = 2;
/** Thermometer limit when the trial lists none, K. Common practice, no source. */
const ASSUMED_THERMOMETER_LIMIT = 2;
/** Where copper at a bench may stand when nobody took its temperature: 0 to 35 °C, as middle and half-width in K. */
export const UNTAKEN_TEMPERATURE = { middle: ZERO_CELSIUS + 17.5, halfWidth: 17.5 };
/** Half-width when the trial states a temperature for the bench but the reading does not, K. Common practice, no source. */
export const TARGET_TEMPERATURE_HALF_WIDTH = 5;

const ROOT_THREE = Math.sqrt(3);

function isThermometer(kind: string): boolean {
  return /thermo|infrared|probe.*temp|temp.*probe/i.test(kind);
}

/** Whether any counted reading by this instrument was taken outside the temperatures in which its limit holds. */
function usedOutsideSpan(instrument: Instrument, readings: readonly Reading[]): boolean {
  const { validFrom, validTo } = instrument;
  if (validFrom === null && validTo === null) return false;
  return readings.some(
    (r) =>
      r.instrument === instrument.instrument &&
      r.standing === 'counted' &&
      r.temperature !== null &&
      (r.temperature < (validFrom ?? -Infinity) || r.temperature > (validTo ?? Infinity)),
  );
}

/** All tools of a trial and the shared errors that they bring into the assay. Built once per trial. */
export class ToolBox {
  private readonly tools = new Map<string, Tool>();
  private readonly inputs = new Map<string, SharedInput>();
  /** Ids of listed instruments used outside the span of their limits. */
  readonly outsideSpan: string[] = [];
  private readonly trial: Trial;

  constructor(trial: Trial) {
    this.trial = trial;
    for (const i of trial.instruments) {
      const outside = usedOutsideSpan(i, trial.readings);
      if (outside) this.outsideSpan.push(i.instrument);
      const factor = outside ? OUT_OF_SPAN_FACTOR : 1;
      this.tools.set(i.instrument, {
        id: i.instrument,
        name: i.kind || i.instrument,
        kind: i.kind,
        resolution: i.resolution,
        limit: { ...i.limit, absolute: i.limit.absolute * factor, fraction: i.limit.fraction * factor },
      });
    }
  }

  /** The tool that took a reading. */
  toolOf(reading: Reading): Tool {
    const named = reading.instrument === null ? undefined : this.tools.get(reading.instrument);
    if (named) return named;
    return this.usual(reading.quantity, reading.step, reading.value);
  }

  /** The usual tool for a quantity, its limit assumed; a tool without error where none is usual (a count). */
  usual(quantity: string, step: number, value: number): Tool {
    const usual = usualInstrumentFor(quantity, step, value);
    const kind = usual?.kind ?? 'eye';
    // A limit in counts of the display differs with the step, so the step belongs to the identity.
    const id = `usual ${kind} ${step}`;
    const seen = this.tools.get(id);
    if (seen) return seen;
    const limit = usual?.limit ?? { absolute: 0, fraction: 0, assumed: false };
    const tool: Tool = { id, name: kind, kind, resolution: step, limit };
    this.tools.set(id, tool);
    return tool;
  }

  /** The shared zero error of a tool, in the SI unit of what it reads; null when its limit has no fixed part. */
  zeroOf(tool: Tool, unit: string): SharedInput | null {
    if (!(tool.limit.absolute > 0)) return null;
    return this.remember({
      input: `${tool.id} zero`,
      label: `${capital(tool.name)}, ${tool.limit.checked ? 'as checked' : 'its limit'}`,
      limit: tool.limit.absolute,
      unit,
      shape: 'uniform',
      sd: tool.limit.absolute / ROOT_THREE,
      assumed: tool.limit.assumed,
    });
  }

  /** The shared gain error of a tool, relative; null when its limit has no proportional part. */
  gainOf(tool: Tool): SharedInput | null {
    if (!(tool.limit.fraction > 0)) return null;
    return this.remember({
      input: `${tool.id} gain`,
      label: `${capital(tool.name)}, its percentage`,
      limit: tool.limit.fraction,
      unit: '1',
      shape: 'uniform',
      sd: tool.limit.fraction / ROOT_THREE,
      assumed: tool.limit.assumed,
    });
  }

  /** The shared error of the thermometer, K. */
  thermometer(): SharedInput {
    const listed = this.trial.instruments.find((i) => isThermometer(i.kind));
    const tool = listed && this.tools.get(listed.instrument);
    const limit = tool && tool.limit.absolute > 0 ? tool.limit.absolute : ASSUMED_THERMOMETER_LIMIT;
    const assumed = tool ? tool.limit.assumed : true;
    return this.remember({
      input: 'copper temperature',
      label: tool?.limit.checked ? "The copper's temperature, thermometer as checked" : "The copper's temperature",
      limit,
      unit: 'K',
      shape: 'uniform',
      sd: limit / ROOT_THREE,
      assumed,
    });
  }

  /** The shared doubt about a temperature that nobody took, K. */
  untakenTemperature(halfWidth: number): SharedInput {
    return this.remember({
      input: `temperature not taken ±${halfWidth} K`,
      label: "The copper's temperature, not taken",
      limit: halfWidth,
      unit: 'K',
      shape: 'uniform',
      sd: halfWidth / ROOT_THREE,
      assumed: true,
    });
  }

  /** Every shared input asked for so far, in a fixed order. */
  sharedInputs(): SharedInput[] {
    return [...this.inputs.values()].sort((a, b) => (a.input < b.input ? -1 : 1));
  }

  private remember(input: SharedInput): SharedInput {
    const seen = this.inputs.get(input.input);
    if (seen) return seen;
    this.inputs.set(input.input, input);
    return input;
  }
}
