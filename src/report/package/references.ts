import type { EntryKind } from '../../journal/entry.ts';
import { addKey, type KnownKeys } from '../../journal/knownKeys.ts';
import { nearestWord } from '../../journal/nearestWord.ts';
import { rowKey, type TableShape } from '../../journal/tableShape.ts';
import { tableOfKind } from '../../journal/tables.ts';
import { type Refusal, refusal } from './refusal.ts';
import type { PlacedRow } from './tableRows.ts';

const quoted = (text: string): string => `"${text.replaceAll('\u001f', ' with ')}"`;

/** Rows whose key an earlier row of the same file has: they would silently take its place. */
export function duplicateRefusals(shape: TableShape, rows: readonly PlacedRow[]): Map<PlacedRow, Refusal> {
  const first = new Map<string, number>();
  const refused = new Map<PlacedRow, Refusal>();
  if (shape.key === null) return refused;
  for (const placed of rows) {
    const key = rowKey(shape, placed.row)!;
    const line = first.get(key);
    if (line === undefined) first.set(key, placed.line);
    else {
      const found = `${quoted(key)}, which line ${line} has already`;
      refused.set(placed, refusal(shape.file, placed.line, shape.key[0]!, { found, expected: 'a name of its own' }));
    }
  }
  return refused;
}

export interface ReferenceCheck {
  refused: Map<PlacedRow, Refusal>;
  /** Tables that rows refer to although nothing describes any of their rows. */
  missingTables: Set<EntryKind>;
  /** Rows that cannot stand because such a table is missing; said once for the table. */
  adrift: Set<PlacedRow>;
}

/**
 * Rows that name something which is not described: a reading of an unknown piece, a piece of an unknown cable.
 *
 * Where nothing at all of that kind is described, the whole table is missing: that is said once, not once for each row.
 *
 * @param known what may be referred to; for a table that refers to itself, its own rows included
 * @param gone keys that are in the file but were themselves refused
 */
export function referenceRefusals(
  shape: TableShape,
  rows: readonly PlacedRow[],
  known: KnownKeys,
  gone: KnownKeys,
): ReferenceCheck {
  const refused = new Map<PlacedRow, Refusal>();
  const missingTables = new Set<EntryKind>();
  const adrift = new Set<PlacedRow>();
  const referring = shape.columns.filter((column) => column.refersTo !== undefined);
  for (const placed of rows) {
    for (const column of referring) {
      const name = placed.row[column.name] ?? '';
      const target = tableOfKind(column.refersTo!)!;
      const names = known.get(target.kind);
      if (name === '' || names?.has(name)) continue;
      const wasRefused = gone.get(target.kind)?.has(name) ?? false;
      if (!names && !gone.has(target.kind)) {
        missingTables.add(target.kind);
        if (!column.mayBeUndescribed) adrift.add(placed);
      } else if (!refused.has(placed)) {
        refused.set(placed, unknownName(shape, placed, column.name, name, target, wasRefused, names));
      }
    }
  }
  return { refused, missingTables, adrift };
}

function unknownName(
  shape: TableShape,
  placed: PlacedRow,
  column: string,
  name: string,
  target: TableShape,
  wasRefused: boolean,
  names: ReadonlySet<string> | undefined,
): Refusal {
  const expected = `a name that ${target.file} describes`;
  if (wasRefused) {
    const found = `${quoted(name)}, whose own row in ${target.file} was refused`;
    return refusal(shape.file, placed.line, column, { found, expected });
  }
  const near = nearestWord(name, [...(names ?? [])]);
  const advice = near ? `Did you mean ${near}?` : `Add a row for it to ${target.file}, or correct the name.`;
  return refusal(shape.file, placed.line, column, {
    found: `${quoted(name)}, which is not described`,
    expected,
    advice,
  });
}

/** Adds the keys of rows to what may be referred to. */
export function addKeys(known: KnownKeys, shape: TableShape, rows: readonly PlacedRow[]): void {
  if (shape.key === null) return;
  for (const { row } of rows) {
    addKey(known, shape.kind, rowKey(shape, row)!);
    // A fitting is one row for each cable tried in it, and is named by its first column.
    if (shape.key.length > 1) addKey(known, shape.kind, row[shape.key[0]!] ?? '');
  }
}
