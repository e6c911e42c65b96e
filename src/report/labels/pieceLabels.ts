import type { TrialPlan } from '../../findings/plan.ts';
import { type DisplayUnits, defaultDisplayUnits } from '../../units/display.ts';
import { lengthWords } from '../words/lengthWords.ts';
import type { QrMatrix } from './qrMarks.ts';

/** What stands on the label of one piece, as text. */
export interface PieceLabel {
  code: string;
  /** Name of the cable, maker and model; empty while the trial is blind. */
  cable: string;
  /** Name of the piece; empty while the trial is blind. */
  specimen: string;
  /** `300 mm`, `29 1/2 in`, `whole length`. */
  length: string;
  /** What the piece is for, in a word or two. */
  purpose: string;
  qr: QrMatrix | null;
  /** Of the cable that a flag is wrapped round, mm. */
  outerDiameter: number;
}

export const PURPOSES: Readonly<Record<string, string>> = {
  whole: 'ohms',
  bend: 'bend',
  apart: 'strip and weigh',
  abuse: 'jacket',
  kept: 'kept back',
};

export interface PieceLabelOptions {
  /** Names are left off: the code alone says which piece it is. */
  blind: boolean;
  /** Text that a code's QR leads to, such as an address of the bench; null for no QR. */
  linkOf: ((code: string) => string) | null;
  /** Makes the modules of a text. */
  matrixOf: (text: string) => QrMatrix;
  /** Units that lengths are printed in; metric when left out. */
  units?: Pick<DisplayUnits, 'perLength'>;
}

/** A label for every piece of a plan, in the order of the codes, which says nothing of the cables. */
export function pieceLabels(plan: Pick<TrialPlan, 'cables'>, options: PieceLabelOptions): PieceLabel[] {
  const { blind, linkOf, matrixOf, units = defaultDisplayUnits } = options;
  return plan.cables
    .flatMap((cable) =>
      cable.pieces.map((piece) => ({
        code: piece.code,
        cable: blind ? '' : cable.name,
        specimen: blind ? '' : piece.specimen,
        length: piece.length === null ? 'whole length' : lengthWords(piece.length, units),
        purpose: PURPOSES[piece.kind] ?? '',
        qr: linkOf === null ? null : matrixOf(linkOf(piece.code)),
        outerDiameter: cable.outerDiameter * 1000,
      })),
    )
    .sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0));
}
