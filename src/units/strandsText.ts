import { findUnit } from './unit.ts';

/** Strands as a label prints them: how many, and how thick. */
export interface StrandsText {
  /** As typed; counts of bundles are multiplied out. */
  count: string;
  diameter: string;
  /** As typed; mm where none was. */
  unit: string;
}

/** `665 x 0.25`, `7×95×0,25 mm`, `665/.010"`, `665 strands of 0.25 mm`. */
const STRANDS =
  /(?<![\d.,])((?:\d{1,5}\s*[x×*]\s*)?)(\d{1,6})\s*(?:(?:strands?|wires?)\s*(?:of|x|×)?|[x×*/])\s*(?:ø\s*)?((?:\d+)?[.,]\d+)(?:\s*(mm(?![2²])|mils?|in\b|inch(?:es)?|["″]))?(?!\s*(?:mm2|mm²|sq|[.,]?\d))/i;

/** Fewer or thicker ones are cores of a cable, as in `2 x 2.5`: then it is no strand that the text is about. Ours. */
const FEWEST = 7;
const THICKEST = 3e-3;

/**
 * Takes a text such as `665 x 0.25` apart into count and diameter; null where it holds none. A bare diameter is millimetres,
 * as labels print it, unless an inch's sign or word stands behind it.
 *
 * @example readStrandsText('665 x 0.25') // { count: '665', diameter: '0.25', unit: 'mm' }
 */
export function readStrandsText(text: string): StrandsText | null {
  const found = STRANDS.exec(text);
  if (found === null) return null;
  const [, bundles = '', strands = '', diameter = '', typedUnit] = found;
  const unit = unitOf(typedUnit);
  const inMetres = Number(diameter.replace(',', '.')) * (findUnit(unit)?.stepToSI(1) ?? Number.NaN);
  const count = (bundles === '' ? 1 : Number.parseInt(bundles, 10)) * Number(strands);
  if (!(inMetres > 0) || inMetres > THICKEST || count < FEWEST) return null;
  return { count: String(count), diameter, unit };
}

function unitOf(typed: string | undefined): string {
  if (typed === undefined) return 'mm';
  return /^(?:in|inch|inches|["″])$/i.test(typed) ? 'in' : typed.toLowerCase().replace(/^mils$/, 'mil');
}

/** The text without its strands: what is left of a label. */
export const withoutStrands = (text: string): string =>
  readStrandsText(text) === null
    ? text
    : text
        .replace(STRANDS, ' ')
        .replace(/\s+/g, ' ')
        .replace(/^[\s,;]+|[\s,;]+$/g, '');

/** How it was understood: `665 strands of 0.25 mm`. */
export const strandsWords = ({ count, diameter, unit }: StrandsText): string =>
  `${count} strands of ${diameter} ${unit}`;
