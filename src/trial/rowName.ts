import { canonicalRow } from '../journal/importedId.ts';
import { textHash } from '../journal/textHash.ts';
import { cell, type Row } from './cells.ts';

const MARK_LENGTH = 10;

/**
 * What a row of a table without keys is called: the cell in the column that bears the table's name, else a mark made of what
 * the row says, which export and import keep.
 */
export function rowName(kind: 'evidence' | 'endurance', row: Row): string {
  return cell(row, kind) || textHash(JSON.stringify(canonicalRow(row))).slice(0, MARK_LENGTH);
}
