import type { Flex, FlexCable, JudgedCable, Push } from '../../findings/shapes/flex.ts';
import type { Measured } from '../../findings/shapes/measured.ts';
import { normalQuantile } from '../../numerics/distributions.ts';
import { measuredText, percentText, UNKNOWN } from '../figures.ts';
import { chanceText } from '../words/chanceWords.ts';
import { howJudged, rangeWords } from './bendSentences.ts';
import { figureBands } from './figureBands.ts';

export type BendMethodId = 'droop' | 'push' | 'judged' | 'coil' | 'spring';

/** One interval in a row; `open` is drawn without a fill: a first push beside one that was worked in. */
export interface StripFigure {
  value: number;
  interval: readonly [number, number];
  open: boolean;
}

export interface StripRow {
  cable: string;
  name: string;
  /** From 1, the easiest to bend. */
  band: number;
  figures: StripFigure[];
  /** The figure in words, with its ±. */
  text: string;
}

/** How one method orders the cables. */
export interface BendMethod {
  id: BendMethodId;
  head: string;
  /** Unit of the axis; empty where the axis has no numbers a reader needs. */
  unit: string;
  /** What stands under the head: how it was taken. */
  note: string;
  /** The easiest to bend first. */
  rows: StripRow[];
  /** True where a larger figure is easier to bend, so that the axis runs the other way and the easiest still stands left. */
  fallsRight: boolean;
  /** False where the axis has no numbers that mean anything to a reader. */
  numbers: boolean;
}

const name = (c: { cable: string; name: string }) => c.name || c.cable;

/** Every method that has a figure for at least one cable, in the order in which they are shown. */
export function bendMethods(flex: Flex): BendMethod[] {
  const compared = flex.cables.filter((c) => c.role === 'compared');
  return [droop(compared), judged(flex), push(compared), coil(compared), spring(compared)].filter(
    (method) => method !== null,
  );
}

function droop(cables: readonly FlexCable[]): BendMethod | null {
  const rows = cables.filter((c) => c.method === 'droop' && c.bending_stiffness !== null);
  return single(rows, (c) => c.bending_stiffness!, {
    id: 'droop',
    head: 'Stiffness by droop',
    unit: 'N·m²',
    note: `${temperatureNote(rows.map((c) => c.temperature_range_C))}${edgeNote(rows)}`,
    band: (c) => c.band,
    text: (c) => stiffnessText(c.bending_stiffness!),
  });
}

function coil(cables: readonly FlexCable[]): BendMethod | null {
  const rows = cables.filter((c) => c.coil_ratio !== null);
  return single(rows, (c) => c.coil_ratio!, {
    id: 'coil',
    head: 'Tightest coil',
    unit: 'radius over cable diameter',
    note: `to the middle of the cable; ${temperatureNote(rows.map((c) => alone(c.coil_temperature_C)))}`,
    text: (c) => `${measuredText(c.coil_ratio)} ×`,
  });
}

function spring(cables: readonly FlexCable[]): BendMethod | null {
  const rows = cables.filter((c) => c.spring_back !== null);
  return single(rows, (c) => inPercent(c.spring_back!), {
    id: 'spring',
    head: 'Springs back',
    unit: '% of the bend',
    note: temperatureNote(rows.map((c) => alone(c.spring_back_temperature_C))),
    text: (c) => percentText(c.spring_back),
  });
}

interface SingleOptions extends Pick<BendMethod, 'id' | 'head' | 'unit' | 'note'> {
  /** Bands from the findings, where they give them. */
  band?: (cable: FlexCable) => number | null;
  text: (cable: FlexCable) => string;
}

/** A method with one figure for each cable, the smallest the easiest. */
function single(
  cables: readonly FlexCable[],
  of: (cable: FlexCable) => Measured,
  { band, text, ...rest }: SingleOptions,
): BendMethod | null {
  if (cables.length === 0) return null;
  const own = figureBands(cables.map(of));
  const rows = cables.map((c, i) => ({
    cable: c.cable,
    name: name(c),
    band: band?.(c) ?? own[i]!,
    figures: [shown(of(c))],
    text: text(c),
  }));
  return { ...rest, rows: inOrder(rows, 1), fallsRight: false, numbers: true };
}

/** The pushes of one state, most readings first; the strip shows the best of each. */
function bestPush(c: FlexCable, worked: boolean): Push | null {
  const [first = null] = c.pushes
    .filter((p) => p.bending_stiffness !== null && (p.state === 'worked in') === worked)
    .sort((a, b) => b.points_used - a.points_used);
  return first;
}

function push(cables: readonly FlexCable[]): BendMethod | null {
  const pushed = cables.flatMap((c) => {
    const [fresh, worked] = [bestPush(c, false), bestPush(c, true)];
    const head = worked ?? fresh;
    return head ? [{ c, fresh, worked, head }] : [];
  });
  if (pushed.length === 0) return null;
  const own = figureBands(pushed.map(({ head }) => head.bending_stiffness!));
  const both = pushed.some(({ worked, fresh }) => worked && fresh);
  const rows = pushed.map(({ c, fresh, worked, head }, i) => ({
    cable: c.cable,
    name: name(c),
    band: own[i]!,
    figures: [
      ...(fresh ? [shown(fresh.bending_stiffness!, true)] : []),
      ...(worked ? [shown(worked.bending_stiffness!)] : []),
    ],
    text: stiffnessText(head.bending_stiffness!),
  }));
  const states = both
    ? 'open bar first push, filled bar worked in'
    : pushed.every(({ worked }) => worked)
      ? 'worked in'
      : pushed.every(({ fresh }) => fresh?.state === 'first push')
        ? 'first push, so the bars are open'
        : 'open bars: whether first or worked in was not always said';
  const at = temperatureNote(pushed.map(({ head }) => head.temperature_range_C));
  return {
    id: 'push',
    head: 'Stiffness by push',
    unit: 'N·m²',
    note: `${states}; ${at}`,
    rows: inOrder(rows, 1),
    fallsRight: false,
    numbers: true,
  };
}

function judged({ judged: found }: Flex): BendMethod | null {
  if (found === null || found.cables.length < 2 || found.groups.length > 1) return null;
  const reach = normalQuantile(0.975);
  const rows = found.cables.map((c: JudgedCable) => ({
    cable: c.cable,
    name: name(c),
    band: c.band ?? 1,
    figures: [
      { value: c.ability, interval: [c.ability - reach * c.se, c.ability + reach * c.se] as const, open: false },
    ],
    text: c.probability_best === null ? UNKNOWN : chanceText(c.probability_best),
  }));
  return {
    id: 'judged',
    head: 'Ease of bending by hand',
    unit: 'chance of being easiest',
    note: howJudged(found),
    rows: inOrder(rows, -1),
    fallsRight: true,
    numbers: false,
  };
}

const inOrder = (rows: StripRow[], sign: 1 | -1): StripRow[] =>
  [...rows].sort((a, b) => a.band - b.band || sign * (key(a) - key(b)));
const key = (row: StripRow) => row.figures[row.figures.length - 1]!.value;

const shown = ({ value, interval }: Measured, open = false): StripFigure => ({ value, interval, open });

/** Stiffness of cable is a small number: three zeros of N·m² say less than the digits behind them. */
function stiffnessText(figure: Measured): string {
  return measuredText({ ...figure, unit: '1', condition: undefined });
}

const alone = (celsius: number | null): [number, number] | null => (celsius === null ? null : [celsius, celsius]);

/** A share as a figure of 100, as its text has it. */
function inPercent(share: Measured): Measured {
  const [low, high] = share.interval;
  return { ...share, value: 100 * share.value, u: 100 * share.u, interval: [100 * low, 100 * high], unit: '%' };
}

/** What comparisons allow for beside the ±, where droops were clamped. */
function edgeNote(cables: readonly FlexCable[]): string {
  const shares = cables.flatMap((c) => c.droops.flatMap((d) => d.clamp_edge_share ?? []));
  if (shares.length === 0) return '';
  return `; brackets allow ${Math.round(100 * Math.max(...shares))} % more than the bars for where each left its clamp`;
}

function temperatureNote(ranges: readonly ([number, number] | null)[]): string {
  const noted = ranges.filter((t) => t !== null);
  if (noted.length === 0) return 'no temperature noted';
  const missing = noted.length < ranges.length ? `, ${ranges.length - noted.length} without one` : '';
  return `${rangeWords([Math.min(...noted.map(([low]) => low)), Math.max(...noted.map(([, high]) => high))])}${missing}`;
}
