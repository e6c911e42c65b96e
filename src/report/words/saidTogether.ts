const ENDS_A_SENTENCE = /[.!?…]$/;

/**
 * Several things as running text. Whole sentences follow one another as they are; words without a full stop are led in and
 * joined: `Missing: resistance; wall thickness.` Where the two kinds are mixed, all count as words.
 *
 * @param lead what stands before words, such as `Missing`
 * @param join how words are joined; with semicolons when left out
 */
export function saidTogether(
  lead: string,
  items: readonly string[],
  join: (words: readonly string[]) => string = (words) => words.join('; '),
): string {
  const said = items.map((item) => item.trim()).filter((item) => item !== '');
  if (said.length === 0) return '';
  if (said.every((item) => ENDS_A_SENTENCE.test(item))) return said.join(' ');
  return `${lead}: ${join(said.map((item) => item.replace(/\.+$/, '')))}.`;
}
