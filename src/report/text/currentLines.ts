import type { CurrentCable } from '../../findings/shapes/current.ts';
import { measuredText, UNKNOWN } from '../figures.ts';
import { type AssayPage, GAP, LEAST_NAME, paragraph, shown } from './assayPage.ts';
import { displayWidth } from './displayWidth.ts';
import { type TextColumn, tableHead, tableRow } from './textTable.ts';

const RISE = 12;
const AMPS = 6;
const TAU = 6;
const CARRIES = 12;
const RATING = 8;
/** The sign ± spelt out takes two more. */
const SPELT_SIGN = 2;
const WIDEST_NAME = 24;

interface Planned {
  column: TextColumn;
  cell: (row: CurrentCable) => string;
}

/**
 * The block on current: what is carried in words, then a row for each cable with its heating test and carrying current, and the line
 * that says what it is. No lines where nothing is known of it.
 */
export function currentLines(page: AssayPage): string[] {
  const { current } = page.findings;
  const rows = current?.cables.filter((c) => c.role !== 'control' && (c.heating || c.carrying)) ?? [];
  if (current === null || rows.length === 0) return [];
  const extra = shown('±', page).length > 1 ? SPELT_SIGN : 0;
  const right = (head: string[], width: number, cell: (row: CurrentCable) => string): Planned => ({
    column: { head: head.map((line) => shown(line, page)), width, side: 'right' },
    cell: (row) => shown(cell(row), page),
  });
  const plain = (figure: Parameters<typeof measuredText>[0]) =>
    figure === null ? UNKNOWN : measuredText({ ...figure, unit: '1', condition: undefined });
  const figures: Planned[] = [];
  if (rows.some((r) => r.heating))
    figures.push(
      right(['Rise', 'K'], RISE + extra, ({ heating }) => plain(heating?.steady_rise ?? null)),
      right(['at', 'A'], AMPS, ({ heating }) => heating?.current_A.toFixed(0) ?? UNKNOWN),
      right(['Slow', 'min'], TAU, ({ heating }) => (heating ? (heating.time_constant_s / 60).toFixed(0) : UNKNOWN)),
    );
  if (rows.some((r) => r.carrying))
    figures.push(
      right(['Carries', 'A'], CARRIES + extra, ({ carrying }) => {
        const text = plain(carrying?.current_A ?? null);
        return carrying?.rating_assumed ? `(${text})` : text;
      }),
      right(['to', '°C'], RATING, ({ carrying }) => carrying?.rating_C.toFixed(0) ?? UNKNOWN),
    );
  const room = figures.reduce((sum, { column }) => sum + column.width + GAP, 0);
  const longest = Math.max(...rows.map((r) => displayWidth(shown(r.name, page))));
  const width = Math.min(Math.max(LEAST_NAME, longest), WIDEST_NAME, Math.max(LEAST_NAME, page.width - room));
  const plan: Planned[] = [
    { column: { head: ['Cable'], width, side: 'left', cut: true }, cell: (r) => shown(r.name, page) },
    ...figures,
  ];
  const columns = plan.map(({ column }) => column);
  const body = rows.flatMap((row) =>
    tableRow(
      columns,
      plan.map(({ cell }) => cell(row)),
      page.glyphs.ellipsis,
    ),
  );
  const brackets = rows.some((r) => r.carrying?.rating_assumed)
    ? ' In brackets: no rating is stated, and the lowest usual one was taken.'
    : '';
  return [
    shown('Amps', page),
    ...paragraph(current.sentence, page),
    ...tableHead(columns, page.glyphs.rule),
    ...body,
    ...paragraph(`${current.estimate}${brackets}`, page),
  ];
}
