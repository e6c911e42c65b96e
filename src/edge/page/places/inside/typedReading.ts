import { quantityWords } from '../../../../trial/plainWords.ts';
import { STANDING_WORDS } from '../../../../trial/standing.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { typedText } from '../../../../units/typedText.ts';

/** One reading exactly as it was typed, and whether it counts. */
export interface TypedReading {
  reading: string;
  what: string;
  /** Value as typed, with its unit as printed. */
  typed: string;
  /** Instrument, contact distance, copper temperature and position, as far as they were typed. */
  circumstances: string;
  /** Empty for a reading that counts; else how it was put aside, and why. */
  aside: string;
}

/**
 * A reading as it was typed: the raw side of the findings, for whoever wants to look.
 *
 * @param signOf what a piece is called: by the code on its tag where it has one
 */
export function typedReading(
  { reading, specimen, quantity, row, standing, why }: Reading,
  signOf: (specimen: string) => string = (name) => name,
): TypedReading {
  const over = joined(row.at_length, row.at_length_unit);
  const warm = joined(row.temperature, row.temperature_unit);
  const circumstances = [row.instrument ?? '', over && `over ${over}`, warm && `at ${warm}`, row.position ?? ''];
  return {
    reading,
    what: `${signOf(specimen)}, ${quantityWords(quantity)}`,
    typed: joined(row.value, row.unit),
    circumstances: circumstances.filter((words) => words !== '').join(', '),
    aside: standing === 'counted' ? '' : [STANDING_WORDS[standing], ...(why === '' ? [] : [`“${why}”`])].join(': '),
  };
}

const joined = (value = '', unit = '') => (value === '' ? '' : typedText(value, unit));
