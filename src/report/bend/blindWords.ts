import { andList } from '../words/andList.ts';

/** Ways of keeping a judge from knowing, as they follow "judged". */
const WAYS: Readonly<Record<string, string>> = {
  open: 'openly',
  sleeve: 'in sleeves',
  'eyes covered': 'with eyes covered',
  'other room': 'from another room',
};

/**
 * How it was judged, for every place where judged results stand: `judged openly`, `judged in sleeves`, `judged openly and with
 * eyes covered`. Ways in other words are given as they were typed.
 *
 * @param blinded as in the findings; nothing stated counts as open
 */
export function blindWords(blinded: readonly string[]): string {
  const ways = blinded.length === 0 ? ['open'] : blinded;
  const words = ways.map((way) => WAYS[way.trim().toLowerCase() || 'open'] ?? `“${way.trim()}”`);
  return `judged ${andList([...new Set(words)])}`;
}
