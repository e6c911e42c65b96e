/** Settings of the plan whose values can be judged at the door. Others are kept as typed: the list is open. */
import { cellNumber } from './cellQuantity.ts';

interface Wanted {
  expected: string;
  fits: (typed: string) => boolean;
}

const numberThat = (expected: string, fits: (value: number) => boolean): Wanted => ({
  expected,
  fits: (typed) => {
    const outcome = cellNumber(typed);
    return outcome.ok && fits(outcome.value.value);
  },
});
const oneOf = (...words: readonly string[]): Wanted => ({
  expected: `one of ${words.join(', ')}`,
  fits: (typed) => words.includes(typed.toLowerCase()),
});
const counted = numberThat('a whole number from 1 to 100', (n) => Number.isInteger(n) && n >= 1 && n <= 100);

/** How a judge or a recorder can be kept from knowing which cable a piece is of. */
export const WAYS_OF_BLINDING = ['open', 'sleeve', 'eyes covered', 'other room'] as const;

const JUDGED: Readonly<Record<string, Wanted>> = {
  shortfall: numberThat('a share between 0 and 1, such as 0.05', (share) => share > 0 && share < 1),
  repeats: counted,
  specimens_each: counted,
  saw_loss_mm: numberThat('a width in mm, from 0 to 20', (width) => width >= 0 && width <= 20),
  working: oneOf('by quantity', 'by specimen'),
  blind_how: oneOf(...WAYS_OF_BLINDING),
  amps_ambient_C: numberThat('a temperature in °C, from -60 to 150', (celsius) => celsius >= -60 && celsius <= 150),
};

/** What is wrong with a setting, as what was expected; null for a good one, a blank one, and one that is not judged here. */
export function settingExpected(setting: string, value: string): string | null {
  const name = setting.trim();
  const typed = value.trim();
  if (typed === '' || !Object.hasOwn(JUDGED, name)) return null;
  const wanted = JUDGED[name]!;
  return wanted.fits(typed) ? null : wanted.expected;
}
