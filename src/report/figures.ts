import { plusMinus as halfWidth, isWide } from '../findings/measured.ts';
import type { Measured } from '../findings/schema.ts';
import { formatMeasured, formatPlain } from '../units/digits.ts';
import { CIRCULAR_MIL, FOOT, INCH } from '../units/exactFactors.ts';
import { effectiveAwg } from '../units/gauge.ts';
import { rangeText } from '../units/rangeText.ts';
import { wholeText } from '../units/wholeText.ts';

/** The units in which a reader wants figures; a subset of the display units, each with its usual default. */
export interface FigureUnits {
  area?: 'mm2' | 'awg' | 'kcmil';
  length?: 'mm' | 'in';
  perLength?: 'm' | 'ft';
}

export interface FigureText {
  /** `33.1`; `33 to 79` for a wide interval; `—` when there is no figure. */
  value: string;
  /** `0.4`, without the sign; empty for a figure that is exact, given by both ends, or not there. */
  plusMinus: string;
  /** `mm²`; empty for counts and ratios. */
  unit: string;
  /** `if copper`; empty when the figure holds without one. */
  condition: string;
}

/** What stands where a figure could not be computed. */
export const UNKNOWN = '—';

/** Units of the findings as people write them. */
const SYMBOLS: Readonly<Record<string, string>> = {
  mm2: 'mm²',
  AWG: 'AWG',
  'ohm g/m2': 'Ω·g/m²',
  'mohm/m': 'mΩ/m',
  'ohm/km': 'Ω/km',
  mohm: 'mΩ',
  ohm: 'Ω',
  'g/cm3': 'g/cm³',
  'kg/m3': 'kg/m³',
  '1': '',
};

/** Units whose figures are never written with a power of ten (as `unitSymbol` writes them). */
const WITHOUT_POWERS: ReadonlySet<string> = new Set(['mm²', 'kcmil', 'AWG', '%', 'mΩ/m', 'mΩ/ft', 'Ω/km']);

/** Square metres and metres in the millimetres that findings are given in. */
const SQUARE_MILLIMETRE = 1e-6;
const MILLIMETRE = 1e-3;
const KCMIL = 1000 * CIRCULAR_MIL;

/** What a metre at one milliohm costs is an amount of money; the rest of its unit stands in its name. */
const AT_ONE_MILLIOHM = / mohm\/m2$/;

/** The sign of a unit for a reader: `mm2` → `mm²`, `EUR mohm/m2` → `EUR`. Unknown ones are given back as they are. */
export const unitSymbol = (unit: string): string => SYMBOLS[unit] ?? unit.replace(AT_ONE_MILLIOHM, '');

/**
 * A finding in the reader's units, in parts.
 *
 * What stands after ± is half the width of the interval at its level (usually 95 %), not the standard uncertainty; where
 * the interval reaches further to one side, the larger side is taken, so that ± never promises more than was found.
 * Rounded by the one rule of `units/digits.ts`. A ± that is a large part of its value (see `isWide`) gives way to both ends
 * of the interval, rounded outwards. Null gives `—`.
 */
export function figureText(figure: Measured | null, units: FigureUnits = {}): FigureText {
  if (figure === null) return { value: UNKNOWN, plusMinus: '', unit: '', condition: '' };
  const shown = converted(figure, units);
  const unit = unitSymbol(shown.unit);
  const condition = figure.condition ?? '';
  // Gauge numbers have no size of their own: what is wide is told by the figure that was found.
  if (isWide(figure)) return { value: rangeText(...shown.interval), plusMinus: '', unit, condition };
  const { value, plusMinus } = formatMeasured(shown.value, halfWidth(shown), { plain: WITHOUT_POWERS.has(unit) });
  return { value, plusMinus: plusMinus === '0' ? '' : plusMinus, unit, condition };
}

/** `33.1 ± 0.4 mm²`, `26.9 ± 1.0 mm² if copper`, `33 to 79 mm²`, `—`: a finding on one line (see `figureText`). */
export function measuredText(figure: Measured | null, units: FigureUnits = {}): string {
  const { value, plusMinus, unit, condition } = figureText(figure, units);
  return [plusMinus === '' ? value : `${value} ± ${plusMinus}`, unit, condition]
    .filter((part) => part !== '')
    .join(' ');
}

/**
 * A count as whole numbers: `665 ± 2`; `665` when counted without doubt; `400 to 900` where the doubt is a large part of it;
 * `—` for null. Only for figures of unit 1.
 */
export function countText(count: Measured | null): string {
  if (count === null) return UNKNOWN;
  const [low, high] = count.interval;
  if (isWide(count)) return `${wholeText(Math.max(0, Math.floor(low)))} to ${wholeText(Math.ceil(high))}`;
  const doubt = Math.round(halfWidth(count));
  return doubt === 0 ? wholeText(count.value) : `${wholeText(count.value)} ± ${wholeText(doubt)}`;
}

/** A ratio in per cent: `85.0 ± 0.9 %`; `48 to 110 %` for a wide one; `—` for null. Only for figures of unit 1. */
export function percentText(ratio: Measured | null): string {
  const { value, plusMinus, condition } = percentParts(ratio);
  if (ratio === null) return value;
  return [plusMinus === '' ? value : `${value} ± ${plusMinus}`, '%', condition].filter((part) => part !== '').join(' ');
}

/** The parts of `percentText`. */
export function percentParts(ratio: Measured | null): FigureText {
  if (ratio === null) return { value: UNKNOWN, plusMinus: '', unit: '', condition: '' };
  return figureText(inPercent(ratio));
}

/** A ratio in per cent. */
export const inPercent = (ratio: Measured): Measured => ({
  ...ratio,
  unit: '%',
  value: 100 * ratio.value,
  interval: [100 * ratio.interval[0], 100 * ratio.interval[1]],
});

/** An amount without an uncertainty of its own, such as a limit: four digits at most, no trailing zeros after a point. */
export function plainText(value: number, unit: string): string {
  const text = formatPlain(value, 4, { plain: WITHOUT_POWERS.has(unitSymbol(unit)) })
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  return unit === '' || unit === '1' ? text : `${text} ${unitSymbol(unit)}`;
}

export type Shown = Pick<Measured, 'value' | 'interval' | 'unit'>;

/** The figure in the reader's units: areas, lengths, and amounts per length. Others stay as they are. */
export function converted(figure: Measured, units: FigureUnits): Shown {
  const isArea = unitSymbol(figure.unit) === 'mm²';
  if (isArea && units.area === 'kcmil') return mapped(figure, 'kcmil', (x) => (x * SQUARE_MILLIMETRE) / KCMIL);
  if (isArea && units.area === 'awg') return inGauge(figure);
  if (figure.unit === 'mm' && units.length === 'in')
    return mapped(figure, 'in', (x) => (x * MILLIMETRE * INCH[1]) / INCH[0]);
  if (unitSymbol(figure.unit) === 'mΩ/m' && units.perLength === 'ft')
    return mapped(figure, 'mΩ/ft', (x) => (x * FOOT[0]) / FOOT[1]);
  if (figure.unit === 'g/m' && units.perLength === 'ft') return mapped(figure, 'g/ft', (x) => (x * FOOT[0]) / FOOT[1]);
  return figure;
}

function mapped(figure: Measured, unit: string, map: (x: number) => number): Shown {
  const [a, b] = [map(figure.interval[0]), map(figure.interval[1])];
  return { value: map(figure.value), interval: [Math.min(a, b), Math.max(a, b)], unit };
}

/** Gauge only where the trade reads it: sizes above 1 would be zero or negative, and stay in mm². */
function inGauge(figure: Measured): Shown {
  if (!(figure.interval[0] > 0)) return figure;
  const gauge = mapped(figure, 'AWG', (x) => effectiveAwg(x * SQUARE_MILLIMETRE));
  return gauge.interval[0] >= 0.5 ? gauge : figure;
}
