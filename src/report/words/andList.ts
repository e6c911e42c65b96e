/** Names in one phrase: `a`, `a and b`, `a, b and c`; empty for none. */
export function andList(items: readonly string[]): string {
  if (items.length <= 1) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;
}
