/** Number of letters to add, drop or change to get from one word to the other (Levenshtein's distance). */
export function lettersApart(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const change = above[column - 1]! + (a[row - 1] === b[column - 1] ? 0 : 1);
      current.push(Math.min(change, above[column]! + 1, current[column - 1]! + 1));
    }
    above = current;
  }
  return above[b.length]!;
}

/** Longest word worth comparing; longer ones are no slip of the finger. */
const LONGEST = 60;

/**
 * The word of a list that was probably meant, or null when none is near: at most a third of the letters apart, blanks and
 * hyphens counting as underscores.
 */
export function nearestWord(typed: string, words: readonly string[]): string | null {
  const plain = typed.trim().toLowerCase();
  if (plain === '' || plain.length > LONGEST) return null;
  const joined = (word: string) => word.replace(/[\s_-]+/g, '_');
  let best: string | null = null;
  let least = Math.floor(plain.length / 3) + 0.5;
  for (const word of words) {
    const distance = lettersApart(joined(plain), joined(word));
    if (distance < least) [best, least] = [word, distance];
  }
  return best;
}
