import { headlineClaim, sizeClaim } from '../../../findings/cableOutcome.ts';
import type { CableFindings, Measured } from '../../../findings/schema.ts';
import { type IntervalAxis, intervalAxis } from '../../../report/intervalAxis.ts';
import type { DisplayUnits } from '../../../units/display.ts';
import { inGauge } from './gaugeAxis.ts';

/** What a row's line is where the labels differ, as the head says it. */
const OWN_LIMIT = 'line: least its label asks';

/** One axis for all cables. Where their labels differ, each row has its own limit and the head says so. */
export interface Chart {
  axis: IntervalAxis | null;
  shared: boolean;
  width: number;
}

/** The least area that a label asks for, and its nominal, mm². */
interface AreaLimit {
  required: number;
  nominal: number | null;
}

/** About one tick in this many px. */
const PX_PER_TICK = 44;
const MOST_TICKS = 12;

/** The chart of all cables' areas in a column `width` px wide, marked in gauge sizes where those were chosen. */
export function chartOf(cables: readonly CableFindings[], width: number, units: DisplayUnits): Chart {
  const limits = cables.map(areaLimit).filter((limit) => limit !== null);
  const first = limits[0] ?? null;
  const shared = limits.every((limit) => limit.required === first?.required && limit.nominal === first.nominal);
  const areas = cables.map((cable) => cable.conductor_area);
  const ticks = Math.min(MOST_TICKS, Math.max(2, Math.round(width / PX_PER_TICK)));
  const axis = shared
    ? intervalAxis(areas, first?.required ?? null, first?.nominal ?? null, ticks)
    : intervalAxis([...areas, ...limits.map((limit) => pointAt(limit.required))], null, null, ticks);
  const marked = axis !== null && units.area === 'awg' ? inGauge(axis, ticks) : axis;
  return { axis: marked === null || shared ? marked : { ...marked, caption: OWN_LIMIT }, shared, width };
}

/** The axis as one cable's row shows it: with the row's own limit where labels differ, with none where it claims no area. */
export function rowAxis(chart: Chart, cable: CableFindings): IntervalAxis | null {
  if (chart.axis === null) return null;
  const own = areaLimit(cable);
  if (own === null) return { ...chart.axis, limit: null, nominal: null };
  return chart.shared ? chart.axis : { ...chart.axis, caption: undefined, limit: own.required, nominal: null };
}

function areaLimit(cable: CableFindings): AreaLimit | null {
  const claim = [sizeClaim(cable), headlineClaim(cable)].find((one) => one?.unit === 'mm2' && one.required !== null);
  return claim?.required == null ? null : { required: claim.required, nominal: claim.nominal };
}

function pointAt(value: number): Measured {
  return { value, unit: 'mm2', u: 0, interval: [value, value], level: 1, from: [] };
}
