/** Most stretches that a sentence names. */
const MOST_NAMED = 12;

/** Ascending numbers in words: `17, 19 to 40 and 52`; where there are too many stretches, how many numbers more. */
export function numberRanges(numbers: readonly number[]): string {
  const stretches: { from: number; to: number }[] = [];
  for (const number of numbers) {
    const last = stretches.at(-1);
    if (last !== undefined && number === last.to + 1) last.to = number;
    else stretches.push({ from: number, to: number });
  }
  const words = stretches
    .slice(0, MOST_NAMED)
    .flatMap(({ from, to }) => (to - from < 2 ? [...new Set([from, to])].map(String) : [`${from} to ${to}`]));
  const rest = stretches.slice(MOST_NAMED).reduce((sum, { from, to }) => sum + to - from + 1, 0);
  if (rest > 0) return `${words.join(', ')} and ${rest} more`;
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
