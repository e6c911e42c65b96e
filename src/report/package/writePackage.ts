import Papa from 'papaparse';
import type { TableShape } from '../../journal/tableShape.ts';
import { tableOfKind } from '../../journal/tables.ts';
import { withAside } from '../../trial/setAside.ts';
import type { AsideKind, Trial, TypedRow } from '../../trial/trial.ts';
import { describePackage, type WrittenTable } from './describePackage.ts';
import type { WrittenPhoto } from './photos.ts';

type Row = Readonly<Record<string, string>>;

const rows = (typed: readonly TypedRow[]): Row[] => typed.map(({ row }) => row);

/** The rows of each table, in the order in which they are folded again. */
function rowsByKind(trial: Trial): [string, Row[]][] {
  const all = (kind: AsideKind, standing: readonly TypedRow[]): [string, Row[]] => [
    kind,
    rows(withAside(trial, kind, standing)),
  ];
  const described = { ...(trial.described?.row ?? {}), trial: trial.trial };
  return [
    ['trial', [described]],
    all('cable', trial.cables),
    all('fitting', trial.fittings),
    all('instrument', trial.instruments),
    all('check', trial.checks),
    all('specimen', trial.specimens),
    all('evidence', trial.evidence),
    ['reading', rows(trial.readings)],
    ['strike', rows(trial.strikes)],
    ['retag', rows(trial.retags)],
    all('judgement', trial.judgements),
    all('endurance', trial.endurance),
    all('current', trial.currents),
    ['withdrawal', rows(trial.withdrawals)],
    ['note', rows(trial.notes)],
    ['setting', rows(trial.settingRows)],
    ['blinding', rows(trial.blinding.acts)],
    ['seal', rows(trial.sealRows)],
    ['reply', rows(trial.replies)],
  ];
}

const cellOf = (row: Row, name: string): string => (row[name] ?? '').replace(/\r\n?/g, '\n').trim();

/** Columns that are required or say something: known ones in their order, then unknown ones by name. */
function columnsOf(shape: TableShape, written: readonly Row[]): string[] {
  const filled = new Set(written.flatMap((row) => Object.keys(row).filter((name) => cellOf(row, name) !== '')));
  const known = shape.columns.filter((column) => column.required || filled.has(column.name)).map(({ name }) => name);
  const unknown = [...filled].filter((name) => !shape.columns.some((column) => column.name === name));
  return [...known, ...unknown.sort()];
}

function tableText(columns: readonly string[], written: readonly Row[]): string {
  const data = written.map((row) => columns.map((name) => cellOf(row, name)));
  return `${Papa.unparse({ fields: [...columns], data }, { newline: '\n' })}\n`;
}

/**
 * Writes a trial as the files of a data package: a CSV file for each table that has rows, and `datapackage.json`, which
 * describes them. UTF-8, comma, header row; every cell as it was typed, unknown columns, struck and replaced readings
 * included. Reading the files again gives the same content.
 *
 * Cells that begin with `=`, `+`, `-` or `@` are written as they are, because changing them would change the data: a
 * spreadsheet may take them for formulas, so open packages of strangers as text.
 *
 * @param photos are described among the resources; their files are `photoFiles(photos)`, to be put beside these
 */
export function writePackage(trial: Trial, photos: readonly WrittenPhoto[] = []): Map<string, string> {
  const tables: WrittenTable[] = rowsByKind(trial).flatMap(([kind, written]) => {
    const shape = tableOfKind(kind)!;
    if (written.length === 0) return [];
    const columns = columnsOf(shape, written);
    return [{ shape, columns, rows: written, text: tableText(columns, written) }];
  });
  const files = new Map(tables.map(({ shape, text }) => [shape.file, text]));
  files.set('datapackage.json', `${JSON.stringify(describePackage(trial, tables, photos), null, 2)}\n`);
  return files;
}
