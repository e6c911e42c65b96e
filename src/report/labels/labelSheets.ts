import { group, label, line } from '../svg.ts';
import { fittedLines } from '../textFit.ts';
import { paperTheme } from '../theme.ts';
import { MARGIN, PAPERS, type Paper, pagesOf, points, sheet } from './paper.ts';
import type { PieceLabel } from './pieceLabels.ts';
import { qrMarks } from './qrMarks.ts';

/** One label, mm: to be cut apart, four beside each other on either paper. */
const COLUMNS = 4;
const HEIGHT = 28;
const QR = 22;
const INSET = 2;

const CODE = points(20);
const NOTE = points(7.5);
/** Of one line below the other, as a share of the size: five of them stand below the code. */
const LEADING = 1.2;
const { ink, ink2, rule } = paperTheme;

function drawLabel(piece: PieceLabel, width: number): string {
  const left = piece.qr === null ? INSET : QR + INSET;
  const room = width - left - INSET;
  const cable = fittedLines(piece.cable, room, NOTE, 2);
  const rest = [piece.specimen, piece.length, piece.purpose].flatMap((text) => fittedLines(text, room, NOTE, 1));
  return group(
    {},
    qrMarks(piece.qr, INSET / 2, (HEIGHT - QR) / 2, QR),
    label(left, INSET + CODE, piece.code, { 'font-size': CODE, 'font-weight': 700, fill: ink }),
    ...[...cable, ...rest].map((text, i) => {
      const y = INSET + CODE + 4 + i * LEADING * NOTE;
      return label(left, y, text, { 'font-size': NOTE, fill: i < Math.max(1, cable.length) ? ink : ink2 });
    }),
  );
}

/** Lines to cut along, between the labels and round them. */
function cuttingLines(columns: number, rows: number, width: number): string {
  const stroke = { stroke: rule, 'stroke-width': 0.2 };
  const right = MARGIN + columns * width;
  const foot = MARGIN + rows * HEIGHT;
  const across = Array.from({ length: rows + 1 }, (_, i) =>
    line(MARGIN, MARGIN + i * HEIGHT, right, MARGIN + i * HEIGHT, stroke),
  );
  const down = Array.from({ length: columns + 1 }, (_, i) =>
    line(MARGIN + i * width, MARGIN, MARGIN + i * width, foot, stroke),
  );
  return group({}, ...across, ...down);
}

/** Sheets of small labels: QR code, blind code, cable, piece, length and what it is for. One SVG for each sheet. */
export function labelSheets(pieces: readonly PieceLabel[], paper: Paper): string[] {
  const { width, height } = PAPERS[paper];
  const each = (width - 2 * MARGIN) / COLUMNS;
  const rows = Math.floor((height - 2 * MARGIN) / HEIGHT);
  const pages = pagesOf(pieces, COLUMNS * rows);
  return pages.map((page, number) => {
    const labels = page.map((piece, i) => {
      const x = MARGIN + (i % COLUMNS) * each;
      const y = MARGIN + Math.floor(i / COLUMNS) * HEIGHT;
      return group({ transform: `translate(${x.toFixed(3)} ${y.toFixed(3)})` }, drawLabel(piece, each));
    });
    const used = Math.ceil(page.length / COLUMNS);
    const description = `Labels, sheet ${number + 1} of ${pages.length}: ${page.map((p) => p.code).join(', ')}`;
    return sheet(paper, description, cuttingLines(COLUMNS, used, each), ...labels);
  });
}
