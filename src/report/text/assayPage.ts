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

/** Columns between two columns of figures. */
export const GAP = 2;
/** A name narrower than the least is no name; wider ones push the figures too far from it. */
export const LEAST_NAME = 12;
export const WIDEST_NAME = 32;

/** Text as it may be printed on this page: no control characters, and only the characters of its set. */
export const shown = (text: string, { glyphs }: AssayPage): string => glyphs.write(printable(text)).trim();

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
