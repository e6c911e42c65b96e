/** A row of pasted text: its cells without blanks around, and the line on which it begins, from 1. */
export interface SplitRow {
  line: number;
  cells: string[];
}

/** A cell that says "as above". A lone quotation mark is one too: see {@link splitRows}. */
export const DITTO = '″';

type Delimiter = '\t' | ',' | ';';

/** A tab wherever there is one, as spreadsheets copy; else semicolons, unless commas outnumber them (`a;1,5` has a decimal comma). */
function delimiterOf(text: string): Delimiter {
  if (text.includes('\t')) return '\t';
  const count = (mark: string) => text.split(mark).length - 1;
  return count(';') > 0 && count(';') >= count(',') ? ';' : ',';
}

/**
 * Splits text that was copied from a spreadsheet, or typed with commas, into rows of cells. Quoted cells may hold the
 * delimiter, line breaks and doubled quotation marks. A quotation mark alone in its cell is a ditto mark and opens nothing.
 */
export function splitRows(pasted: string): SplitRow[] {
  const text = pasted.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const delimiter = delimiterOf(text);
  const rows: SplitRow[] = [];
  let at = 0;
  let line = 1;
  while (at < text.length) {
    const start = line;
    const cells: string[] = [];
    for (;;) {
      const cell = readCell(text, at, delimiter);
      cells.push(cell.text.trim());
      line += cell.newlines;
      at = cell.end;
      if (text[at] !== delimiter) break;
      at++;
    }
    at++;
    line++;
    if (cells.some((cell) => cell !== '')) rows.push({ line: start, cells });
  }
  return rows;
}

interface ReadCell {
  text: string;
  /** Where the delimiter or line break after it stands. */
  end: number;
  newlines: number;
}

function readCell(text: string, from: number, delimiter: Delimiter): ReadCell {
  let at = from;
  while (text[at] === ' ') at++;
  const plainEnd = endOfPlain(text, at, delimiter);
  const plain = text.slice(at, plainEnd);
  if (!plain.startsWith('"')) return { text: plain, end: plainEnd, newlines: 0 };
  if (plain.trim() === '"') return { text: DITTO, end: plainEnd, newlines: 0 };
  const close = closingQuote(text, at + 1);
  // A quotation mark that nothing closes, as in 1/2" wall, is a mark like any other.
  if (close === -1) return { text: plain, end: plainEnd, newlines: 0 };
  const inside = text.slice(at + 1, close).replace(/""/g, '"');
  const end = endOfPlain(text, close + 1, delimiter);
  return { text: inside + text.slice(close + 1, end).trim(), end, newlines: inside.split('\n').length - 1 };
}

function endOfPlain(text: string, from: number, delimiter: Delimiter): number {
  let at = from;
  while (at < text.length && text[at] !== delimiter && text[at] !== '\n') at++;
  return at;
}

function closingQuote(text: string, from: number): number {
  for (let at = from; at < text.length; at++) {
    if (text[at] !== '"') continue;
    if (text[at + 1] !== '"') return at;
    at++;
  }
  return -1;
}
