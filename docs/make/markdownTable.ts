/** A cell that cannot break its row. */
const cell = (text: string): string => text.replaceAll('|', '\\|').replace(/\s*\n\s*/g, ' ');

/** A table of markdown; every row must have as many cells as the head. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const wrong = rows.find((row) => row.length !== head.length);
  if (wrong) throw new RangeError(`a row of ${wrong.length} cells under ${head.length} heads: ${wrong.join(', ')}`);
  const line = (cells: readonly string[]) => `| ${cells.map(cell).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** A word as code. */
export const code = (text: string): string => `\`${text}\``;
