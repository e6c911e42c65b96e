import { typedText } from '../../../../units/typedText.ts';

/** `read 3.7 oz on a check weight of 100 g`. */
export function checkWords(body: Readonly<Record<string, string>>): string {
  const { against = '', known_value: known = '', read_value: read = '', unit = '' } = body;
  const held = ['', 'other'].includes(against.trim())
    ? 'something'
    : against.trim() === 'water'
      ? 'water'
      : `a ${against.trim()}`;
  const thing = against.trim() === 'zero' ? 'nothing' : `${held} of ${typedText(known, unit)}`;
  return `read ${typedText(read, unit)} on ${thing}`;
}
