import type { Instrument, Trial } from '../../trial/trial.ts';
import { isOrdinaryMultimeter, usualLimit, usualStep } from '../../trial/usualLimits.ts';
import { findUnit } from '../../units/unit.ts';

/** The tool taken for each job at the bench; null where none that is fit for it is listed. */
export interface BenchTools {
  scale: Instrument | null;
  /** For pushing on: it bears more than a fine scale. */
  kitchenScale?: Instrument | null;
  /** For lengths up to 400 mm, and beyond. */
  rule: Instrument | null;
  tape: Instrument | null;
  caliper: Instrument | null;
  micrometer: Instrument | null;
  meter: Instrument | null;
  thermometer: Instrument | null;
}

/** A fair reading to compare limits at, SI: 100 g, 300 mm, 1 mΩ. */
const TYPICAL = { mass: 0.1, length: 0.3, resistance: 1e-3 };
/** A tool that errs by more than this reads no strand, m. */
const MICROMETER_LIMIT = 6e-6;

const dimensionOf = (i: Instrument) => findUnit(i.row.unit ?? '')?.dimension ?? null;
const kindOf = (i: Instrument) => usualLimit(i.kind, i.resolution)?.kind ?? '';

function best(tools: readonly Instrument[], at: number): Instrument | null {
  const limit = (i: Instrument) => i.limit.absolute + i.limit.fraction * at;
  return tools.reduce<Instrument | null>((a, b) => (a === null || limit(b) < limit(a) ? b : a), null);
}

/** Sorts a trial's instruments into the jobs of the bench, the most accurate first. */
export function benchTools({ instruments }: Pick<Trial, 'instruments'>): BenchTools {
  const reads = (dimension: string) => instruments.filter((i) => dimensionOf(i) === dimension);
  const lengths = reads('length');
  const isKind = (...kinds: string[]) => lengths.filter((i) => kinds.includes(kindOf(i)));
  const calipers = isKind('digital caliper', 'plastic caliper');
  const micrometers = lengths.filter((i) => kindOf(i) === 'micrometer' || i.limit.absolute <= MICROMETER_LIMIT);
  const long = lengths.filter((i) => !calipers.includes(i) && !micrometers.includes(i));
  const tapes = long.filter((i) => kindOf(i) === 'tape');
  const rules = long.filter((i) => !tapes.includes(i));
  const meters = reads('resistance').filter((i) => !isOrdinaryMultimeter(i.kind));
  const shunts = instruments.filter((i) => kindOf(i) === 'shunt and millivolts');
  return {
    scale: best(reads('mass'), TYPICAL.mass),
    kitchenScale: best(
      reads('mass').filter((i) => kindOf(i) === 'kitchen scale'),
      TYPICAL.mass,
    ),
    rule: best(rules, TYPICAL.length) ?? best(tapes, TYPICAL.length),
    tape: best(tapes, TYPICAL.length),
    caliper: best(calipers, TYPICAL.length),
    micrometer: best(micrometers, 0),
    meter: best(meters, TYPICAL.resistance) ?? best(shunts, TYPICAL.resistance),
    thermometer: best(reads('temperature'), 0),
  };
}

/** Listed tools that no reading of this trial is taken from, with the reason. */
export function refusedTools({ instruments }: Pick<Trial, 'instruments'>): { instrument: string; text: string }[] {
  return instruments
    .filter((i) => isOrdinaryMultimeter(i.kind))
    .map((i) => ({
      instrument: i.instrument,
      text: `${i.kind} (${i.instrument}) is refused for heavy cable: its leads and contacts are tenths of an ohm, the cable is thousandths. Take a four-wire meter, or a known current and a millivolt reading.`,
    }));
}

/** A tool with the usual limit of its kind, as if it were listed: for asking what borrowing it would change. */
export function usualTool(kind: string, step = usualStep(kind) ?? 0): Instrument {
  const usual = usualLimit(kind, step);
  if (usual === null) throw new RangeError(`no usual limit is known for a tool called "${kind}"`);
  const row = { instrument: kind, kind };
  return {
    entry: '',
    row,
    instrument: kind,
    kind,
    resolution: step,
    limit: usual.limit,
    validFrom: null,
    validTo: null,
  };
}
