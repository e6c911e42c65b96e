import { group } from 'd3-array';
import { type BetweenTrials, middleOf, ratioInterval, widenedInterval } from '../../methods/across/betweenTrials.ts';
import type { Measured } from '../schema.ts';
import type { ShelfCable } from '../shapes/shelf.ts';
import { howWeKnowAcross, sentencesAcross } from './acrossWords.ts';
import { betweenBy, type Link, lnOf } from './links.ts';
import type { AcrossQuantity } from './quantities.ts';
import { shelfKey } from './shelfCables.ts';

export interface AcrossRow {
  key: string;
  line: ShelfCable;
  /** As its own trial found it. */
  found: Measured;
  /** As it is shown here: widened by the error between trials, or shifted by the linking piece. */
  shown: Measured;
  way: 'as found' | 'widened' | 'shifted';
}

/** The cables of one trial among the chosen ones. */
export interface AcrossGroup {
  trial: string;
  title: string;
  day: string | null;
  /** Coldest and warmest, °C. */
  temperature: readonly [number, number] | null;
  rows: AcrossRow[];
}

/** One cable's figure over another's; an interval that holds 1 does not part them. */
export interface RatioOfTwo {
  first: AcrossRow;
  second: AcrossRow;
  value: number;
  interval: [number, number];
}

/** Chosen cables of several trials by one figure. */
export interface Across {
  quantity: AcrossQuantity;
  groups: AcrossGroup[];
  /** Names of chosen cables that have no such figure, or one in other money. */
  without: string[];
  between: BetweenTrials | null;
  /** Ratio of the first of exactly two shown cables to the second, with its interval; null for another number of them. */
  ratio: RatioOfTwo | null;
  /** The same for every two of three or more shown cables; none for fewer. */
  pairs: RatioOfTwo[];
  sentences: string[];
  howWeKnow: string[];
}

export interface AcrossAsked {
  quantity: AcrossQuantity;
  /** The piece that links the trials; null for none. */
  link: Link | null;
  /** Divides each trial's figures by how far the linking piece read high or low in it. */
  shift: boolean;
  level: number;
}

const withInterval = (figure: Measured, ln: number, [low, high]: [number, number], u: number): Measured => ({
  ...figure,
  value: Math.exp(ln),
  u: Math.exp(ln) * u,
  interval: [Math.exp(low), Math.exp(high)],
});

/** A figure as it may be compared with those of other trials. */
function comparable(
  line: ShelfCable,
  found: Measured,
  between: BetweenTrials | null,
  { shift, level }: AcrossAsked,
): Pick<AcrossRow, 'shown' | 'way'> {
  const figure = lnOf(found);
  if (between === null || figure === null) return { shown: found, way: 'as found' };
  const { ln, u } = figure;
  const moved = shift ? between.shifts.get(line.trial) : undefined;
  if (moved !== undefined) {
    const both = Math.hypot(u, moved.u);
    return {
      shown: withInterval(found, ln - moved.ln, widenedInterval(ln - moved.ln, both, [0], level), both),
      way: 'shifted',
    };
  }
  const interval = widenedInterval(ln, u, between.likely, level);
  return {
    shown: withInterval(found, ln, interval, Math.hypot(u, Math.sqrt(middleOf(between.likely)))),
    way: 'widened',
  };
}

/** The unit that most of the figures have: money of another currency stands on no axis with it. */
function commonUnit(figures: readonly Measured[]): string {
  const counts = new Map<string, number>();
  for (const { unit } of figures) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? '';
}

const rangeOver = (ranges: readonly (readonly [number, number] | null)[]): readonly [number, number] | null => {
  const known = ranges.filter((range) => range !== null);
  if (known.length === 0) return null;
  return [Math.min(...known.map(([low]) => low)), Math.max(...known.map(([, high]) => high))];
};

function groupsOf(rows: readonly AcrossRow[], quantity: AcrossQuantity): AcrossGroup[] {
  const groups = [...group(rows, ({ line }) => line.trial)].map(([trial, own]): AcrossGroup => {
    const days = own.flatMap(({ line }) => line.day ?? []).sort();
    const temperature = rangeOver(own.map(({ line }) => quantity.conditions(line)));
    return { trial, title: own[0]!.line.title, day: days.at(-1) ?? null, temperature, rows: own };
  });
  return groups.sort((a, b) => (a.day ?? '').localeCompare(b.day ?? '', 'en') || a.title.localeCompare(b.title, 'en'));
}

/** The ratio of two rows; null where a figure has no logarithm. */
function ratioOf(
  first: AcrossRow,
  second: AcrossRow,
  between: BetweenTrials | null,
  asked: AcrossAsked,
): RatioOfTwo | null {
  const figure = ({ line, found, shown, way }: AcrossRow) => {
    const known = lnOf(way === 'shifted' ? shown : found);
    return known && { trial: line.trial, ...known };
  };
  const [a, b] = [figure(first), figure(second)];
  if (a === null || b === null) return null;
  const shifted = first.way === 'shifted' && second.way === 'shifted';
  const likely = shifted || between === null ? null : between.likely;
  const [low, high] = ratioInterval(a, b, likely, asked.level);
  return { first, second, value: Math.exp(a.ln - b.ln), interval: [Math.exp(low), Math.exp(high)] };
}

/** More cables than this are looked at, not compared two by two in words. */
const MOST_IN_PAIRS = 8;

/** Every two of the rows, the larger figure first. */
function pairsOf(rows: readonly AcrossRow[], between: BetweenTrials | null, asked: AcrossAsked): RatioOfTwo[] {
  if (rows.length < 3 || rows.length > MOST_IN_PAIRS) return [];
  const falling = [...rows].sort((a, b) => b.shown.value - a.shown.value);
  return falling.flatMap((first, i) =>
    falling.slice(i + 1).flatMap((second) => ratioOf(first, second, between, asked) ?? []),
  );
}

/**
 * Puts chosen cables of several trials side by side by one figure. Without a linking piece the figures stay as found, and the first
 * sentence says that nobody measured the error between the trials. Cables of one trial only are compared as found.
 */
export function acrossOf(chosen: readonly ShelfCable[], asked: AcrossAsked): Across {
  const { quantity, link, level } = asked;
  const figures = chosen.map((line) => ({ line, found: quantity.of(line) }));
  const unit = commonUnit(figures.flatMap(({ found }) => found ?? []));
  const shown = figures.filter(
    (each): each is { line: ShelfCable; found: Measured } => each.found !== null && each.found.unit === unit,
  );
  const several = new Set(shown.map(({ line }) => line.trial)).size > 1;
  const between = several ? betweenBy(link, quantity, level) : null;
  const rows = shown.map(
    ({ line, found }): AcrossRow => ({ key: shelfKey(line), line, found, ...comparable(line, found, between, asked) }),
  );
  const part = {
    quantity,
    groups: groupsOf(rows, quantity),
    without: figures.filter((each) => !shown.includes(each as (typeof shown)[number])).map(({ line }) => line.name),
    between,
    ratio: rows.length === 2 ? ratioOf(rows[0]!, rows[1]!, between, asked) : null,
    pairs: pairsOf(rows, between, asked),
  };
  return { ...part, sentences: sentencesAcross(part, asked, several), howWeKnow: howWeKnowAcross(part, asked) };
}
