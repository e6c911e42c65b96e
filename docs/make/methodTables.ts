/** The tables of docs/method.md, out of the constants that the assay computes with. */
import { asksForCopper, readLabel } from '../../src/findings/claims/label.ts';
import { requirementsOf } from '../../src/findings/claims/requirements.ts';
import { DEFAULT_LEVELS } from '../../src/methods/assay/conformity.ts';
import { DISAGREE_BELOW } from '../../src/methods/assay/consistency.ts';
import { FAULT_ODDS, FAULT_SIZE, LN_LAY } from '../../src/methods/assay/prior.ts';
import { knownSights, lnLikelihoodOfSight } from '../../src/methods/metal/eye.ts';
import { METALS, type Metal, type MetalHypothesis, metalHypotheses } from '../../src/methods/metal/hypotheses.ts';
import { usualKinds, usualLimit, usualStep } from '../../src/trial/usualLimits.ts';
import { METRIC_SIZES } from '../../src/units/standardSizes.ts';
import { markdownTable } from './markdownTable.ts';

const percent = (share: number): string => `${Number((100 * share).toPrecision(3))} %`;
const rounded = (x: number, digits: number): string => Number(x.toPrecision(digits)).toString();

/** `8860` or `3200 to 4560` when a metal has several classes. */
function span(of: readonly MetalHypothesis[], figure: (h: MetalHypothesis) => number, digits: number): string {
  const values = of.map(figure);
  const [least, most] = [Math.min(...values), Math.max(...values)].map((x) => rounded(x, digits));
  return least === most ? least! : `${least} to ${most}`;
}

function metalRow(metal: Metal, of: readonly MetalHypothesis[]): string[] {
  const prior = of.reduce((sum, h) => sum + h.prior, 0);
  return [
    metal,
    `${rounded(100 * prior, 2)} %`,
    String(of.length),
    span(of, (h) => Math.exp(h.lnDensity.mean), 3),
    span(of, (h) => 100 * h.lnDensity.sd, 2),
    span(of, (h) => 1e9 * Math.exp(h.lnResistivity.mean), 4),
    span(of, (h) => 100 * h.lnResistivity.sd, 2),
  ];
}

export function metalTable(): string {
  const list = metalHypotheses();
  const head = [
    'metal',
    'starting odds',
    'classes',
    'density, kg/m³',
    '± density, %',
    'resistivity at 20 °C, nΩ·m',
    '± resistivity, %',
  ];
  return markdownTable(
    head,
    METALS.map((metal) =>
      metalRow(
        metal,
        list.filter((h) => h.metal === metal),
      ),
    ),
  );
}

const FAULT_WORDS = {
  none: ['nothing grossly wrong', '–'],
  mass: ['the mass, or its length', 'either way'],
  resistance: ['the resistance, or its distance', 'mostly too high: poor contacts add'],
  strands: ['the strand count, or their diameter', 'either way'],
} as const;

export function faultTable(): string {
  const rows = (['none', 'mass', 'resistance', 'strands'] as const).map((fault) => {
    const [what, way] = FAULT_WORDS[fault];
    const size = fault === 'none' ? '–' : `about ${Math.round(100 * FAULT_SIZE[fault].sd)} %`;
    return [what, percent(FAULT_ODDS[fault]), size, way];
  });
  return markdownTable(['supposed wrong', 'odds before reading', 'size (one standard deviation)', 'direction'], rows);
}

interface ShownUnit {
  symbol: string;
  scale: number;
}

/** Unit in which a kind of tool is shown; null where its limit has only a share and steps of the display. */
function shownUnit(kind: string): ShownUnit | null {
  if (/scale/.test(kind)) return { symbol: 'g', scale: 1e3 };
  if (/thermometer/.test(kind)) return { symbol: '°C', scale: 1 };
  return /meter|shunt|clamp/.test(kind) && !/micro/.test(kind) ? null : { symbol: 'mm', scale: 1e3 };
}

function limitWords(kind: string): string {
  const without = usualLimit(kind, 0)!.limit;
  const counts = usualLimit(kind, 1)!.limit.absolute - without.absolute;
  const unit = shownUnit(kind);
  const parts = [
    without.absolute > 0 && unit ? `${rounded(without.absolute * unit.scale, 4)} ${unit.symbol}` : '',
    without.fraction > 0 ? percent(without.fraction) : '',
    counts > 0 ? `${Math.round(counts)} steps of the display` : '',
  ].filter((part) => part !== '');
  return `±${parts.length > 1 ? `(${parts.join(' + ')})` : parts.join('')}`;
}

export function usualLimitsTable(): string {
  const rows = usualKinds().map((kind) => {
    const step = usualStep(kind);
    const unit = shownUnit(kind);
    return [
      kind,
      step === null || !unit ? 'as its display' : `${rounded(step * unit.scale, 4)} ${unit.symbol}`,
      limitWords(kind),
    ];
  });
  return markdownTable(['tool', 'step', 'limit of error assumed'], rows);
}

/** One look at one strand: how many times likelier it is with each metal than with the least likely one kept in sight. */
export function sightTable(): string {
  const shownMetals = METALS.filter((metal) => metal !== 'other');
  const rows = knownSights().map(({ look, seen }) => {
    const ln = lnLikelihoodOfSight([{ look, seen, count: null, seenIn: null }]);
    return [look.replace('_', ' '), seen, ...shownMetals.map((metal) => rounded(Math.exp(ln[metal]), 2))];
  });
  return markdownTable(['look', 'seen', ...shownMetals], rows);
}

const AWG_LABELS = ['8', '6', '4', '2', '1', '1/0', '2/0', '3/0', '4/0'];
const WANTED_AWG = ['AWG by area', 'AWG by resistance', 'SAE size'];

const requirementsOfLabel = (label: string, coated: boolean) => {
  const read = readLabel({ size: label, metal: '' } as Parameters<typeof readLabel>[0]);
  if (read.size === null || !asksForCopper(read.metal)) throw new RangeError(`"${label}" is not read as a copper size`);
  return requirementsOf(read.size, coated);
};

export function awgLimits(): string {
  const rows = AWG_LABELS.map((size) => {
    const list = requirementsOfLabel(`${size} AWG`, false);
    const [area, ohms, sae] = WANTED_AWG.map((name) => list.find((r) => r.reading === name));
    return [
      `${size} AWG`,
      (area!.nominal * 1e6).toFixed(2),
      (area!.required * 1e6).toFixed(2),
      (ohms!.required * 1e3).toFixed(4),
      (ohms!.generous! * 1e3).toFixed(4),
      sae ? (sae.required * 1e6).toFixed(2) : '–',
    ];
  });
  return markdownTable(
    [
      'label',
      'nominal, mm²',
      'area at least, mm²',
      'resistance: meets up to, mΩ/m',
      'falls short above, mΩ/m',
      'SAE size at least, mm²',
    ],
    rows,
  );
}

export function metricLimits(): string {
  const rows = METRIC_SIZES.map((mm2) => {
    const figure = (reading: string, coated: boolean) => {
      const found = requirementsOfLabel(`${mm2} mm2`, coated).find((r) => r.reading === reading);
      return found ? (found.required * 1e3).toFixed(3) : '–';
    };
    return [
      `${mm2} mm²`,
      figure('IEC 60228', false),
      figure('IEC 60228', true),
      figure('ISO 19642', false),
      figure('ISO 19642', true),
    ];
  });
  return markdownTable(['label', 'IEC 60228 class 5, mΩ/m', 'tinned', 'ISO 19642, mΩ/m', 'tinned'], rows);
}

export function levelsTable(): string {
  const { meetsAbove, shortBelow } = DEFAULT_LEVELS;
  return markdownTable(
    ['chance that the claim is met', 'outcome'],
    [
      [`above ${percent(meetsAbove)}`, 'meets'],
      [`${percent(shortBelow)} to ${percent(meetsAbove)}`, 'not settled'],
      [`below ${percent(shortBelow)}`, 'falls short'],
    ],
  );
}

/** Sentence on the lay factor and on when readings are said to disagree. */
export function usualLayWords(): string {
  const { mean, sd } = LN_LAY;
  const [low, middle, high] = [mean - 2 * sd, mean, mean + 2 * sd].map((ln) => Math.exp(ln).toFixed(3));
  return `Before anything is read the lay factor is taken to be about ${middle}, and with 95 % between ${low} and ${high}.`;
}

export function disagreementWords(): string {
  return `Readings are said to disagree when so large a distance would come by chance in fewer than ${percent(DISAGREE_BELOW)} of sound trials, or when one group of readings is more likely wrong than not.`;
}
