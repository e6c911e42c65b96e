import { CIRCULAR_MIL } from './exactFactors.ts';
import { awgArea, awgName } from './gauge.ts';
import type { ReadOutcome } from './reading.ts';
import { type FoundSize, type FoundSizes, findSizes } from './sizePatterns.ts';

/** What a size on a label can be held to. */
export interface SizeClaim {
  /** `gauge`: a number without a system's name, as in `2 gauge`, `#2`, `4/0`. */
  system: 'AWG' | 'kcmil' | 'mm2' | 'gauge';
  /** The gauge number as read (4/0 is −3, 1/0 is 0), also for a vague `gauge`; null for kcmil and mm². */
  awg: number | null;
  /** m², nominal. For `gauge` that of the AWG size of the same number: a common understanding, not a promise. */
  area: number | null;
  /** True when the label names no standard. */
  vague: boolean;
  /** True when the words promise no less than nominal: `oversized`, `at least`, `minimum`. */
  atLeast: boolean;
  /** The words beside the size, in lower case: `true spec`, `oversized`, `welding cable`. */
  words: string[];
  /** How the text was understood, as a sentence for people. */
  readAs: string;
  /** Further sizes in the same text, in order; they are read, but the first one counts. */
  also: SizeClaim[];
}

const EXAMPLES = 'a size as printed on the label, such as 2 AWG, 1/0 AWG, 0 gauge, 35 mm² or 250 kcmil';
const LONGEST = 120;

/** Words that hold a bare number or a `gauge` to the standard: AWG itself, or a promise of full or true size. */
const CLAIMS_STANDARD = /\b(?:awg|b&s|(?:true|full|real)[ -]?(?:spec|gauge|ga|size)|(?:in|on|to)[ -]spec)\b/;
const AT_LEAST = /over[ -]?(?:sized?|spec)\b|\bat least\b|\bmin(?:imum)?\b|≥|>=|\bnot? less than\b/;
const VAGUE_UNIT = 'the label does not name a standard';

function squareMillimetres(area: number): string {
  return `${Number((area * 1e6).toPrecision(4))} mm²`;
}

function gaugeClaim(
  size: FoundSize,
  standard: boolean,
): Pick<SizeClaim, 'system' | 'awg' | 'area' | 'vague' | 'readAs'> {
  const area = awgArea(size.number);
  const name = awgName(size.number);
  if (standard) {
    const readAs = `${name} AWG, ${squareMillimetres(area)} nominal`;
    return { system: 'AWG', awg: size.number, area, vague: false, readAs };
  }
  const readAs = `gauge ${name}; ${VAGUE_UNIT}. As AWG it would be ${squareMillimetres(area)}`;
  return { system: 'gauge', awg: size.number, area, vague: true, readAs };
}

function areaClaim(size: FoundSize): Pick<SizeClaim, 'system' | 'awg' | 'area' | 'vague' | 'readAs'> {
  if (size.kind === 'kcmil') {
    const area = size.number * CIRCULAR_MIL * 1000;
    return {
      system: 'kcmil',
      awg: null,
      area,
      vague: false,
      readAs: `${size.number} kcmil, ${squareMillimetres(area)}`,
    };
  }
  const vague = size.kind === 'mm';
  const readAs = vague
    ? `${size.number} mm, taken for ${size.number} mm²; the label does not say square`
    : `${size.number} mm² as a size name; such sizes are bound by resistance, not by area`;
  return { system: 'mm2', awg: null, area: size.number / 1e6, vague, readAs };
}

function claimOf(size: FoundSize, found: FoundSizes): SizeClaim {
  const saysAwg = (other: FoundSize) => other.kind === 'awg' && other.number === size.number;
  const isGauge = size.kind === 'awg' || size.kind === 'gauge';
  const core = isGauge
    ? gaugeClaim(size, CLAIMS_STANDARD.test(found.beside) || found.sizes.some(saysAwg))
    : areaClaim(size);
  const atLeast = AT_LEAST.test(found.beside);
  const readAs = atLeast ? `at least ${core.readAs}` : core.readAs;
  return { ...core, readAs, atLeast, words: found.words, also: [] };
}

function readAsWithRest(first: SizeClaim, also: readonly SizeClaim[]): string {
  if (also.length === 0) return first.readAs;
  return `${first.readAs}. The label also says ${also.map((claim) => claim.readAs).join('; ')}; the first size counts`;
}

/**
 * Reads a claimed size, verbatim from label or listing: `2 AWG`, `1/0 true spec`, `0 gauge`, `4/0`, `250 MCM`, `35 mm²`.
 *
 * `AWG`, `true spec`, `full spec` and the like claim the standard. `gauge`, `ga`, `#` and bare numbers do not: they are `vague`,
 * read with the gauge number all the same. `0` is 1/0. `oversized` promises at least nominal. Where two sizes stand in one
 * text the first counts, and the sentence says so. What cannot be read is refused with examples, never guessed: a bare `35`
 * or `250` could be several things.
 *
 * @example readSizeText('1/0 true spec') // system 'AWG', awg 0, vague false
 */
export function readSizeText(text: string): ReadOutcome<SizeClaim> {
  const shown = text.trim();
  if (shown === '') return { ok: false, found: 'nothing', expected: EXAMPLES };
  if (shown.length > LONGEST) return { ok: false, found: `a text of ${shown.length} characters`, expected: EXAMPLES };
  const sizes = findSizes(shown);
  const [first, ...rest] = sizes.sizes.map((size) => claimOf(size, sizes));
  if (first === undefined) {
    const refusal = { ok: false as const, found: `"${shown}"`, expected: EXAMPLES };
    return sizes.advice === undefined ? refusal : { ...refusal, advice: sizes.advice };
  }
  const also = rest.filter((claim) => claim.system !== first.system || claim.area !== first.area);
  return { ok: true, value: { ...first, readAs: readAsWithRest(first, also), also } };
}
