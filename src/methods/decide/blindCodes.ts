import { stableShuffle } from './stableShuffle.ts';

/** Consonants that no hand confuses with one another or with a figure: without B G M Q S W Y. */
const LETTERS = [...'CDFHJKLNPRTVXZ'];

/** Pairs that say something by themselves, in one order or the other: units, hands, trade words, and what makes people laugh. */
const SPEAKING: ReadonlySet<string> = new Set(
  'CD CP CT CV DK DP DT DV FK FT FX HJ HP HR HT HV JP KF KN KP KT KV LH LP LT LV LX LD NF NP PF PH PT RF RH RT RX TF TP TV VC VD XL XR'
    .split(' ')
    .map(unordered),
);

/** A pair as read from either side of a tag: it and its reverse count as one. */
function unordered(code: string): string {
  return [...code].sort().join('');
}

/** All codes there are, in alphabetical order. */
function allCodes(): string[] {
  return LETTERS.flatMap((a) => LETTERS.flatMap((b) => (a === b || SPEAKING.has(unordered(a + b)) ? [] : [a + b])));
}

/** Pairs of letters that stand for a name: the first two of each word, the initials of neighbours, the first two consonants. */
export function initialsOf(name: string): string[] {
  const words = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .split(/[^A-Z]+/)
    .filter((word) => word !== '');
  const starts = words.map((word) => word.slice(0, 2));
  const neighbours = words.slice(1).map((word, i) => words[i]![0]! + word[0]!);
  const consonants = words.map((word) => word.replace(/[AEIOU]/g, '').slice(0, 2));
  return [...new Set([...starts, ...neighbours, ...consonants])].filter((pair) => pair.length === 2);
}

export interface CodeOptions {
  /** Any text; the same seed gives the same codes. */
  seed: string;
  /** Makers and models whose initials no code may spell. */
  names: readonly string[];
  /** Codes already on tags: they are not given again. */
  taken?: readonly string[];
}

/**
 * Blind codes for tags: two consonants each, unique, none the initials of a maker or model in either order, none that reads
 * as a unit or a word. Where the pairs run out, a figure follows them.
 *
 * @throws RangeError for more codes than there are
 */
export function blindCodes(count: number, { seed, names, taken = [] }: CodeOptions): string[] {
  const initials = new Set(names.flatMap(initialsOf).map(unordered));
  const used = new Set(taken.map((code) => code.trim().toUpperCase()));
  const pairsTaken = new Set([...used].map((code) => unordered(code.slice(0, 2))));
  const free = allCodes().filter((code) => !initials.has(unordered(code)));
  const pairs = oneOfEach(stableShuffle(free, `${seed} codes`));
  const plain = pairs.filter((code) => !pairsTaken.has(unordered(code)));
  const numbered = [...'3479'].flatMap((figure) => pairs.map((code) => code + figure)).filter((c) => !used.has(c));
  const codes = [...plain, ...numbered].slice(0, count);
  if (codes.length < count) throw new RangeError(`there are ${codes.length} codes, ${count} were asked for`);
  return codes;
}

/** Of a pair and its reverse the one that comes first. */
function oneOfEach(codes: readonly string[]): string[] {
  const seen = new Set<string>();
  return codes.filter((code) => {
    const both = unordered(code);
    if (seen.has(both)) return false;
    seen.add(both);
    return true;
  });
}
