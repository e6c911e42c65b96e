import type { Entry } from '../../journal/entry.ts';
import { canonicalRow } from '../../journal/importedId.ts';
import { rowKey } from '../../journal/tableShape.ts';
import { tableOfKind } from '../../journal/tables.ts';

/** Table and name of a row as one text, such as `readings.csv r017`; null for rows that have no name of their own. */
export function nameInTable({ kind, body }: Entry): string | null {
  const shape = tableOfKind(kind);
  const key = shape && rowKey(shape, body);
  return shape && key ? `${shape.file} ${key.replaceAll('\u001f', ' ').trim()}` : null;
}

const textOf = ({ body }: Entry): string => JSON.stringify(canonicalRow(body));

/**
 * Rows that say otherwise than the row of the same name among `known`, by table and name, each once, in the order of `entries`. Rows
 * that only one side has are not among them.
 */
export function changedRows(entries: readonly Entry[], known: readonly Entry[]): string[] {
  const texts = new Map<string, Set<string>>();
  for (const entry of known) {
    const name = nameInTable(entry);
    if (name !== null) texts.set(name, (texts.get(name) ?? new Set()).add(textOf(entry)));
  }
  const changed = entries.flatMap((entry) => {
    const name = nameInTable(entry);
    const there = name === null ? undefined : texts.get(name);
    return there && !there.has(textOf(entry)) ? [name!] : [];
  });
  return [...new Set(changed)];
}
