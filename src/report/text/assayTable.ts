import { isWide } from '../../findings/measured.ts';
import type { CableFindings, Findings } from '../../findings/schema.ts';
import type { FigureUnits } from '../figures.ts';
import { assayBars } from './assayBars.ts';
import { type AssayPage, blockText, paragraph, tableWidthFor } from './assayPage.ts';
import { assayRows } from './assayRows.ts';
import { currentLines } from './currentLines.ts';
import { flexLines } from './flexLines.ts';
import { ASCII, LINE_DRAWING } from './glyphs.ts';
import { jacketLines } from './jacketLines.ts';
import { noteLines } from './noteLines.ts';
import { standingLines } from './standingLines.ts';

export interface AssayTableOptions {
  units?: FigureUnits;
  /** Columns of the terminal; at least 60, 80 when left out. */
  width?: number;
  /** Only characters that every terminal has. */
  ascii?: boolean;
}

/**
 * The findings for a terminal: the sentence, the control piece, a row for each cable, its interval drawn on one axis with
 * the claim's limit through all rows, what to know and what to read next. Plain text without colour; no line is wider than
 * `width`, whatever the names hold. Ends with a line break.
 */
export function assayTable(findings: Findings, options: AssayTableOptions = {}): string {
  // Control pieces check the tools and are spoken of above the table; references stand after the compared cables.
  const cables = [...withRole(findings, 'compared'), ...withRole(findings, 'reference')];
  const page: AssayPage = {
    findings,
    cables,
    units: options.units ?? {},
    width: tableWidthFor(options.width),
    glyphs: options.ascii === true ? ASCII : LINE_DRAWING,
  };
  const blocks = [
    paragraph(findings.title, page),
    paragraph(findings.sentence, page),
    findings.control.flatMap((control) => paragraph(control.sentence, page)),
    assayRows(page),
    assayBars(page),
    flexLines(page),
    ...jacketLines(page),
    currentLines(page),
    standingLines(page),
    ...noteLines(page),
    paragraph(legend(findings, cables), page),
  ];
  return blockText(blocks);
}

const withRole = (findings: Findings, role: CableFindings['role']): CableFindings[] =>
  findings.cables.filter((cable) => cable.role === role);

function legend({ engine }: Findings, cables: readonly CableFindings[]): string {
  const percent = (x: number): string => `${Number((100 * x).toFixed(2))} %`;
  const sentences = [
    `± reaches the farther end of the interval that holds the true value ${Number((100 * engine.level).toFixed(1))} times in 100.`,
    `“Meets” is said from ${percent(engine.meets_above)} on, “falls short” up to ${percent(engine.short_below)}; between them the claim is not settled.`,
    'Findings speak of the pieces that were measured.',
    ...(engine.draws_sentence ? [engine.draws_sentence] : []),
  ];
  const figures = cables.flatMap(({ conductor_area, copper_of_claim }) => [conductor_area, copper_of_claim]);
  if (figures.some((figure) => figure !== null && isWide(figure)))
    sentences.splice(1, 0, 'Two figures with “to” between them are both ends of that interval.');
  if (cables.some(({ role }) => role === 'reference'))
    sentences.push('Names in brackets are references outside the order.');
  return sentences.join(' ');
}
