import Papa from 'papaparse';
import type { Findings, Measured } from '../../findings/schema.ts';

/** What makes a spreadsheet read a cell as a formula, or run on into the next. OWASP, "CSV Injection": from memory. */
const FORMULA = /^[\s\u00a0]*[=+\-@\t\r|%]/;

/** A cell of words that no spreadsheet takes for a formula: such a one gets an apostrophe before it, which spreadsheets do not show. */
export const harmlessCell = (text: string): string => {
  const oneLine = text.replace(/[\r\n\t\0]+/g, ' ');
  return FORMULA.test(oneLine) ? `'${oneLine}` : oneLine;
};

const COLUMNS = ['cable', 'name', 'figure', 'value', 'unit', 'u', 'low', 'high', 'level', 'condition', 'from'] as const;

type Row = readonly (string | number)[];

function row(cable: string, name: string, figure: string, m: Measured): Row {
  const { value, unit, u, interval, level, condition = '', from } = m;
  return [
    harmlessCell(cable),
    harmlessCell(name),
    figure,
    value,
    unit,
    u,
    interval[0],
    interval[1],
    level,
    condition,
    from.join(' '),
  ];
}

const isMeasured = (thing: unknown): thing is Measured =>
  typeof thing === 'object' && thing !== null && 'interval' in thing && 'u' in thing && 'unit' in thing;

/** Every measured figure below a part of the findings, named by its path. */
function figuresIn(thing: unknown, path: string): [string, Measured][] {
  if (isMeasured(thing)) return [[path, thing]];
  if (typeof thing !== 'object' || thing === null || Array.isArray(thing)) return [];
  return Object.entries(thing).flatMap(([key, inner]) => figuresIn(inner, path === '' ? key : `${path}.${key}`));
}

/**
 * All figures of a trial as one table for a spreadsheet: a row each, with both ends of its interval. Names are written so that no
 * spreadsheet runs them; the data package itself keeps every cell as it was typed.
 */
export function findingsCsv(findings: Findings): string {
  const rows: Row[] = [];
  for (const c of findings.cables)
    for (const [figure, m] of figuresIn(c, '')) rows.push(row(c.cable, c.name, figure, m));
  const parts = [
    ['bend', findings.flex?.cables ?? []],
    ['jacket', findings.jacket?.cables ?? []],
    ['amps', findings.current?.cables ?? []],
  ] as const;
  for (const [place, cables] of parts)
    for (const c of cables)
      for (const [figure, m] of figuresIn(c, '')) rows.push(row(c.cable, c.name, `${place}.${figure}`, m));
  for (const v of findings.decide?.value ?? [])
    for (const [figure, m] of figuresIn(v, ''))
      rows.push(row(v.cable, v.name, `standing.${figure}`, { ...m, unit: harmlessCell(m.unit) }));
  return `${Papa.unparse({ fields: [...COLUMNS], data: rows.map((r) => [...r]) }, { newline: '\n' })}\n`;
}
