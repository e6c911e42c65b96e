/** SVG as strings: every text and attribute escaped here and nowhere else, every number rounded here. */

export type Attributes = Readonly<Record<string, string | number | null | undefined>>;

/** Decimals kept in coordinates: a hundredth of a pixel is finer than any screen or printer. */
const DECIMALS = 2;

/** A coordinate as text: two decimals, no trailing zeros, never `-0`, `NaN` or an exponent. Throws RangeError for NaN or infinity. */
export function round(x: number): string {
  if (!Number.isFinite(x)) throw new RangeError(`A drawing needs finite numbers, and got ${x}.`);
  const text = x.toFixed(DECIMALS).replace(/\.?0+$/, '');
  return text === '-0' || text === '' ? '0' : text;
}

/** Text that is valid inside an XML element or attribute: markup escaped, characters that XML forbids replaced by U+FFFD. */
export function escapeText(text: string): string {
  return wellFormed(text)
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');
}

/** One element. Attributes that are null or undefined are left out; children are markup, already made by these helpers. */
export function element(name: string, attributes: Attributes, ...children: string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null && value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? round(value) : escapeText(String(value))}"`)
    .join('');
  const inside = children.join('');
  return inside === '' ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}

/** A group of marks; empty when there is nothing in it. */
export function group(attributes: Attributes, ...children: string[]): string {
  const inside = children.filter((child) => child !== '');
  return inside.length === 0 ? '' : element('g', attributes, ...inside);
}

export interface LabelStyle extends Attributes {
  'font-size': number;
  fill: string;
}

/** A line of text at (x, y), y being its baseline. The text may be anything that a person typed. */
export function label(x: number, y: number, text: string, style: LabelStyle): string {
  return element('text', { x, y, 'font-family': SANS, ...style }, escapeText(text));
}

/** Families of the pictures; the second names are for machines that lack the first. */
export const SANS = "'Source Sans 3', 'Source Sans Pro', sans-serif";
export const DISPLAY = "Besley, 'Source Sans 3', serif";

export const circle = (cx: number, cy: number, r: number, attributes: Attributes): string =>
  element('circle', { cx, cy, r, ...attributes });

export const line = (x1: number, y1: number, x2: number, y2: number, attributes: Attributes): string =>
  element('line', { x1, y1, x2, y2, ...attributes });

export const rectangle = (x: number, y: number, width: number, height: number, attributes: Attributes): string =>
  element('rect', { x, y, width, height, ...attributes });

export interface Document {
  width: number;
  height: number;
  /** Said by a screen reader in place of the picture; empty for a mark whose word stands beside it, which is then passed over. */
  description: string;
  /** True where marks at the edge may stand out over it, as the ends of an axis do. */
  overflow?: boolean;
}

/** A whole picture that can stand in a page or be saved as a file. */
export function svgDocument({ width, height, description, overflow }: Document, ...children: string[]): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      overflow: overflow === true ? 'visible' : null,
      viewBox: `0 0 ${round(width)} ${round(height)}`,
      ...(description === '' ? { 'aria-hidden': 'true' } : { role: 'img', 'aria-label': description }),
    },
    ...children,
  );
}

/** XML 1.0 (5th ed.) §2.2: the characters a document may hold. Lone surrogates and control characters are not among them. */
function wellFormed(text: string): string {
  return text.replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '\uFFFD');
}
