import { tickStep } from 'd3-array';
import { format } from 'd3-format';
import { scaleLinear, scaleLog } from 'd3-scale';
import type { BendMethod } from './bendMethods.ts';

/** The axis of one method: where a figure stands, and its ticks. */
export interface StripAxis {
  at: (value: number) => number;
  ticks: { at: number; text: string }[];
}

/** Figures that differ by more than this go by ratio, so that the softest cables do not fall on one spot. */
const BY_RATIO_FROM = 6;
const PX_PER_TICK = 56;

/** The axis that holds every interval of a method over `width` px, the easiest to bend on the left. */
export function stripAxis({ rows, fallsRight, numbers }: BendMethod, width: number): StripAxis {
  const values = rows.flatMap((row) => row.figures.flatMap((f) => [...f.interval])).filter(Number.isFinite);
  const [low, high] = values.length === 0 ? [0, 1] : [Math.min(...values), Math.max(...values)];
  const range = fallsRight ? [width, 0] : [0, width];
  if (low > 0 && high / low > BY_RATIO_FROM) {
    const scale = scaleLog()
      .domain([low / 1.15, high * 1.15])
      .range(range);
    const kept = scale.ticks(20).filter((tick) => /^[125]0*$/.test(format('.1e')(tick).replace(/\.0e.*/, '')));
    return { at: scale, ticks: kept.map((tick) => ({ at: scale(tick), text: tickText(tick) })) };
  }
  const half = high > low ? 0 : Math.abs(high) * 0.05 || 1;
  const count = Math.max(2, Math.round(width / PX_PER_TICK));
  const step = tickStep(low - half, high + half, count);
  const domain = [Math.floor((low - half) / step) * step, Math.ceil((high + half) / step) * step];
  const scale = scaleLinear().domain(domain).range(range);
  const write = scale.tickFormat(count);
  const ticks = numbers ? scale.ticks(Math.round((domain[1]! - domain[0]!) / step)) : [];
  return { at: scale, ticks: ticks.map((tick) => ({ at: scale(tick), text: write(tick).replace('-', '−') })) };
}

const tickText = (value: number): string =>
  format('.1~f')(value) === '0' ? format('.2~g')(value) : format('~g')(value);
