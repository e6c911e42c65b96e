/** What to cut from one cable, which piece from which, and how much cable that takes. */
export type PieceKind = 'whole' | 'bend' | 'apart' | 'abuse' | 'kept';

export interface Piece {
  /** Number within its kind, from 1. */
  number: number;
  kind: PieceKind;
  /** m; null for the whole bought length, which nobody cuts. */
  length: number | null;
  /** Place in the list of the piece that it is cut from; null for the whole. */
  cutFrom: number | null;
  taken: 'start' | 'middle' | 'end' | null;
  why: string;
}

export interface CutWish {
  bend: { count: number; length: number; why: string };
  apart: { count: number; length: number; why: string };
  abuse: { count: number; length: number; why: string };
  /** Length of the piece that is kept back, m; 0 for none. */
  kept: number;
  /** Lost at each cut, m. */
  sawLoss: number;
  /** Least length on which ohms are worth reading, m: the whole is at least so long. */
  leastWhole: number;
}

export interface CutList {
  pieces: Piece[];
  /** Cuts of the saw. */
  cuts: number;
  /** Length that the cutting uses up, m: pieces cut from the whole, and what the saw takes. */
  used: number;
  /** Length that the cable must have, m: `used`, or the least length for ohms where that is more. */
  needed: number;
}

/**
 * The pieces of one cable in the order in which they are cut: the whole first, bent pieces from it, then pieces to take
 * apart. A piece to take apart is cut from a bent one that is long enough, because bending spoils no copper; jackets to be
 * abused and the piece kept back come fresh from the whole.
 *
 * @throws RangeError for a negative or endless length, or a count that is not whole
 */
export function cutList(wish: CutWish): CutList {
  requireSensible(wish);
  const pieces: Piece[] = [
    { number: 1, kind: 'whole', length: null, cutFrom: null, taken: null, why: 'ohms are read on it before any cut' },
  ];
  const { bend, apart, abuse, kept, sawLoss } = wish;
  const taken = (i: number, n: number) => (n > 1 && i === n - 1 ? 'end' : i === 0 ? 'start' : 'middle');
  for (let i = 0; i < bend.count; i++)
    pieces.push({ ...piece('bend', i, bend.length, bend.why), taken: taken(i, bend.count) });
  const fits = apart.length + sawLoss <= bend.length;
  for (let i = 0; i < apart.count; i++) {
    const fromBend = fits && i < bend.count;
    const why = fromBend ? `${apart.why}; cut from a piece that was bent` : apart.why;
    pieces.push({
      ...piece('apart', i, apart.length, why),
      cutFrom: fromBend ? 1 + i : 0,
      taken: taken(i, apart.count),
    });
  }
  for (let i = 0; i < abuse.count; i++) pieces.push(piece('abuse', i, abuse.length, abuse.why));
  if (kept > 0) pieces.push({ ...piece('kept', 0, kept, 'sealed and kept back, to answer a dispute'), taken: 'end' });
  const fromWhole = pieces.filter((p) => p.cutFrom === 0);
  const used = fromWhole.reduce((sum, p) => sum + p.length! + sawLoss, 0);
  return { pieces, cuts: pieces.length - 1, used, needed: Math.max(used, wish.leastWhole) };
}

function piece(kind: PieceKind, i: number, length: number, why: string): Piece {
  return { number: i + 1, kind, length, cutFrom: 0, taken: null, why };
}

function requireSensible({ bend, apart, abuse, kept, sawLoss, leastWhole }: CutWish): void {
  for (const { count, length } of [bend, apart, abuse]) {
    if (!(Number.isInteger(count) && count >= 0)) throw new RangeError(`a number of pieces is whole, got ${count}`);
    if (count > 0 && !(length > 0 && Number.isFinite(length)))
      throw new RangeError(`a piece has a length above zero, got ${length}`);
  }
  for (const length of [kept, sawLoss, leastWhole])
    if (!(length >= 0 && Number.isFinite(length)))
      throw new RangeError(`a length is finite and not negative, got ${length}`);
}
