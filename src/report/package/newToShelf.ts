import type { Entry } from '../../journal/entry.ts';
import { idTime } from '../../journal/idTime.ts';
import { canonicalRow, importedId } from '../../journal/importedId.ts';

const saying = (entry: Entry): string => JSON.stringify([entry.kind, canonicalRow(entry.body)]);

function countSayings(entries: readonly Entry[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const entry of entries) {
    const said = saying(entry);
    counts.set(said, (counts.get(said) ?? 0) + 1);
  }
  return counts;
}

/**
 * What an imported package says that the journal on the shelf does not: rows that it holds already, or held before they
 * were corrected, are not said again; rows that are new, or were edited in the file, come after everything that is there,
 * so that an edited row corrects the earlier one.
 *
 * Deterministic: the new ids depend on the two sets alone.
 */
export function newToShelf(imported: readonly Entry[], shelf: readonly Entry[]): Entry[] {
  if (shelf.length === 0) return [...imported];
  const ids = new Set(shelf.map((entry) => entry.id));
  const said = countSayings(shelf);
  const after = shelf.reduce((latest, entry) => Math.max(latest, idTime(entry.id)), 0) + 1;
  const news = imported.filter((entry) => {
    const left = said.get(saying(entry)) ?? 0;
    if (left > 0) said.set(saying(entry), left - 1);
    return left === 0 && !ids.has(entry.id);
  });
  return news.map((entry, place) => ({
    ...entry,
    id: importedId(entry.trial, entry.kind, entry.body, after, place),
  }));
}
