import { type IntervalAxis, limitText } from '../../../report/intervalAxis.ts';
import { awgArea, awgName, effectiveAwg } from '../../../units/gauge.ts';

const SQUARE_MILLIMETRE = 1e-6;
/** Steps between marks, in gauge numbers, that people can read. */
const STEPS = [0.1, 0.2, 0.5, 1, 2, 5];
/** The thickest size that has a name, 4/0. */
const THICKEST = -3;

/**
 * The same axis, still even in area so that lengths stay comparable, marked at gauge sizes: the thinner ones stand left.
 * Above size 1 only the sizes that have a name are marked, because 0.5 or −0.4 says nothing to anybody.
 */
export function inGauge(axis: IntervalAxis, wanted: number): IntervalAxis {
  const [low, high] = axis.domain;
  if (!(low > 0)) return axis;
  const thin = effectiveAwg(low * SQUARE_MILLIMETRE);
  const thick = Math.max(THICKEST, effectiveAwg(high * SQUARE_MILLIMETRE));
  const step = STEPS.find((one) => (thin - thick) / one <= wanted) ?? 10;
  const ticks: { value: number; text: string }[] = [];
  for (let at = Math.ceil(thick / step); at * step <= thin; at += 1) {
    const size = Number((at * step).toFixed(1));
    if (size < 1 && !Number.isInteger(size)) continue;
    ticks.push({
      value: awgArea(size) / SQUARE_MILLIMETRE,
      text: Number.isInteger(size) ? awgName(size) : String(size),
    });
  }
  return { ...axis, ticks, write: gaugeText };
}

/** An area in mm² as a gauge: `2.09`, `1/0`; as an area where the gauge has neither a name nor a number. */
function gaugeText(area: number): string {
  const gauge = effectiveAwg(area * SQUARE_MILLIMETRE);
  const nearest = Math.round(gauge);
  if (Math.abs(gauge - nearest) < 0.005 && nearest >= THICKEST) return awgName(nearest);
  return gauge >= 1 ? gauge.toFixed(2) : `${limitText(area)} mm²`;
}
