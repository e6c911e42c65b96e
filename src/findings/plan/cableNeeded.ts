import type { CutList } from '../../methods/decide/cutList.ts';
import type { PlannedPiece } from './cablePieces.ts';

/** How much of one cable its pieces take. Lengths in m. */
export interface CableNeeded {
  /** Pieces on record that come from the bought length itself, added up; those cut from another piece are in that one. */
  recorded: number;
  /** What the cut list asks for, or what the pieces on record and those still proposed take together: the longer. */
  needed: number;
  /** As `needed`, without the saw cuts of pieces that are on record: what cannot be had from less. */
  least: number;
  cuts: number;
}

type Laid = Pick<PlannedPiece, 'specimen' | 'kind' | 'length' | 'cutFrom' | 'onRecord'>;

/** Whether somebody cut this piece off: one of no said kind and no said parent may be the bought length itself. */
function isCut({ kind, cutFrom }: Laid): boolean {
  return kind !== 'whole' && (kind !== '' || cutFrom !== null);
}

/**
 * The length that one cable's pieces take: Σ over pieces cut from the bought length, and a saw cut for each. Of
 * pieces on record the length is a fact and the saw cut a guess: the last of them may be the rest itself.
 *
 * @param list what the plan asks for
 * @param pieces on record and proposed
 * @param sawLoss m for each cut
 */
export function cableNeeded(list: Pick<CutList, 'needed'>, pieces: readonly Laid[], sawLoss: number): CableNeeded {
  const cut = pieces.filter(isCut);
  const parents = new Set(cut.map(({ specimen }) => specimen));
  const fromBought = cut.filter(({ cutFrom }) => cutFrom === null || !parents.has(cutFrom));
  const sum = (some: readonly Laid[], loss: number) => some.reduce((all, { length }) => all + (length ?? 0) + loss, 0);
  const [there, still] = [fromBought.filter((p) => p.onRecord), fromBought.filter((p) => !p.onRecord)];
  const recorded = sum(there, 0);
  const proposed = sum(still, sawLoss);
  const least = Math.max(list.needed, recorded + proposed);
  const sawn = there.length * sawLoss;
  return { recorded, least, needed: Math.max(list.needed, recorded + sawn + proposed), cuts: cut.length };
}
