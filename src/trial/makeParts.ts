import { PART_PLACES, type PartPlace } from '../journal/kinds/seal.ts';
import { cell, nameOrNull } from './cells.ts';
import { holdsIn } from './heldRows.ts';
import type { Remark, SealedPart, TypedRow } from './trial.ts';

const USUAL_LEVEL = 0.95;
/** What a seal fixes: a later row of the same part that says otherwise is not heard. */
const FIXED = ['places', 'up_to', 'content', 'findings', 'level', 'draws'] as const;

/** The places that a cell names, in the order of the work; unknown words are passed over. */
export function placesIn(text: string): PartPlace[] {
  const words = text.toLowerCase().split(/[\s,;]+/);
  return PART_PLACES.filter((place) => words.includes(place));
}

const numberIn = (text: string, usual: number): number =>
  text !== '' && Number.isFinite(Number(text)) ? Number(text) : usual;

/** The seals that name their part. One without a name, which an earlier version let in, is remarked on and no part of the trial. */
export function namedSeals(rows: readonly TypedRow[], remarks: Remark[]): TypedRow[] {
  const named = rows.filter(({ row }) => cell(row, 'part') !== '');
  if (named.length < rows.length)
    remarks.push({
      code: 'part-without-name',
      cable: null,
      readings: [],
      text: 'A part was sealed without a name; nothing can call it, so it is left aside. Seal its places again under a name.',
    });
  return named;
}

/**
 * Sealed parts out of their rows. The first row of a part's name is the seal; later ones may change its title and whether it is
 * hidden, and anything else they say is remarked on.
 */
export function makeParts(rows: readonly TypedRow[], remarks: Remark[]): SealedPart[] {
  const parts = new Map<string, SealedPart>();
  for (const { entry, row } of rows) {
    const part = cell(row, 'part');
    const sealed = parts.get(part);
    const hidden = cell(row, 'hidden').toLowerCase() === 'yes';
    if (sealed) {
      if (FIXED.some((name) => cell(row, name) !== cell(sealed.row, name)))
        remarks.push({
          code: 'part-sealed-again',
          cable: null,
          readings: [],
          text: `Part ${part} was sealed before; the first seal stands. Seal what is new as another part.`,
        });
      parts.set(part, { ...sealed, hidden, title: cell(row, 'title') || sealed.title });
    } else
      parts.set(part, {
        entry,
        row,
        part,
        title: cell(row, 'title'),
        places: placesIn(cell(row, 'places')),
        upTo: cell(row, 'up_to'),
        holds: holdsIn(row),
        content: cell(row, 'content').toLowerCase(),
        findings: cell(row, 'findings').toLowerCase(),
        level: numberIn(cell(row, 'level'), USUAL_LEVEL),
        draws: numberIn(cell(row, 'draws'), 0),
        version: cell(row, 'version'),
        hidden,
        at: nameOrNull(row, 'at'),
        by: cell(row, 'by'),
      });
  }
  return [...parts.values()];
}
