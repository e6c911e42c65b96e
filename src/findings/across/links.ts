import { group } from 'd3-array';
import { type BetweenTrials, betweenTrials, type TrialFigure } from '../../methods/across/betweenTrials.ts';
import type { Measured } from '../schema.ts';
import type { ShelfCable } from '../shapes/shelf.ts';
import type { AcrossQuantity } from './quantities.ts';
import { plainWords } from './searchShelf.ts';

/** A piece that is measured in several trials under one name. */
export interface Link {
  /** As typed in the first of its trials. */
  name: string;
  /** Its line in each trial. */
  lines: ShelfCable[];
  /** How many trials measured it. */
  trials: number;
}

/** The pieces that trials share, the one of most trials first. Capitals and spaces make no difference. */
export function linksOn(shelf: readonly ShelfCable[]): Link[] {
  const links = group(shelf, (line) => plainWords(line.shared_name));
  links.delete('');
  return [...links.values()]
    .map((lines) => ({ name: lines[0]!.shared_name, lines, trials: new Set(lines.map(({ trial }) => trial)).size }))
    .sort((a, b) => b.trials - a.trials);
}

/** A positive figure as its logarithm and relative uncertainty; null for one that may be nothing, or that holds only under a condition. */
export function lnOf(figure: Measured | null): { ln: number; u: number } | null {
  if (figure === null || figure.condition || !(figure.value > 0 && figure.interval[0] > 0)) return null;
  return { ln: Math.log(figure.value), u: figure.u / figure.value };
}

/** The linking piece's figures by trial; of two pieces of one name in one trial the mean, with the larger doubt. */
export function linkFigures(link: Link, quantity: AcrossQuantity): TrialFigure[] {
  const { linkedBy } = quantity;
  if (linkedBy === null) return [];
  const figures = link.lines.flatMap((line) => {
    const figure = lnOf(linkedBy(line));
    return figure === null ? [] : [{ trial: line.trial, ...figure }];
  });
  return [...group(figures, ({ trial }) => trial)].map(([trial, all]) => ({
    trial,
    ln: all.reduce((sum, { ln }) => sum + ln, 0) / all.length,
    u: Math.max(...all.map(({ u }) => u)),
  }));
}

/** Said of a difference between trials where nobody measured their error. */
export const IF_NO_ERROR = ', if the trials bring no error of their own';

/** What a linking piece says of the error between trials; null where it was not measured in two. */
export const betweenBy = (link: Link | null, quantity: AcrossQuantity, level: number): BetweenTrials | null =>
  link === null ? null : betweenTrials(linkFigures(link, quantity), level);
