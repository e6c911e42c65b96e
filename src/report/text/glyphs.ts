import type { MetalKind } from '../metalKind.ts';

/** The characters that draw the table and its bars. */
export interface Glyphs {
  rule: string;
  /** Limit of the claim, and the label's nominal value. */
  limit: string;
  nominal: string;
  /** Estimate on its bar. */
  estimate: string;
  /** Where the limit runs through a bar. */
  crossing: Record<MetalKind, string>;
  bar: Record<MetalKind, string>;
  ellipsis: string;
  /** Writes a text in the characters that this set has. */
  write: (text: string) => string;
}

const SOLID = { copper: '━', 'tinned copper': '━', 'copper-clad aluminium': '═', aluminium: '═', unknown: '╌' };
const CROSSED = { copper: '┿', 'tinned copper': '┿', 'copper-clad aluminium': '╪', aluminium: '╪', unknown: '┼' };

export const LINE_DRAWING: Glyphs = {
  rule: '─',
  limit: '│',
  nominal: '┊',
  estimate: '╋',
  crossing: CROSSED,
  bar: SOLID,
  ellipsis: '…',
  write: (text) => text,
};

const ASCII_BAR = { copper: '=', 'tinned copper': '=', 'copper-clad aluminium': '/', aluminium: '/', unknown: '-' };

/** For terminals that know no more than ASCII. */
export const ASCII: Glyphs = {
  rule: '-',
  limit: '|',
  nominal: ':',
  estimate: '#',
  crossing: { copper: '+', 'tinned copper': '+', 'copper-clad aluminium': '+', aluminium: '+', unknown: '+' },
  bar: ASCII_BAR,
  ellipsis: '...',
  write: inAscii,
};

const SPELT: Readonly<Record<string, string>> = {
  '±': '+/-',
  '²': '2',
  '³': '3',
  '×': 'x',
  '·': ' ',
  '°': ' deg ',
  Ω: 'ohm',
  µ: 'u',
  '−': '-',
  '–': '-',
  '—': '-',
  '…': '...',
  '≥': '>=',
  '≤': '<=',
  '’': "'",
  '‘': "'",
  '“': '"',
  '”': '"',
  χ: 'chi',
};

/** Letters lose their accents; what has no spelling becomes a question mark. */
function inAscii(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[^\x20-\x7e]/gu, (character) => SPELT[character] ?? character)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x7e]/gu, '?');
}
