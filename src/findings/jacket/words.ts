import { formatPlain } from '../../units/digits.ts';
import { numberWord } from '../../units/numberWords.ts';
import { rangeText } from '../../units/rangeText.ts';
import { listed } from '../flex/words.ts';

/** `310 strokes`: three digits at most of what was computed. */
export function plainAmount(value: number, unit: string): string {
  const text = Number.isInteger(value)
    ? String(value)
    : formatPlain(value, 3)
        .replace(/(\.\d*?)0+$/, '$1')
        .replace(/\.$/, '');
  return unit === '' ? text : `${text} ${unit}`;
}

const rounded = (value: number) => Number(value.toPrecision(2));

/** `between 120 and 310 strokes`, `at least 120 strokes`, `at most 310 strokes`; empty where nothing is known. */
export function openRange([low, high]: readonly [number | null, number | null], unit: string): string {
  if (low !== null && high !== null) return `between ${rangeText(low, high).replace(' to ', ' and ')} ${unit}`;
  if (low !== null) return `at least ${plainAmount(rounded(low), unit)}`;
  return high === null ? '' : `at most ${plainAmount(rounded(high), unit)}`;
}

/** `three pieces`, `one piece`. */
export const pieces = (n: number): string => `${numberWord(n)} ${n === 1 ? 'piece' : 'pieces'}`;

/** Bands in words: who lasts longest, who comes next, and which of one band are not parted. */
export function lastingSentence(bands: readonly (readonly string[])[], test: string): string {
  const [first, ...rest] = bands;
  if (!first || bands.flat().length < 2) return '';
  const lead = `In the ${test} test`;
  if (rest.length === 0) return `${lead}, the pieces of ${listed(first)} are not parted: no order can be given.`;
  const head =
    first.length === 1
      ? `${lead}, the pieces of ${first[0]} lasted longest`
      : `${lead}, the pieces of ${listed(first)} lasted longest and are not parted`;
  const then = rest.map((band, i) => {
    const last = i === rest.length - 1 ? 'last ' : 'then ';
    return `${last}${listed(band)}${band.length > 1 ? ', not parted' : ''}`;
  });
  return `${[head, ...then].join('; ')}.`;
}

/**
 * Which cables were parted from which, where no clean cut goes through the field: cables with the same list of shorter-lived ones
 * are named together.
 */
export function partedSentence(cables: readonly { name: string; shorter: readonly string[] }[], test: string): string {
  const said = new Map<string, { names: string[]; shorter: readonly string[] }>();
  for (const { name, shorter } of cables.filter((c) => c.shorter.length > 0)) {
    const key = shorter.join('\n');
    const group = said.get(key) ?? { names: [], shorter };
    group.names.push(name);
    said.set(key, group);
  }
  const parts = [...said.values()].map(({ names, shorter }, i) =>
    i === 0
      ? `the pieces of ${listed(names)} lasted longer than those of ${listed(shorter)}`
      : `${listed(names)} longer than ${listed(shorter)}`,
  );
  return `In the ${test} test, ${parts.join('; ')}. The others are not parted.`;
}
