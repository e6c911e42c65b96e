import { wholeText } from '../../units/wholeText.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';

/** One thing that was read and that the area hangs on. */
interface Input {
  /** As the sentence names it: `the mass`. */
  words: string;
  /** What the area does when this is multiplied by something: in proportion, or the inverse of it. */
  power: 1 | -1;
  /** Factors by which a slip of the unit or the decimal point puts it wrong, and what it would be then. */
  slips: readonly (readonly [number, string])[];
}

/** Factors of slips, true over typed, with what the reading would be. Decimal points first: they slip most often. */
const TENS = [
  [10, 'ten times as much'],
  [0.1, 'a tenth of it'],
] as const;
const OF_MASS = [
  ...TENS,
  [28.35, 'ounces for grams'],
  [1 / 28.35, 'grams for ounces'],
  [16, 'pounds for ounces'],
] as const;
const OF_LENGTH = [
  ...TENS,
  [25.4, 'inches for millimetres'],
  [1 / 25.4, 'millimetres for inches'],
  [12, 'feet for inches'],
] as const;
const OF_OHMS = [...TENS, [1000, 'a thousand times as much'], [0.001, 'a thousandth of it']] as const;

/** A slip explains a figure that comes within this share of the claim once it is undone. */
const WITHIN = 0.25;
/** Shorter stretches than these are not weighed or ohmed on heavy cable: such a length is looked at first. Metres; ours. */
const SHORT = { weighed: 0.05, ohmed: 0.1 };

const millimetres = (metres: number) => `${wholeText(metres * 1000)} mm`;

/** Everything that the area was worked out from, the lengths with their figures. */
function inputsOf(c: CableReadings): { used: Input[]; short: string[] } {
  const used: Input[] = [];
  const short: string[] = [];
  const lengths = [...c.groups.of('conductor_length'), ...c.groups.of('specimen_length')].map(({ mean }) => mean);
  const spans = c.groups.of('resistance').flatMap((g) => g.readings.flatMap(({ atLength }) => atLength ?? []));
  if (c.rows.some(({ kind }) => kind === 'mass')) {
    used.push({ words: 'the mass', power: 1, slips: OF_MASS });
    used.push({ words: 'the length that was weighed', power: -1, slips: OF_LENGTH });
    if (lengths.some((length) => length < SHORT.weighed))
      short.push(`the length that was weighed, ${millimetres(Math.min(...lengths))}`);
  }
  if (c.rows.some(({ kind }) => kind === 'resistance')) {
    used.push({ words: 'the ohms', power: -1, slips: OF_OHMS });
    used.push({ words: 'the length between the voltage contacts', power: 1, slips: OF_LENGTH });
    if (spans.some((span) => span < SHORT.ohmed))
      short.push(`the length between the voltage contacts, ${millimetres(Math.min(...spans))}`);
  }
  return { used, short };
}

/** The slip of one reading that would explain the share found: `the mass (ounces for grams?)`; null when none would. */
function explaining({ used }: { used: Input[] }, share: number): string | null {
  for (const { words, power, slips } of used)
    for (const [factor, what] of slips) {
      const undone = share * factor ** power;
      if (Math.abs(undone - 1) <= WITHIN) return `${words} (${what}?)`;
    }
  return null;
}

const andList = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/**
 * What to look at again where a piece seems to hold far more or far less than its label can mean: the likeliest slip among
 * the readings that the figure rests on, else all of them. Readings that were not used are never named.
 *
 * @param share found over claimed
 * @returns words that follow "check"
 */
export function slipToCheck(c: CableReadings, share: number): string {
  const inputs = inputsOf(c);
  const all = inputs.used.map(({ words }) => words);
  // A stretch too short for the job makes everything small and is the likelier the shorter it is.
  if (inputs.short.length > 0) return `${andList(inputs.short)}, first`;
  // Where mass and ohms both tell the same, no slip of one of them explains it.
  const one = all.length > 2 ? null : explaining(inputs, share);
  if (one !== null) return `${one} first`;
  return all.length === 0 ? 'the readings and their units' : `${andList(all)}, and their units`;
}
