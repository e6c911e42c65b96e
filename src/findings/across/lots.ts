import { group } from 'd3-array';
import { type Drift, driftOf } from '../../methods/across/drift.ts';
import type { Measured } from '../schema.ts';
import type { ShelfCable } from '../shapes/shelf.ts';
import { percentRange, percentWords } from './acrossWords.ts';
import { betweenBy, IF_NO_ERROR, type Link, lnOf } from './links.ts';
import type { AcrossQuantity } from './quantities.ts';
import { plainWords } from './searchShelf.ts';
import { shelfKey } from './shelfCables.ts';

/** One lot at one time. */
export interface LotPoint {
  key: string;
  line: ShelfCable;
  day: string;
  figure: Measured;
}

/** A lot that was measured at several times, by one figure. */
export interface LotOverTime {
  lot: string;
  name: string;
  points: LotPoint[];
  drift: Drift;
  sentence: string;
  howWeKnow: string;
}

const MS_PER_YEAR = 365.25 * 24 * 3600 * 1000;
const yearsOf = (day: string): number => Date.parse(day) / MS_PER_YEAR;

/** Lines of one lot of one maker and model that come from two trials or more; capitals and spaces make no difference. */
function lotsOn(shelf: readonly ShelfCable[]): ShelfCable[][] {
  const told = shelf.filter(({ lot, day }) => plainWords(lot) !== '' && day !== null);
  const lots = group(told, ({ lot, name }) => `${plainWords(lot)}\u001f${plainWords(name)}`);
  return [...lots.values()].filter((lines) => new Set(lines.map(({ trial }) => trial)).size > 1);
}

function sentenceOf(name: string, lot: string, points: readonly LotPoint[], drift: Drift, known: boolean): string {
  const { change, interval, wouldShow } = drift;
  const from = points[0]!.day;
  const to = points.at(-1)!.day;
  const unless = known ? '' : IF_NO_ERROR;
  const lead = `${name}, lot ${lot}, ${from} to ${to}: `;
  if (interval[0] <= 0 && interval[1] >= 0)
    return `${lead}no change seen; one of ${percentWords(wouldShow)} would have shown nine times in ten${unless}.`;
  return `${lead}${change > 0 ? 'up' : 'down'} by ${percentWords(change)} (${percentRange(...interval)})${unless}.`;
}

/**
 * Lots that were measured again, with the change of one figure over time. With a linking piece the error between trials is part of
 * the doubt; without one the sentence says that it is not.
 */
export function lotsOverTime(
  shelf: readonly ShelfCable[],
  { quantity, link, level }: { quantity: AcrossQuantity; link: Link | null; level: number },
): LotOverTime[] {
  if (quantity.linkedBy === null) return [];
  const between = betweenBy(link, quantity, level);
  return lotsOn(shelf).flatMap((lines) => {
    const points = lines.flatMap((line): LotPoint[] => {
      const figure = quantity.of(line);
      return figure === null || lnOf(figure) === null ? [] : [{ key: shelfKey(line), line, day: line.day!, figure }];
    });
    points.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
    const timed = points.map(({ day, figure }) => ({ years: yearsOf(day), ...lnOf(figure)! }));
    const drift = driftOf(timed, between?.likely ?? [0], level);
    if (drift === null || new Set(points.map(({ line }) => line.trial)).size < 2) return [];
    const { name, lot } = lines[0]!;
    const scatter =
      drift.scatterChance === null ? '' : ` Scatter about the line: p = ${drift.scatterChance.toPrecision(2)}.`;
    const howWeKnow = `Straight line through the logarithms of ${points.length} figures, weighted by their doubt${between === null ? '' : ` and the error between trials of ${percentWords(between.spread)}`}.${scatter}`;
    return [{ lot, name, points, drift, sentence: sentenceOf(name, lot, points, drift, between !== null), howWeKnow }];
  });
}
