import { group, label, line, rectangle } from '../svg.ts';
import { fittedLines } from '../textFit.ts';
import { paperTheme } from '../theme.ts';
import { MARGIN, PAPERS, type Paper, pagesOf, points, sheet } from './paper.ts';
import type { PieceLabel } from './pieceLabels.ts';
import { qrMarks } from './qrMarks.ts';

/** A flag, mm: a face, a band that goes once round the cable, and the same face again, glued back to back. */
const FACE = 46;
const HEIGHT = 18;
const GAP = 4;
/** Room in the band for the thickness of paper and glue, mm. Common practice, no source. */
const SLACK = 2;
/** No face is narrower than this however thick the cable, mm. */
const LEAST_FACE = 24;

const CODE = points(18);
const NOTE = points(7.5);
/** Foot of the code, mm: three lines stand below it. */
const FIRST_LINE = 7;
const { ink, ink2, edge, rule } = paperTheme;

/** Length of the band that goes once round a cable, mm: `π · D`, and slack. */
export function bandLength(outerDiameter: number): number {
  return Math.PI * outerDiameter + SLACK;
}

function face(piece: PieceLabel, width: number): string {
  const qr = piece.qr === null ? 0 : HEIGHT - 2;
  const room = width - qr - 3;
  const notes = [piece.cable, piece.specimen, [piece.length, piece.purpose].filter((text) => text !== '').join(', ')]
    .filter((text) => text !== '')
    .flatMap((text) => fittedLines(text, room, NOTE, 1));
  return group(
    {},
    qrMarks(piece.qr, 1, 1, qr),
    label(qr + 2, FIRST_LINE, piece.code, { 'font-size': CODE, 'font-weight': 700, fill: ink }),
    ...notes.map((text, i) =>
      label(qr + 2, FIRST_LINE + 3.3 + i * 1.17 * NOTE, text, { 'font-size': NOTE, fill: ink2 }),
    ),
  );
}

function flag(piece: PieceLabel, most: number): string {
  const band = bandLength(piece.outerDiameter);
  const width = Math.max(LEAST_FACE, Math.min(FACE, (most - band) / 2));
  const fold = { stroke: edge, 'stroke-width': 0.2, 'stroke-dasharray': '1 1' };
  return group(
    {},
    rectangle(0, 0, 2 * width + band, HEIGHT, { fill: 'none', stroke: rule, 'stroke-width': 0.2 }),
    line(width, 0, width, HEIGHT, fold),
    line(width + band, 0, width + band, HEIGHT, fold),
    face(piece, width),
    group({ transform: `translate(${(width + band).toFixed(3)} 0)` }, face(piece, width)),
  );
}

/** Sheets of flags that wrap round a cable, each band as long as its cable is thick. One SVG for each sheet. */
export function flagSheets(pieces: readonly PieceLabel[], paper: Paper): string[] {
  const { width, height } = PAPERS[paper];
  const rows = Math.floor((height - 2 * MARGIN + GAP) / (HEIGHT + GAP));
  const pages = pagesOf(pieces, rows);
  return pages.map((page, number) => {
    const flags = page.map((piece, i) => {
      const y = MARGIN + i * (HEIGHT + GAP);
      return group({ transform: `translate(${MARGIN} ${y.toFixed(3)})` }, flag(piece, width - 2 * MARGIN));
    });
    const description = `Flags, sheet ${number + 1} of ${pages.length}: ${page.map((p) => p.code).join(', ')}`;
    return sheet(paper, description, ...flags);
  });
}
