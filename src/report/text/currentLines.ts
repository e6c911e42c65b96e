import type { CurrentCable } from '../../findings/shapes/current.ts';
import { measuredText, UNKNOWN } from '../figures.ts';
import { type AssayPage, extraSign, paragraph, shown } from './assayPage.ts';
import { cableTable, figures, type Planned } from './cableTable.ts';

const RISE = 12;
const AMPS = 6;
const TAU = 6;
const CARRIES = 12;
const RATING = 8;

/**
 * The block on current: what is carried in words, then a row for each cable with its heating test and carrying current, and the line
 * that says what it is. No lines where nothing is known of it.
 */
export function currentLines(page: AssayPage): string[] {
  const { current } = page.findings;
  const rows = current?.cables.filter((c) => c.role !== 'control' && (c.heating || c.carrying)) ?? [];
  if (current === null || rows.length === 0) return [];
  const extra = extraSign(page);
  const right = (head: string[], width: number, cell: (row: CurrentCable) => string) =>
    figures(page, head, width, cell);
  const plain = (figure: Parameters<typeof measuredText>[0]) =>
    figure === null ? UNKNOWN : measuredText({ ...figure, unit: '1', condition: undefined });
  const columns: Planned<CurrentCable>[] = [];
  if (rows.some((r) => r.heating))
    columns.push(
      right(['Rise', 'K'], RISE + extra, ({ heating }) => plain(heating?.steady_rise ?? null)),
      right(['at', 'A'], AMPS, ({ heating }) => heating?.current_A.toFixed(0) ?? UNKNOWN),
      right(['Slow', 'min'], TAU, ({ heating }) => (heating ? (heating.time_constant_s / 60).toFixed(0) : UNKNOWN)),
    );
  if (rows.some((r) => r.carrying))
    columns.push(
      right(['Carries', 'A'], CARRIES + extra, ({ carrying }) => {
        const text = plain(carrying?.current_A ?? null);
        return carrying?.rating_assumed ? `(${text})` : text;
      }),
      right(['to', '°C'], RATING, ({ carrying }) => carrying?.rating_C.toFixed(0) ?? UNKNOWN),
    );
  const brackets = rows.some((r) => r.carrying?.rating_assumed)
    ? ' In brackets: no rating is stated, and the lowest usual one was taken.'
    : '';
  return [
    shown('Amps', page),
    ...paragraph(current.sentence, page),
    ...cableTable(page, rows, columns),
    ...paragraph(`${current.estimate}${brackets}`, page),
  ];
}
