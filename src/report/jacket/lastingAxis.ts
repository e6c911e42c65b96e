import { format } from 'd3-format';
import { scaleLinear, scaleLog } from 'd3-scale';
import type { LastingChart } from './lastingChart.ts';

export interface LastingAxis {
  /** px from the left of the chart, kept within it. */
  at: (value: number) => number;
  ticks: { at: number; text: string }[];
}

/** Intervals may reach so many times beyond the pieces and medians before the axis cuts them off with an arrow. */
const REACH = 6;
const PADDING = 1.12;

/** What has to be said of an axis that goes by ratio; empty for one that goes by difference. */
export const scaleNote = ({ scale }: Pick<LastingChart, 'scale'>): string =>
  scale === 'amount' ? 'The scale goes by ratio (logarithmic): from 10 to 20 is as far as from 100 to 200.' : '';

/** The axis of a test: by ratio for amounts, from none to all for shares. It is as wide as the intervals ask, within reason. */
export function lastingAxis({ rows, scale }: Pick<LastingChart, 'rows' | 'scale'>, width: number): LastingAxis {
  if (scale === 'share') {
    const at = scaleLinear().domain([0, 1]).range([0, width]).clamp(true);
    return { at, ticks: [0, 0.25, 0.5, 0.75, 1].map((x) => ({ at: at(x), text: `${100 * x} %` })) };
  }
  const firm = rows.flatMap((r) => [...r.pieces.map((p) => p.amount), ...(r.value === null ? [] : [r.value])]);
  const ends = rows.flatMap((r) => [r.low, r.high].filter((x) => x !== null));
  const all = (firm.length > 0 ? firm : ends).filter((x) => x > 0);
  const [least, most] = all.length === 0 ? [1, 10] : [Math.min(...all), Math.max(...all)];
  const inReach = [...all, ...ends].filter((x) => x >= least / REACH && x <= most * REACH);
  const domain = [Math.min(least, ...inReach) / PADDING, Math.max(most, ...inReach) * PADDING];
  const at = scaleLog().domain(domain).range([0, width]).clamp(true);
  const ticks = at
    .ticks(20)
    .filter((tick) => /^[125]e/.test(tick.toExponential().replace(/\.0*/, '')))
    .map((tick) => ({ at: at(tick), text: format('~r')(Number(tick.toPrecision(3))) }));
  return { at, ticks };
}
