/** Names in one phrase: `a`, `a and b`, `a, b and c`. */
export function listed(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? '';
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

/** Names in groups by their band, the first band first. */
export function bandsOf(items: readonly { name: string; band: number }[]): string[][] {
  const most = Math.max(0, ...items.map((i) => i.band));
  return Array.from({ length: most }, (_, b) => items.filter((i) => i.band === b + 1).map((i) => i.name));
}

/**
 * Bands as a sentence: who bends most easily, who comes next, and that cables of one band cannot be told apart.
 *
 * @param how 'As judged by hand', 'By droop'
 */
export function bandSentence(bands: readonly (readonly string[])[], how: string): string {
  const [first, ...rest] = bands;
  if (!first || bands.flat().length < 2) return '';
  if (rest.length === 0) return `${how}, ${listed(first)} are not parted: no order can be given.`;
  const lead =
    first.length === 1
      ? `${how}, ${first[0]} bends most easily`
      : `${how}, ${listed(first)} bend most easily and are not parted`;
  const then = rest.map((band, i) => {
    const last = i === rest.length - 1 ? 'last ' : 'then ';
    return `${last}${listed(band)}${band.length > 1 ? ', not parted' : ''}`;
  });
  return `${[lead, ...then].join('; ')}.`;
}

/** `2.9 times`, `12 times`. */
export const timesText = (times: number): string => `${times < 10 ? times.toFixed(1) : Math.round(times)} times`;
