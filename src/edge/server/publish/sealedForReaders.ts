import type { Entry } from '../../../journal/entry.ts';
import { mergeEntries } from '../../../journal/merge.ts';
import { cell } from '../../../trial/cells.ts';
import { fold } from '../../../trial/fold.ts';
import { partEntries } from '../../../trial/partEntries.ts';

/**
 * The part of a journal that a reader may see: the rows of sealed parts that are not hidden, their seals, and replies about
 * their cables. Nothing of what is not sealed yet; empty while nothing is.
 */
export function sealedForReaders(entries: readonly Entry[]): Entry[] {
  const parts = fold(entries.filter(({ kind }) => kind === 'seal')).parts.filter(({ hidden }) => !hidden);
  if (parts.length === 0) return [];
  const said = mergeEntries(entries).filter(({ kind }) => kind !== 'seal' && kind !== 'reply');
  const held = parts.flatMap(({ places, holds, upTo }) =>
    partEntries(holds === null ? said.filter(({ id }) => id <= upTo) : said, { places, holds }),
  );
  const ids = new Set(held.map(({ id }) => id));
  const cables = new Set(held.filter(({ kind }) => kind === 'cable').map(({ body }) => cell(body, 'cable')));
  const names = new Set(parts.map(({ part }) => part));
  return entries.filter(
    ({ id, kind, body }) =>
      ids.has(id) ||
      (kind === 'seal' && names.has(cell(body, 'part'))) ||
      (kind === 'reply' && cables.has(cell(body, 'cable'))),
  );
}

/** Whether a blob is named by anything that a reader may see. */
export const namesBlob = (seen: readonly Entry[], sha: string): boolean =>
  seen.some(({ body }) => Object.values(body).some((text) => text.includes(sha)));
