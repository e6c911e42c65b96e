import { parseAwgName } from './gauge.ts';

/** One size in a label's text: which way it was written, and its number (gauge number, kcmil, or mm²). */
export interface FoundSize {
  kind: 'awg' | 'gauge' | 'kcmil' | 'mm2' | 'mm';
  number: number;
}

export interface FoundSizes {
  sizes: FoundSize[];
  /** The rest of the text in plain spelling and lower case, for looking up promises in it. */
  beside: string;
  /** What stands beside the sizes. */
  words: string[];
  /** Set when a number was seen that could mean several things, or one that no cable has. */
  advice?: string;
}

/** Not a piece of a longer number, of a stranding (`665/30`, `665 x 30 AWG`) or of a decimal. */
const FRESH = String.raw`(?<![\d.,]|\d ?/ ?|[x×] ?)`;
/** A gauge name: aughts either way, or up to two digits. */
const NAME = String.raw`${FRESH}([1-4] ?/ ?[0o](?!\d|[.,]\d)|(?:0{1,4}|[1-9]\d?)(?!\d|[.,/]\d))`;
const GAUGE_WORD = '(?:gauge|guage|gage|ga|g)(?![a-z])';
const NUMBER = String.raw`${FRESH}(\d{1,4}(?:[.,]\d{1,2})?)`;
const OTHER_UNIT = ' ?-?(?:mm|sq|awg|kcm|mcm)';

/** Of matches that begin at the same place the first in this order wins. */
const PATTERNS: readonly { kind: FoundSize['kind'] | 'cmil'; pattern: RegExp }[] = [
  { kind: 'cmil', pattern: /(?<![\d.,])(\d{1,3}(?:,\d{3})+|\d{3,7}) ?(?:cmils?|circular mils?)(?![a-z])/ },
  { kind: 'kcmil', pattern: new RegExp(`${NUMBER} ?-?(?:kcmils?|mcm|kcm)(?![a-z])`) },
  { kind: 'mm2', pattern: new RegExp(`${NUMBER} ?-?(?:mm ?\\^?2|sq\\.? ?mm|square mm|mm ?sq|square milli[a-z]+)`) },
  { kind: 'awg', pattern: new RegExp(`(?:#|\\bno\\.?)? ?${NAME} ?-?(?:awg|b&s)(?![a-z])`) },
  { kind: 'awg', pattern: new RegExp(`(?:awg|b&s)[ :-]*(?:#|no\\.?)? ?${NAME}(?!${OTHER_UNIT}| ?-?${GAUGE_WORD})`) },
  { kind: 'gauge', pattern: new RegExp(`(?:#|\\bno\\.?)? ?${NAME} ?-?${GAUGE_WORD}`) },
  { kind: 'gauge', pattern: new RegExp(`(?:gauge|gage|\\bsize|\\bno\\.?|#) ?${NAME}(?!${OTHER_UNIT})`) },
  { kind: 'gauge', pattern: new RegExp(String.raw`${FRESH}([1-4] ?/ ?[0o]|0{2,4})(?!\d|[.,]\d)`) },
];

/** A bare number up to here is taken for a gauge; larger ones (16, 25, 35, 50, 250) are also names of mm² or kcmil sizes. */
const LARGEST_BARE_GAUGE = 12;
/** Largest cross-section worth believing on a label of power cable, mm². */
const LARGEST_MM2 = 1000;
/** Roughly: 1 mm² is 1.97 kcmil. */
const KCMIL_PER_MM2 = 2;

function numberOf(kind: FoundSize['kind'] | 'cmil', digits: string): number | null {
  if (kind === 'awg' || kind === 'gauge') return parseAwgName(digits);
  const value = kind === 'cmil' ? Number(digits.replace(/,/g, '')) / 1000 : Number(digits.replace(',', '.'));
  const mm2 = kind === 'mm2' || kind === 'mm' ? value : value / KCMIL_PER_MM2;
  return mm2 > 0 && mm2 <= LARGEST_MM2 ? value : null;
}

/** The earliest size in the text, with the stretch that it takes up. */
function earliest(text: string): { at: number; length: number; size: FoundSize } | null {
  let best: { at: number; length: number; size: FoundSize } | null = null;
  for (const { kind, pattern } of PATTERNS) {
    const match = pattern.exec(text);
    const number = match && numberOf(kind, match[1]!);
    if (match && number !== null && (best === null || match.index < best.at)) {
      best = { at: match.index, length: match[0].length, size: { kind: kind === 'cmil' ? 'kcmil' : kind, number } };
    }
  }
  return best;
}

const AREA_UNIT = '(?:mm ?\\^?2|sq\\.? ?mm|square mm|mm ?sq|square milli|(kcmil|mcm|kcm)|(cmil|circular mil))';
/** `40 000 mm2`: digits in groups of three, which are one number. */
const GROUPED = new RegExp(`(?<![\\d/.,])\\d{1,3}(?: \\d{3})+(?= ?-?${AREA_UNIT})`, 'g');
const ANY_AREA = new RegExp(String.raw`(\d{1,3}(?:,\d{3})+|\d+(?:[.,]\d+)?) ?-?${AREA_UNIT}`);

/** What to ask where a text gives an area that no power cable has. */
function tooLarge(text: string): string | undefined {
  const [, digits = '', kcmil, cmil] = ANY_AREA.exec(text) ?? [];
  const value = /^\d+(?:,\d{3})+$/.test(digits) ? Number(digits.replace(/,/g, '')) : Number(digits.replace(',', '.'));
  const perMm2 = kcmil !== undefined ? KCMIL_PER_MM2 : cmil !== undefined ? KCMIL_PER_MM2 * 1000 : 1;
  if (value / perMm2 <= LARGEST_MM2) return undefined;
  return `Is it so much? No power cable is thicker than ${LARGEST_MM2} mm² or ${KCMIL_PER_MM2 * LARGEST_MM2} kcmil. Check the decimal point and the unit.`;
}

/** Words that may stand beside a bare number without making it something else than a size. */
const BESIDE_A_BARE_NUMBER =
  /\b(?:true|full|real|spec|size|over[ -]?sized?|at least|min(?:imum)?|cable|wire|awg|gauge|sae)\b|≥|>=/g;

/**
 * A number alone, its words of promise aside: a gauge when small, mm² when it says mm (a way of speaking: `35 mm cable`).
 * Anything larger without a unit is anybody's guess.
 */
function bareNumber(text: string): { size: FoundSize } | { advice: string } | null {
  const match = /^(\d{1,4}(?:[.,]\d)?)( ?mm)?$/.exec(text.replace(BESIDE_A_BARE_NUMBER, '').trim());
  if (!match) return null;
  const kind = match[2] === undefined ? 'gauge' : 'mm';
  const number = numberOf(kind, match[1]!);
  const saysGauge = /awg|gauge/.test(text);
  if (number !== null && (kind === 'mm' || saysGauge || number <= LARGEST_BARE_GAUGE))
    return { size: { kind, number } };
  if (saysGauge) return null;
  return {
    advice: `A bare ${match[1]} may be a gauge, mm² or kcmil: write the unit that the label gives, if it gives one.`,
  };
}

const UNIT_WORDS: ReadonlySet<string> = new Set(['mm', 'awg', 'gauge', 'ga', 'x']);

function wordsBeside(text: string): string[] {
  const phrases = text.match(/(?:true|full|real) (?:spec|gauge|size|awg)|at least|[a-z][a-z0-9&-]*|≥|>=/g) ?? [];
  return [...new Set(phrases)].filter((word) => !UNIT_WORDS.has(word));
}

/** Finds every size in a label's text, in reading order, and what stands beside them. */
export function findSizes(text: string): FoundSizes {
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[⁄∕]/g, '/')
    .replace(/[‐-–−]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(GROUPED, (digits) => digits.replace(/ /g, ''));
  const sizes: FoundSize[] = [];
  let beside = plain;
  for (let found = earliest(beside); found !== null; found = earliest(beside)) {
    sizes.push(found.size);
    beside = `${beside.slice(0, found.at)} ; ${beside.slice(found.at + found.length)}`;
  }
  const bare = sizes.length === 0 ? bareNumber(plain) : null;
  if (bare && 'size' in bare) sizes.push(bare.size);
  const result = { sizes, beside, words: wordsBeside(beside) };
  const advice = bare && 'advice' in bare ? bare.advice : sizes.length === 0 ? tooLarge(plain) : undefined;
  return advice === undefined ? result : { ...result, advice };
}
