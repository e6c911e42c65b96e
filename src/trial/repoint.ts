/** Mix-ups put right: which piece something was really read on. */
import { rowTime } from './inTimeOrder.ts';
import type { Judgement, OnPiece, Reading, Retag, TypedRow } from './trial.ts';

/** Shared by everything that was never moved. */
export const NOT_RETAGGED: readonly string[] = Object.freeze([]);

export interface MeantPiece {
  specimen: string;
  retagged: readonly string[];
}

function otherPiece(retag: Retag, specimen: string): string | null {
  if (specimen === retag.specimen) return retag.becomes;
  return retag.kind === 'swap' && specimen === retag.becomes ? retag.specimen : null;
}

/**
 * The piece that is meant by what was recorded on `specimen` at a moment: each repair whose span holds the moment is applied
 * in turn, so a later one speaks of the pieces as the earlier ones left them, and the same swap twice undoes itself.
 *
 * @param time milliseconds since 1970; what carries no time counts as of the trial's first day, as in its order
 */
export function meantPiece(retags: readonly Retag[], specimen: string, time: number): MeantPiece {
  let piece = specimen;
  let retagged: string[] | null = null;
  for (const retag of retags) {
    if (time < retag.from || time > retag.until) continue;
    const other = otherPiece(retag, piece);
    if (other === null) continue;
    piece = other;
    retagged = [...(retagged ?? []), retag.retag];
  }
  return { specimen: piece, retagged: retagged ?? NOT_RETAGGED };
}

type PieceOf = (row: TypedRow['row'], specimen: string) => MeantPiece;

const pieceOf =
  (retags: readonly Retag[], openedOn: string): PieceOf =>
  (row, specimen) =>
    meantPiece(retags, specimen, rowTime(row, openedOn));

/** Readings on the pieces that they mean. Struck ones stay as they were: they count on no piece. */
export function repointReadings(
  readings: Reading[],
  retags: readonly Retag[],
  openedOn: string,
  cableOf: ReadonlyMap<string, string>,
): Reading[] {
  if (retags.length === 0) return readings;
  const meant = pieceOf(retags, openedOn);
  return readings.map((reading) => {
    if (reading.standing === 'struck') return reading;
    const piece = meant(reading.row, reading.specimen);
    if (piece.retagged.length === 0) return reading;
    return { ...reading, ...piece, cable: cableOf.get(piece.specimen) ?? '' };
  });
}

/** Rows about one piece, on the piece that they mean. */
export function repointRows(rows: readonly OnPiece[], retags: readonly Retag[], openedOn: string): OnPiece[] {
  if (retags.length === 0) return [...rows];
  const meant = pieceOf(retags, openedOn);
  return rows.map((one) => ({ ...one, ...meant(one.row, one.specimen) }));
}

/** Judgements between the pieces that they mean. */
export function repointJudgements(rows: readonly Judgement[], retags: readonly Retag[], openedOn: string): Judgement[] {
  if (retags.length === 0) return [...rows];
  const meant = pieceOf(retags, openedOn);
  return rows.map((one) => {
    const left = meant(one.row, one.left);
    const right = meant(one.row, one.right);
    const retagged = [...new Set([...left.retagged, ...right.retagged])];
    return { ...one, left: left.specimen, right: right.specimen, retagged };
  });
}
