import type { EntryKind } from '../../journal/entry.ts';
import type { KnownKeys } from '../../journal/knownKeys.ts';
import { tableOfKind } from '../../journal/tables.ts';
import { checkStrandWidths } from '../../journal/widthCheck.ts';
import type { ReadTable } from './readTables.ts';
import { addKeys, type ReferenceCheck, referenceRefusals } from './references.ts';
import { refusal } from './refusal.ts';
import type { PlacedRow } from './tableRows.ts';

/** Takes rows out of the good ones; a row refused as bad takes along what is cut from it or corrects it. */
function refuseRows(table: ReadTable, refused: ReferenceCheck['refused'], gone: KnownKeys): void {
  if (refused.size === 0) return;
  table.good = table.good.filter((placed) => !refused.has(placed));
  table.bad.push(...refused.keys());
  table.refusals.push(...refused.values());
  addKeys(gone, table.shape, [...refused.keys()]);
}

/** Takes rows out without a word: the table that they lack is named once. */
function setAdrift(table: ReadTable, adrift: ReadonlySet<PlacedRow>, gone: KnownKeys): void {
  if (adrift.size === 0) return;
  table.good = table.good.filter((placed) => !adrift.has(placed));
  table.bad.push(...adrift);
  addKeys(gone, table.shape, [...adrift]);
}

/** Within one table, until nothing more falls: a piece may be cut from a piece that was cut from a refused one. */
function judgeTable(table: ReadTable, described: KnownKeys, gone: KnownKeys): Set<EntryKind> {
  addKeys(gone, table.shape, table.bad);
  const missing = new Set<EntryKind>();
  for (;;) {
    const known: KnownKeys = new Map(described);
    known.set(table.shape.kind, new Set(described.get(table.shape.kind)));
    addKeys(known, table.shape, table.good);
    const { refused, missingTables, adrift } = referenceRefusals(table.shape, table.good, known, gone);
    for (const kind of missingTables) missing.add(kind);
    refuseRows(table, refused, gone);
    setAdrift(table, adrift, gone);
    if (refused.size === 0 && adrift.size === 0) return missing;
  }
}

/** Kinds whose file is there but could not be read: that was said already. */
function unreadKinds(tables: readonly ReadTable[]): Set<EntryKind> {
  return new Set(tables.filter((table) => table.refusals.length > 0).map((table) => table.shape.kind));
}

/** Tables that others cannot do without, with what names them. */
function missingTableRefusals(table: ReadTable, missing: ReadonlySet<EntryKind>, said: Set<EntryKind>): void {
  for (const kind of missing) {
    const target = tableOfKind(kind)!;
    const optional = table.shape.columns.some((column) => column.refersTo === kind && column.mayBeUndescribed);
    if (optional) {
      table.notes.push(
        `${table.shape.file} names tools that no ${target.file} describes; usual limits of error are assumed.`,
      );
      continue;
    }
    if (said.has(kind)) continue;
    said.add(kind);
    table.refusals.push(
      refusal(target.file, null, null, {
        found: 'no such file, or no rows in it',
        expected: `a row for each ${target.key![0]} that ${table.shape.file} names`,
      }),
    );
  }
}

function refuseWideStrands(readings: ReadTable, specimens: readonly PlacedRow[], gone: KnownKeys): void {
  const cableOf = new Map(specimens.map(({ row }) => [row.specimen ?? '', row.cable ?? '']));
  const problems = checkStrandWidths(
    readings.good.map(({ row }) => row),
    cableOf,
  );
  const refused: ReferenceCheck['refused'] = new Map();
  for (const placed of readings.good) {
    const problem = problems.get(placed.row);
    if (problem) refused.set(placed, refusal(readings.shape.file, placed.line, problem.column, problem));
  }
  refuseRows(readings, refused, gone);
}

/**
 * Judges the rows of all tables against each other: names that nothing describes, and strands wider than their cable.
 *
 * @param tables in the order in which they refer to each other; changed in place
 * @param described what a journal on the shelf already describes
 */
export function judgeReferences(tables: readonly ReadTable[], described: KnownKeys): void {
  const known: KnownKeys = new Map([...described].map(([kind, keys]) => [kind, new Set(keys)]));
  const gone: KnownKeys = new Map();
  const said = unreadKinds(tables);
  const pieces = tables.find((table) => table.shape.kind === 'specimen')?.good ?? [];
  for (const table of tables) {
    if (table.shape.kind === 'reading') refuseWideStrands(table, pieces, gone);
    const missing = judgeTable(table, known, gone);
    addKeys(known, table.shape, table.good);
    missingTableRefusals(table, missing, said);
  }
}
