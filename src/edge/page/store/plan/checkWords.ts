import { typedText } from '../../../../units/typedText.ts';

/** `read 3.7 oz on a check weight of 100 g`. */
export function checkWords(body: Readonly<Record<string, string>>): string {
  const { against = '', known_value: known = '', read_value: read = '', unit = '' } = body;
  const thing = against.trim() === 'zero' ? 'nothing' : `${against.trim() || 'something'} of ${typedText(known, unit)}`;
  return `read ${typedText(read, unit)} on ${thing}`;
}
