import { checkRow } from '../../journal/rowCheck.ts';
import type { TableShape } from '../../journal/tableShape.ts';
import { decodeText } from './decodeText.ts';
import { duplicateRefusals } from './references.ts';
import { type Refusal, refusal } from './refusal.ts';
import { type PlacedRow, tableRows } from './tableRows.ts';

/** One table as far as it can be judged by itself. */
export interface ReadTable {
  shape: TableShape;
  good: PlacedRow[];
  /** Rows that were refused; what refers to them cannot stand either. */
  bad: PlacedRow[];
  refusals: Refusal[];
  notes: string[];
}

export interface TableLimits {
  /** Largest file that is read, bytes. */
  fileBytes: number;
}

const MEGABYTE = 1_000_000;
/** Far above the largest honest trial, and still read in seconds. */
export const USUAL_TABLE_LIMITS: TableLimits = { fileBytes: 200 * MEGABYTE };

const refusedTable = (shape: TableShape, because: Refusal): ReadTable => ({
  shape,
  good: [],
  bad: [],
  refusals: [because],
  notes: [],
});

/** Reads one file into rows and refuses those that are impossible or have a name twice. References are judged later. */
export function readTable(shape: TableShape, bytes: Uint8Array, now: number, limits: TableLimits): ReadTable {
  if (bytes.length > limits.fileBytes) {
    const found = `a file of ${megabytes(bytes.length)}`;
    const expected = `at most ${megabytes(limits.fileBytes)}`;
    return refusedTable(shape, refusal(shape.file, null, null, { found, expected }));
  }
  const decoded = decodeText(bytes);
  if (!decoded.ok) return refusedTable(shape, refusal(shape.file, null, null, decoded.refused));
  const { rows, refusals, notes } = tableRows(shape, decoded.text);
  if (decoded.note) notes.unshift(`${shape.file} ${decoded.note}.`);
  const table: ReadTable = { shape, good: [], bad: [], refusals, notes };
  const possible: PlacedRow[] = [];
  for (const placed of rows) {
    if (shape.kind === 'seal' && (placed.row.part ?? '').trim() === '') {
      notes.push(`${shape.file}, line ${placed.line}: a part was sealed without a name, and is left aside.`);
      continue;
    }
    const problems = checkRow(shape, placed.row, { now });
    for (const { column, ...problem } of problems) refusals.push(refusal(shape.file, placed.line, column, problem));
    (problems.length === 0 ? possible : table.bad).push(placed);
  }
  const twice = duplicateRefusals(shape, possible);
  refusals.push(...twice.values());
  table.good = possible.filter((placed) => !twice.has(placed));
  table.bad.push(...twice.keys());
  return table;
}

function megabytes(bytes: number): string {
  return bytes >= MEGABYTE ? `${Math.round(bytes / MEGABYTE)} MB` : `${bytes} bytes`;
}
