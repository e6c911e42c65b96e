import type { CablePlan, TrialPlan } from '../../findings/plan.ts';
import { type DisplayUnits, defaultDisplayUnits } from '../../units/display.ts';
import { DISPLAY, group, label, line } from '../svg.ts';
import { fittedLines } from '../textFit.ts';
import { paperTheme } from '../theme.ts';
import { lengthWords } from '../words/lengthWords.ts';
import { MARGIN, PAPERS, type Paper, points, sheet } from './paper.ts';
import { PURPOSES } from './pieceLabels.ts';

const TITLE = points(15);
const HEAD = points(11);
const BODY = points(9);
const LINE = 6;
const FOOT = 10;
const { ink, ink2, rule } = paperTheme;

/** Left edges of the columns, as shares of the width: code, piece, length, from, for; and a box to tick at the right. */
const COLUMNS = [
  { head: 'code', at: 0 },
  { head: 'piece', at: 0.1 },
  { head: 'length', at: 0.38 },
  { head: 'cut from', at: 0.52 },
  { head: 'for', at: 0.76 },
] as const;

interface Line {
  cells: string[];
  kind: 'cable' | 'piece' | 'note';
}

type Units = Pick<DisplayUnits, 'perLength'>;

function linesOf(cable: CablePlan, units: Units): Line[] {
  const words = (length: number) => lengthWords(length, units);
  const pieces = cable.pieces.map(
    (piece): Line => ({
      kind: 'piece',
      cells: [
        piece.code,
        piece.specimen,
        piece.length === null ? 'as bought' : words(piece.length),
        piece.cutFrom ?? '',
        PURPOSES[piece.kind] ?? '',
      ],
    }),
  );
  const short = cable.shortBy > 0 ? `, ${words(cable.shortBy)} too little` : '';
  const got = cable.bought === null ? `buy ${words(cable.toBuy)}` : `bought ${words(cable.bought)}${short}`;
  const cuts = cable.cuts === 1 ? 'one cut' : `${cable.cuts} cuts`;
  const note = `Needs ${words(cable.needed)} with what the saw takes at ${cuts}; ${got}.`;
  return [{ kind: 'cable', cells: [cable.name] }, ...pieces, { kind: 'note', cells: [note] }];
}

function drawLine({ kind, cells }: Line, y: number, width: number): string {
  if (kind === 'cable')
    return label(MARGIN, y, fittedLines(cells[0]!, width, HEAD, 1)[0] ?? '', {
      'font-size': HEAD,
      'font-weight': 600,
      'font-family': DISPLAY,
      fill: ink,
    });
  if (kind === 'note') return label(MARGIN, y, cells[0]!, { 'font-size': BODY, fill: ink2 });
  const shown = COLUMNS.map(({ at }, i) => {
    const end = COLUMNS[i + 1]?.at ?? 0.95;
    const text = fittedLines(cells[i]!, (end - at) * width - 1, BODY, 1)[0] ?? '';
    return label(MARGIN + at * width, y, text, { 'font-size': BODY, 'font-weight': i === 0 ? 700 : 400, fill: ink });
  });
  const stroke = { stroke: rule, 'stroke-width': 0.2 };
  return group({}, ...shown, line(MARGIN, y + 1.8, MARGIN + width, y + 1.8, stroke));
}

/** Cables kept whole on a page where they fit. */
function pagesOfLines(cables: readonly CablePlan[], room: number, units: Units): Line[][] {
  const pages: Line[][] = [];
  for (const cable of cables) {
    const lines = linesOf(cable, units);
    const page = pages[pages.length - 1];
    if (page && page.length + lines.length <= room) page.push(...lines);
    else for (let at = 0; at < lines.length; at += room) pages.push(lines.slice(at, at + room));
  }
  return pages;
}

/** The cut list for the bench: every piece of every cable, what it is cut from, and what to buy. One SVG for each sheet. */
export function cutListSheets(
  plan: Pick<TrialPlan, 'cables'>,
  title: string,
  paper: Paper,
  units: Units = defaultDisplayUnits,
): string[] {
  const { width, height } = PAPERS[paper];
  const room = width - 2 * MARGIN;
  const top = MARGIN + TITLE + 4;
  const first = top + LINE + 2;
  const pages = pagesOfLines(plan.cables, Math.floor((height - first - MARGIN - FOOT) / LINE), units);
  return pages.map((lines, number) => {
    const [heading] = fittedLines(`Cut list: ${title}`, room, TITLE, 1);
    const heads = COLUMNS.map(({ head, at }) =>
      label(MARGIN + at * room, top + LINE - 2, head, { 'font-size': BODY, fill: ink2 }),
    );
    const of = `sheet ${number + 1} of ${pages.length}`;
    return sheet(
      paper,
      `Cut list of ${title}, ${of}`,
      label(MARGIN, MARGIN + TITLE, heading ?? '', {
        'font-size': TITLE,
        'font-weight': 600,
        'font-family': DISPLAY,
        fill: ink,
      }),
      ...heads,
      line(MARGIN, top + LINE, MARGIN + room, top + LINE, { stroke: ink, 'stroke-width': 0.35 }),
      ...lines.map((each, i) => drawLine(each, first + LINE * (i + 0.75), room)),
      label(MARGIN, height - MARGIN, of, { 'font-size': BODY, fill: ink2 }),
    );
  });
}
