/** Short words that the trade prints for a metal, and the metal in full; common practice, no source. */
const SAME: readonly (readonly [short: string, full: string])[] = [
  ['cca', 'copper-clad aluminium'],
  ['cca', 'copper-clad aluminum'],
  ['cca', 'clad aluminium'],
  ['ccs', 'copper-clad steel'],
  ['ofc', 'oxygen-free copper'],
  ['tpc', 'tough-pitch copper'],
  ['etp', 'tough-pitch copper'],
  ['al', 'aluminium'],
  ['al', 'aluminum'],
  ['cu', 'copper'],
];

/** Small letters, and spaces for everything else, so that `Copper clad` and `copper-clad` are the same. */
const even = (text: string) =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;

/**
 * Other words for a metal than those that stand there, so that whoever looks for `CCA` finds what says copper-clad aluminium and the other way
 * round. Bare `al` and `cu` stand for the plain metal only. Empty where nothing is meant by another word.
 */
export function tradeWords(metal: string): string {
  const said = even(metal);
  const words = new Set<string>();
  for (const [short, full] of SAME) {
    const plain = short === 'al' || short === 'cu';
    if (plain ? said === even(full) : said.includes(even(full))) words.add(short);
    if (said.includes(` ${short} `)) words.add(full);
  }
  return [...words].join(' ');
}
