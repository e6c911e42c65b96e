/** Tables of a data package as plain rows, and the two forms in which a trial travels: files of text, or entries. */
import type { Entry, EntryKind } from '../../src/journal/entry.ts';

export type Row = Readonly<Record<string, string>>;
export type PackageTables = Partial<Record<TableName, Row[]>>;

const TABLES = {
  trial: { kind: 'trial', title: 'What is compared, where and why' },
  cables: { kind: 'cable', title: 'The cables and what their labels claim' },
  fittings: { kind: 'fitting', title: 'Lugs and terminals that were tried' },
  instruments: { kind: 'instrument', title: 'Tools with their limits of error' },
  specimens: { kind: 'specimen', title: 'Pieces and what they were cut from' },
  evidence: { kind: 'evidence', title: 'What was seen by eye' },
  readings: { kind: 'reading', title: 'One row per reading' },
  judgements: { kind: 'judgement', title: 'Pairs bent by hand, and which bends more easily' },
  endurance: { kind: 'endurance', title: 'How long jackets lasted under abuse' },
  currents: { kind: 'current', title: 'Pieces heated by a steady current, moment by moment' },
  struck: { kind: 'strike', title: 'Readings that no longer count, with the reason' },
  parts: { kind: 'seal', title: 'Parts that were sealed for publishing' },
  replies: { kind: 'reply', title: 'What makers were asked and what came back' },
} as const satisfies Record<string, { kind: EntryKind; title: string }>;
export type TableName = keyof typeof TABLES;
const NAMES = Object.keys(TABLES) as TableName[];

/** Cells as text, numbers with all their digits; null is a blank cell, which keeps the column in its place. */
export function row(cells: Readonly<Record<string, string | number | null>>): Row {
  return Object.fromEntries(Object.entries(cells).map(([name, cell]) => [name, cell === null ? '' : String(cell)]));
}

function withoutBlanks(cells: Row): Row {
  return Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== ''));
}

/** A value as a display with this resolution shows it: rounded to whole steps, with the step's decimals. */
export function shown(value: number, resolution: number): string {
  const decimals = Math.max(0, Math.ceil(-Math.log10(resolution) - 1e-9));
  return (Math.round(value / resolution) * resolution).toFixed(decimals);
}

/** Entries with ids in the order of the rows, as if they had been typed one after the other. */
export function entriesOf(trial: string, tables: PackageTables, at = '2026-10-03T09:00:00Z'): Entry[] {
  const entries: Entry[] = [];
  for (const name of NAMES) {
    for (const body of tables[name] ?? []) {
      const number = (entries.length + 1).toString(16).padStart(12, '0');
      const id = `00000000-0000-7000-8000-${number}`;
      entries.push({ id, trial, kind: TABLES[name].kind, at, by: '', device: '', body: withoutBlanks(body) });
    }
  }
  return entries;
}

/** The files of a data package: one CSV per table and the descriptor (Frictionless Data Package). */
export function filesOf(name: string, title: string, description: string, tables: PackageTables): Map<string, string> {
  const files = new Map<string, string>();
  const resources = [];
  for (const table of NAMES) {
    const rows = tables[table] ?? [];
    if (rows.length === 0) continue;
    const columns = filledColumns(rows);
    files.set(`${table}.csv`, csvText(columns, rows));
    resources.push({
      name: table,
      path: `${table}.csv`,
      title: TABLES[table].title,
      profile: 'tabular-data-resource',
      encoding: 'utf-8',
      schema: { fields: columns.map((column) => ({ name: column, type: 'string' })) },
    });
  }
  const descriptor = { profile: 'tabular-data-package', name, title, description, resources };
  files.set('datapackage.json', `${JSON.stringify(descriptor, null, 2)}\n`);
  return files;
}

/** Columns in the order in which rows name them, without those that are blank in every row. */
function filledColumns(rows: readonly Row[]): string[] {
  const columns = [...new Set(rows.flatMap((each) => Object.keys(each)))];
  return columns.filter((column) => rows.some((each) => (each[column] ?? '') !== ''));
}

function csvText(columns: readonly string[], rows: readonly Row[]): string {
  const line = (cells: readonly string[]) => cells.map(csvCell).join(',');
  return `${[line(columns), ...rows.map((each) => line(columns.map((column) => each[column] ?? '')))].join('\n')}\n`;
}

function csvCell(text: string): string {
  return /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
