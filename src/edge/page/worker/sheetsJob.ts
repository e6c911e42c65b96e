import QRCode from 'qrcode';
import { planOf } from '../../../findings/plan.ts';
import { cutListSheets } from '../../../report/labels/cutListSheets.ts';
import { flagSheets } from '../../../report/labels/flagSheets.ts';
import { labelSheets } from '../../../report/labels/labelSheets.ts';
import { pieceLabels } from '../../../report/labels/pieceLabels.ts';
import type { QrMatrix } from '../../../report/labels/qrMarks.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** Entries to what a plan prints: one SVG for each sheet of paper. */
export function sheetsJob({ entries, what, paper, blind, linkTo, units }: Jobs['sheets']['ask']): string[] {
  const trial = fold(entries);
  const plan = planOf(trial, { draws: 0 });
  if (what === 'cut-list') return cutListSheets(plan, trial.title || trial.trial, paper, units);
  const linkOf = linkTo === null ? null : (code: string) => `${linkTo}${encodeURIComponent(code)}`;
  const labels = pieceLabels(plan, { blind: blind || trial.blinding.blind, linkOf, matrixOf, units });
  return what === 'flags' ? flagSheets(labels, paper) : labelSheets(labels, paper);
}

/** The modules of a QR code that still reads with a seventh of it smudged (level M, ISO/IEC 18004, from memory). */
function matrixOf(text: string): QrMatrix {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: 'M' });
  return Array.from({ length: modules.size }, (_, row) =>
    Array.from({ length: modules.size }, (_, column) => modules.get(row, column) === 1),
  );
}
