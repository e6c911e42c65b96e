import type { Entry } from '../../../journal/entry.ts';
import { mergeEntries } from '../../../journal/merge.ts';
import { cell } from '../../../trial/cells.ts';
import { fold } from '../../../trial/fold.ts';
import { partEntries } from '../../../trial/partEntries.ts';
import { rowName } from '../../../trial/rowName.ts';

/**
 * The part of a journal that a reader may see: the rows of sealed parts that are not hidden, what puts those rows right since, their
 * seals, and replies about their cables. Nothing else of what is not sealed yet; empty while nothing is.
 */
export function sealedForReaders(entries: readonly Entry[]): Entry[] {
  const parts = fold(entries.filter(({ kind }) => kind === 'seal')).parts.filter(({ hidden }) => !hidden);
  if (parts.length === 0) return [];
  const said = mergeEntries(entries).filter(({ kind }) => kind !== 'seal' && kind !== 'reply');
  const held = parts.flatMap(({ places, holds, upTo }) =>
    partEntries(holds === null ? said.filter(({ id }) => id <= upTo) : said, { places, holds }),
  );
  const ids = new Set(held.map(({ id }) => id));
  // A part without marks is every row of its places, and would be another one with what came later.
  if (parts.every(({ holds }) => holds !== null)) for (const id of puttingRight(said, ids)) ids.add(id);
  const cables = new Set(held.filter(({ kind }) => kind === 'cable').map(({ body }) => cell(body, 'cable')));
  const names = new Set(parts.map(({ part }) => part));
  return entries.filter(
    ({ id, kind, body }) =>
      ids.has(id) ||
      (kind === 'seal' && names.has(cell(body, 'part'))) ||
      (kind === 'reply' && cables.has(cell(body, 'cable'))),
  );
}

/**
 * Entries whose only use is to put right what is held: strikes of its readings, readings that replace them, and things of it put
 * aside. Rows described anew are not among them: they may say what belongs to a later part.
 */
function puttingRight(said: readonly Entry[], held: ReadonlySet<string>): string[] {
  const name = ({ kind, body }: Entry) =>
    JSON.stringify([kind, kind === 'evidence' || kind === 'endurance' ? rowName(kind, body) : cell(body, kind)]);
  const known = new Set(said.filter(({ id }) => held.has(id)).map(name));
  const isKnown = (kind: string, which: string) => known.has(JSON.stringify([kind, which]));
  return said
    .filter((entry) => {
      const { kind, body } = entry;
      if (kind === 'strike') return isKnown('reading', cell(body, 'reading'));
      if (kind === 'withdrawal') return isKnown(cell(body, 'about').toLowerCase(), cell(body, 'which'));
      const replaces = kind === 'reading' && isKnown('reading', cell(body, 'replaces'));
      // What replaces it may be replaced in its turn.
      if (replaces) known.add(name(entry));
      return replaces;
    })
    .map(({ id }) => id);
}

/** Whether a blob is named by anything that a reader may see. */
export const namesBlob = (seen: readonly Entry[], sha: string): boolean =>
  seen.some(({ body }) => Object.values(body).some((text) => text.includes(sha)));
