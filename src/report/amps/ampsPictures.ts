/** The pictures of Amps from what was found: which figures stand on which strip, and in which words. */
import type { CableFindings } from '../../findings/schema.ts';
import type { Current } from '../../findings/shapes/current.ts';
import type { RunAnswer } from '../../methods/current/runCheck/answer.ts';
import type { Between, RunQuestion } from '../../methods/current/runCheck/question.ts';
import type { RunCheck } from '../../methods/current/runCheck/runCheck.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import { converted, type FigureUnits, measuredText, unitSymbol } from '../figures.ts';
import { type MetalKind, metalKind } from '../metalKind.ts';
import type { AmpsStrip } from './ampsStrip.ts';
import type { LengthChart } from './lengthChart.ts';

const metalOf = (cables: readonly CableFindings[], id: string): MetalKind =>
  metalKind(cables.find((c) => c.cable === id)?.metal_found ?? null);

/** Resistance at 20 °C of every cable that has one; null without any. */
export function resistanceStrip(
  cables: readonly CableFindings[],
  units: FigureUnits,
): (AmpsStrip & { unit: string }) | null {
  const known = cables.filter((c) => c.role !== 'control' && c.resistance_20C !== null);
  if (known.length === 0) return null;
  const rows = known.map((c) => {
    const { value, interval } = converted(c.resistance_20C!, units);
    const text = measuredText({ ...c.resistance_20C!, condition: undefined }, units);
    return {
      name: c.name || c.cable,
      metal: metalKind(c.metal_found),
      value,
      low: interval[0],
      high: interval[1],
      text,
    };
  });
  const unit = unitSymbol(converted(known[0]!.resistance_20C!, units).unit);
  return { title: `Resistance at 20 °C, ${unit}`, unit, rows, limit: null };
}

/** Carrying current of every cable that has one, the most first; null without any. */
export function carryingStrip(current: Current, cables: readonly CableFindings[]): AmpsStrip | null {
  const known = current.cables.filter((c) => c.role !== 'control' && c.carrying !== null);
  if (known.length === 0) return null;
  const rows = [...known]
    .sort((a, b) => b.carrying!.current_A.value - a.carrying!.current_A.value)
    .map((c) => {
      const { value, interval } = c.carrying!.current_A;
      const text = measuredText({ ...c.carrying!.current_A, condition: undefined });
      return {
        name: c.name || c.cable,
        metal: metalOf(cables, c.cable),
        value,
        low: interval[0],
        high: interval[1],
        text,
      };
    });
  return { title: 'Current that brings the conductor to the rating of its jacket, A', rows, limit: null };
}

const PERCENT = 100;
const measuredOf = ({ answers }: RunCheck): RunAnswer[] => answers.filter((a) => a.cable.measured);
const times = ({ value, low, high }: Between, factor: number): Between => ({
  value: value * factor,
  low: low * factor,
  high: high * factor,
});
const NOTHING: Between = { value: Number.NaN, low: Number.NaN, high: Number.NaN };

/** Where at the far end the load may not be fed nobody knows an upper end. */
function rowOf({ cable, feeds }: RunAnswer, { value, low, high }: Between, decimals: number, unit: string) {
  const open = feeds !== 'yes' || !Number.isFinite(high);
  const ends = open ? `${low.toFixed(decimals)} or more` : `${low.toFixed(decimals)} to ${high.toFixed(decimals)}`;
  const text = Number.isFinite(value) ? `${value.toFixed(decimals)} ${unit}, ${ends}` : 'cannot feed this load';
  return { name: cable.name, metal: metalKind(cable.heated.metal.name), value, low, high, text };
}

/** Share of the volts that is lost at the length that is asked about, one row for each measured cable. */
export function dropStrip(q: RunQuestion, check: RunCheck): AmpsStrip {
  const most = PERCENT * q.allowedDrop;
  return {
    title: `Lost on the way, % of the supply`,
    rows: measuredOf(check).map((a) => rowOf(a, a.feeds === 'no' ? NOTHING : times(a.drop, PERCENT), 1, '%')),
    limit: { value: most, text: `may be lost ${Number(most.toPrecision(3))} %` },
    fromZero: true,
  };
}

/** The hottest that the conductor comes to, one row for each measured cable, each with its own rating where they differ. */
export function heatStrip(check: RunCheck): AmpsStrip {
  const measured = measuredOf(check);
  const ratings = new Set(measured.map((a) => a.cable.rating));
  const one = ratings.size === 1 ? [...ratings][0]! - ZERO_CELSIUS : null;
  return {
    title: 'Hottest conductor, °C',
    rows: measured.map((a) => {
      const hottest = a.feeds === 'no' ? NOTHING : a.hottest;
      const celsius = {
        value: hottest.value - ZERO_CELSIUS,
        low: hottest.low - ZERO_CELSIUS,
        high: hottest.high - ZERO_CELSIUS,
      };
      return {
        ...rowOf(a, celsius, 0, '°C'),
        ...(one === null ? { limit: a.cable.rating - ZERO_CELSIUS } : {}),
      };
    }),
    limit: one === null ? null : { value: one, text: `rating ${one.toFixed(0)} °C` },
  };
}

/** Drop and heat against the length of the run. */
export function runCharts(
  q: RunQuestion,
  check: RunCheck,
  length: { unit: string; of: (metres: number) => number },
): { drop: LengthChart; heat: LengthChart } {
  const curve = (of: (p: RunCheck['curves'][number]['points'][number]) => number) =>
    check.curves.map(({ name, measured, points }) => ({
      name,
      measured,
      points: points.map((p) => ({ length: length.of(p.length), value: of(p) })),
    }));
  const shared = { length: length.of(q.length), lengthUnit: length.unit };
  const ratings = new Set(check.answers.map((a) => a.cable.rating));
  const rating = ratings.size === 1 ? [...ratings][0]! - ZERO_CELSIUS : null;
  const most = PERCENT * q.allowedDrop;
  return {
    drop: {
      ...shared,
      title: 'Lost at the peak of the load',
      unit: '%',
      curves: curve((p) => PERCENT * p.drop),
      limit: { value: most, text: `may be lost ${Number(most.toPrecision(3))} %` },
      fromZero: true,
    },
    heat: {
      ...shared,
      title: 'Hottest conductor',
      unit: '°C',
      curves: curve((p) => p.kelvin - ZERO_CELSIUS),
      limit: rating === null ? null : { value: rating, text: `rating ${rating.toFixed(0)} °C` },
      fromZero: false,
    },
  };
}
