import Papa from 'papaparse';
import type { Refused } from './refusal.ts';

export type Delimiter = ',' | ';' | '\t';

export interface CsvRow {
  /** Line on which the row begins, from 1. */
  line: number;
  /** Without blanks around. */
  cells: string[];
  /** Set when its quotation marks do not close. */
  refused: Refused | null;
}

export interface CsvTable {
  delimiter: Delimiter;
  /** null when the file holds nothing. */
  header: CsvRow | null;
  /** Blank rows are left out. */
  rows: CsvRow[];
}

/** The separator of a table: the one that its first row uses most outside quotation marks; a comma when it uses none. */
function delimiterOf(text: string): Delimiter {
  const counts: Record<Delimiter, number> = { ',': 0, ';': 0, '\t': 0 };
  let quoted = false;
  for (const character of text) {
    if (character === '"') quoted = !quoted;
    else if (!quoted && character === '\n') break;
    else if (!quoted && character in counts) counts[character as Delimiter]++;
  }
  if (counts[';'] > counts[','] && counts[';'] >= counts['\t']) return ';';
  return counts['\t'] > counts[','] ? '\t' : ',';
}

/** Some spreadsheets name the separator on a line before the header. */
const SEPARATOR_LINE = /^sep=([,;\t])\n/i;

const QUOTES: Refused = {
  found: 'a quotation mark that is never closed, or one in the middle of a quoted cell',
  expected: 'quotation marks in pairs',
  advice: 'Inside a quoted cell a quotation mark is written twice.',
};

const newlinesIn = (cells: readonly string[]): number =>
  cells.reduce((sum, cell) => sum + (cell.includes('\n') ? cell.split('\n').length - 1 : 0), 0);

/** Splits the text of a CSV file into rows, knowing for each the line on which it begins although quoted cells may hold line breaks. */
export function csvTable(typed: string): CsvTable {
  const unix = typed.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const named = SEPARATOR_LINE.exec(unix);
  const text = named ? unix.slice(named[0].length) : unix;
  const delimiter = (named?.[1] as Delimiter | undefined) ?? delimiterOf(text.trimStart());
  const parsed = Papa.parse<string[]>(text, { delimiter, newline: '\n', header: false, skipEmptyLines: false });
  const broken = new Set(parsed.errors.filter((error) => error.type === 'Quotes').map((error) => error.row));
  const rows: CsvRow[] = [];
  let line = named ? 2 : 1;
  parsed.data.forEach((cells, i) => {
    const trimmed = cells.map((cell) => cell.trim());
    if (trimmed.some((cell) => cell !== ''))
      rows.push({ line, cells: trimmed, refused: broken.has(i) ? QUOTES : null });
    line += 1 + newlinesIn(cells);
  });
  return { delimiter, header: rows[0] ?? null, rows: rows.slice(1) };
}
