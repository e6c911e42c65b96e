import type { Decide } from '../../../findings/shapes/decide.ts';
import { nameLabel } from '../../nameLabel.ts';
import { group, label, line, rectangle, svgDocument } from '../../svg.ts';
import type { Theme } from '../../theme.ts';
import type { ChartPicture } from './nameChart.ts';

const ROW = 52;
const TALLEST = 32;
const HEAD = 26;
const NAME = 15;
const NOTE = 13;
const NAMES = 156;
const BANDS = 110;
/** Chances smaller than this have neither bar nor figure. */
const SHOWN_FROM = 0.005;
const STRONG_FROM = 0.3;

/** 1st, 2nd, 3rd, 4th, 11th, 21st. */
export function ordinal(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  const ending = teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${ending}`;
}

/** The places of a band in words: `1st`, `2nd and 3rd`, `2nd to 5th`. */
export function bandPlaces(first: number, count: number): string {
  if (count === 1) return ordinal(first);
  return `${ordinal(first)} ${count === 2 ? 'and' : 'to'} ${ordinal(first + count - 1)}`;
}

/** The chance of each place for each cable, bands bracketed: bars standing on the row's line, the figure above. */
export function placeChart({ cables }: Decide, { width, theme }: { width: number; theme: Theme }): ChartPicture {
  const n = cables.length;
  const cell = (width - BANDS - NAMES) / n;
  const height = HEAD + n * ROW;
  const left = BANDS + NAMES;
  const heads = cables.map((_, place) =>
    label(left + (place + 0.5) * cell, HEAD - 10, ordinal(place + 1), {
      'font-size': NOTE,
      'font-weight': '600',
      fill: theme.ink,
      'text-anchor': 'middle',
    }),
  );
  const rows = cables.map(({ name, place_probability: chances }, i) => {
    const foot = HEAD + (i + 1) * ROW;
    const bars = chances.map((chance, place) => {
      if (chance < SHOWN_FROM) return '';
      const tall = chance * TALLEST;
      const x = left + place * cell;
      const wide = Math.min(64, cell - 10);
      return group(
        {},
        rectangle(x + (cell - wide) / 2, foot - tall, wide, tall, { fill: theme.copper }),
        label(x + cell / 2, foot - tall - 4, String(Math.round(100 * chance)), {
          'font-size': NOTE,
          'font-weight': chance >= STRONG_FROM ? '600' : '400',
          fill: theme.ink,
          'text-anchor': 'middle',
        }),
      );
    });
    return group(
      {},
      nameLabel(BANDS, foot - ROW / 2 + 5, name, { size: NAME, width: NAMES - 12, theme }),
      ...bars,
      line(BANDS, foot, width, foot, { stroke: theme.rule, 'stroke-width': 1 }),
    );
  });
  const description = cables
    .map(
      ({ name, place_probability: p }) =>
        `${name}: ${p.map((x, i) => `${ordinal(i + 1)} ${Math.round(100 * x)} %`).join(', ')}.`,
    )
    .join(' ');
  const svg = svgDocument(
    { width, height, description },
    line(0, HEAD, width, HEAD, { stroke: theme.ink, 'stroke-width': 1 }),
    ...heads,
    ...rows,
    ...brackets(cables, theme),
  );
  return { svg, width, height, description };
}

function brackets(cables: Decide['cables'], theme: Theme): string[] {
  const bands = [...new Set(cables.map(({ band }) => band))];
  const ink = { stroke: theme.ink, 'stroke-width': 2 };
  return bands.map((band) => {
    const first = cables.findIndex((c) => c.band === band);
    const count = cables.filter((c) => c.band === band).length;
    const [top, foot] = [HEAD + first * ROW + 5, HEAD + (first + count) * ROW - 5];
    const middle = (top + foot) / 2;
    return group(
      {},
      line(1, top, 1, foot, ink),
      line(0, top, 9, top, ink),
      line(0, foot, 9, foot, ink),
      label(14, middle - 2, bandPlaces(first + 1, count), { 'font-size': NOTE, 'font-weight': '600', fill: theme.ink }),
      label(14, middle + 14, count === 1 ? 'stands alone' : 'no clean cut', {
        'font-size': NOTE - 1,
        fill: theme.ink2,
      }),
    );
  });
}
