import { type Dimension, ZERO_CELSIUS } from '../units/dimension.ts';
import { dimensionName } from '../units/dimensionWords.ts';
import type { Least } from './tableShape.ts';

interface Refused {
  found: string;
  expected: string;
  advice?: string;
}

/** Temperatures of a bench reading, K: colder or hotter, and no jacket can be handled. */
const BENCH_TEMPERATURES = { from: ZERO_CELSIUS - 60, to: ZERO_CELSIUS + 200, words: 'between −60 °C and 200 °C' };
/** Temperatures that a label may claim, K. */
const LABEL_TEMPERATURES = { from: ZERO_CELSIUS - 100, to: ZERO_CELSIUS + 600, words: 'between −100 °C and 600 °C' };

/**
 * More than any bench can hold, SI; a typed figure beyond it is a slip, not a reading. Common sense, no source: set so wide
 * that nothing real meets it.
 */
const TOO_MUCH: Partial<Record<Dimension, { most: number; words: string }>> = {
  length: { most: 10_000, words: 'at most 10 km' },
  mass: { most: 10_000, words: 'at most 10 t' },
  resistance: { most: 1e6, words: 'at most 1 MΩ' },
  'resistance per length': { most: 1e3, words: 'at most 1 kΩ/m' },
  'mass per length': { most: 1e3, words: 'at most 1 t/m' },
  angle: { most: 4 * Math.PI, words: 'at most two turns' },
  force: { most: 1e5, words: 'at most 100 kN' },
  voltage: { most: 1e3, words: 'at most 1 kV' },
  current: { most: 1e5, words: 'at most 100 kA' },
  count: { most: 1e6, words: 'at most a million' },
  ratio: { most: 100, words: 'at most 10,000 %' },
};

const named = (dimension: Dimension | null): string => (dimension === null ? 'a number' : dimensionName(dimension));

/** Why a number is too small to be: a mass, a length or a count of nothing or less. */
export function leastProblem(typed: string, value: number, least: Least, dimension: Dimension | null): Refused | null {
  if (least === 'positive' && !(value > 0)) return { found: `"${typed}"`, expected: `${named(dimension)} above zero` };
  if (least === 'not negative' && !(value >= 0))
    return { found: `"${typed}"`, expected: `${named(dimension)}, zero or more` };
  return null;
}

/** Why a quantity is beyond anything that a bench can hold. */
export function outOfReach(typed: string, value: number, dimension: Dimension, label: boolean): Refused | null {
  if (dimension === 'temperature') {
    const span = label ? LABEL_TEMPERATURES : BENCH_TEMPERATURES;
    const within = value >= span.from && value <= span.to;
    return within
      ? null
      : { found: `"${typed}"`, expected: `a temperature ${span.words}`, advice: 'Check its unit: C, F or K.' };
  }
  const limit = TOO_MUCH[dimension];
  if (!limit || Math.abs(value) <= limit.most) return null;
  return {
    found: `"${typed}"`,
    expected: `${named(dimension)} of ${limit.words}`,
    advice: 'Check the decimal point and the unit.',
  };
}
