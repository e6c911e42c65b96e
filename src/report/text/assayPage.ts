import type { CableFindings, Findings } from '../../findings/schema.ts';
import type { FigureUnits } from '../figures.ts';
import { displayWidth, printable } from './displayWidth.ts';
import type { Glyphs } from './glyphs.ts';
import { wrap } from './wrap.ts';

/** What every block of the terminal's table is made from. */
export interface AssayPage {
  findings: Findings;
  /** In the order of the rows. */
  cables: CableFindings[];
  units: FigureUnits;
  /** Columns of the terminal. */
  width: number;
  glyphs: Glyphs;
}

const USUAL_WIDTH = 80;
const LEAST_WIDTH = 60;

/** Columns of a terminal that a table is made for: no fewer than it needs, the usual where none are named. */
export const tableWidthFor = (columns = USUAL_WIDTH): number => Math.max(LEAST_WIDTH, Math.floor(columns));

/** Blocks with a line between them, empty ones left out. Ends with a line break. */
export const blockText = (blocks: readonly (readonly string[])[]): string =>
  `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.map((line) => line.trimEnd()).join('\n'))
    .join('\n\n')}\n`;

/** Columns between two columns of figures. */
export const GAP = 2;
/** A name narrower than the least is no name; wider ones push the figures too far from it. */
export const LEAST_NAME = 12;
export const WIDEST_NAME = 32;

/** Text as it may be printed on this page: no control characters, and only the characters of its set. */
export const shown = (text: string, { glyphs }: AssayPage): string => glyphs.write(printable(text)).trim();

/** What the sign ± takes more where it is spelt out. */
export const extraSign = (page: AssayPage): number => shown('±', page).length - 1;

/** A paragraph; no lines for an empty text. */
export const paragraph = (text: string, page: AssayPage): string[] =>
  text === '' ? [] : wrap(shown(text, page), page.width);

/** A cable's name, its id when it has none; references stand in brackets. */
export function rowName(cable: CableFindings, page: AssayPage): string {
  const name = shown(cable.name === '' ? cable.cable : cable.name, page);
  return cable.role === 'reference' ? `(${name})` : name;
}

/** Columns that the longest name of the page takes, within `least` and `most`. */
export function nameColumns(page: AssayPage, least: number, most: number): number {
  const longest = Math.max(...page.cables.map((cable) => displayWidth(rowName(cable, page))));
  return Math.min(most, Math.max(least, longest));
}
