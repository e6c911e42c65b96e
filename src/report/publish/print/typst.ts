/** Typst's own language: values as code, so that no text of anybody's is ever read as markup. */

/** A text as a literal. Typst strings know `\\`, `\"` and `\u{…}`; a line break is kept as one. */
export function literal(typed: string): string {
  const escaped = typed.replace(/[\\"]|\p{Cc}|\p{Surrogate}/gu, (c) => {
    if (c === '\\' || c === '"') return `\\${c}`;
    if (c === '\n' || c === '\t') return `\\u{${c.charCodeAt(0).toString(16)}}`;
    return '\\u{fffd}';
  });
  return `"${escaped}"`;
}

export type Named = Readonly<Record<string, string>>;

/** A call: `table(columns: 2, [a], [b])`; arguments are code already. */
export function call(name: string, named: Named, ...positional: readonly string[]): string {
  const args = [...Object.entries(named).map(([key, value]) => `${key}: ${value}`), ...positional];
  return `${name}(${args.join(', ')})`;
}

/** An array: one element needs the comma. */
export const array = (items: readonly string[]): string => `(${items.join(', ')}${items.length === 1 ? ',' : ''})`;

export const joined = (parts: readonly string[]): string => (parts.length === 0 ? '[]' : parts.join(' + '));
