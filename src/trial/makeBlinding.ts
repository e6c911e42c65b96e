import { cell, nameOrNull } from './cells.ts';
import type { Blinding, TypedRow } from './trial.ts';

/**
 * Whether names are hidden, after every act in its turn. A reveal with nothing hidden reveals nothing; showing them to
 * whoever cuts leaves the trial blind.
 */
export function makeBlinding(acts: TypedRow[]): Blinding {
  const blinding: Blinding = { blind: false, how: '', since: null, revealed: false, revealedAt: null, acts };
  for (const { row } of acts) {
    const act = cell(row, 'act').toLowerCase();
    if (act === 'blind') {
      const how = cell(row, 'how') || (blinding.blind ? blinding.how : '');
      Object.assign(blinding, { blind: true, how, since: nameOrNull(row, 'at'), revealed: false, revealedAt: null });
    } else if (act === 'reveal' && blinding.blind)
      Object.assign(blinding, { blind: false, revealed: true, revealedAt: nameOrNull(row, 'at') });
  }
  return blinding;
}
