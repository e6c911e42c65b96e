import { quantityNamed } from '../../journal/quantities.ts';
import { median } from '../../numerics/describe.ts';
import { outlying } from '../../numerics/outlying.ts';
import { readingValue } from '../../trial/makeReading.ts';
import { GRAMS_IN_OUNCE } from '../../trial/remarksOnValues.ts';
import type { Trial } from '../../trial/trial.ts';
import { toCelsius } from '../../units/display.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';
import { splitTyped, typedText } from '../../units/typedText.ts';
import { findUnit } from '../../units/unit.ts';
import { bendQuestion } from './bendQuestion.ts';
import { type Expected, expectedContacts, expectedReading } from './expectedReading.ts';
import { fewDiffer } from './fewDiffer.ts';

/** A reading about to be kept, as typed. */
export interface CandidateReading {
  specimen: string;
  quantity: string;
  value: string;
  unit: string;
  temperature?: string;
  temperature_unit?: string;
  at_length?: string;
  at_length_unit?: string;
  instrument?: string;
  position?: string;
}

/** A doubt about it: never in the way, for a person to answer. */
export interface Question {
  code:
    | 'ounces'
    | 'ten-times'
    | 'tenth'
    | 'too-much'
    | 'too-little'
    | 'contacts'
    | 'no-contacts'
    | 'no-diameter'
    | 'far-off'
    | 'differ'
    | 'temperature';
  text: string;
}

/** What is asked about ohms without the distance that they were read over. */
export const NO_CONTACTS =
  'How far apart were the voltage contacts? Without that distance the ohms say nothing about the metal.';

/** Chance that a sound reading is asked about. */
const LEVEL = 0.01;
/** Pieces of one label differ by less than this, and a slip of the decimal point makes more. */
const SLIP = { least: 6, most: 16 };
const OUNCES_WITHIN = 1.2;
/** Temperatures further than this from the target change the figures, K. */
const TEMPERATURE_APART = 3;
/** Rounding to the display is spread too: one step over √12. */
const ROUNDING = 1 / Math.sqrt(12);

const MASSES: ReadonlySet<string> = new Set(['specimen_mass', 'conductor_mass', 'jacket_mass']);
/** Quantities that are told to differ from one reading to the next: loads, polarity, faces. */
const DIFFER_ON_PURPOSE: ReadonlySet<string> = new Set([
  'push_force',
  'push_deflection',
  'test_voltage',
  'test_current',
  'overhang',
  'tip_drop',
  'chord_angle',
  'wall_thickness',
  'strands_in_bundle',
]);

interface Fellows {
  /** Values to stand among, in the terms of the candidate. */
  values: number[];
  figure: number;
  /** Smallest spread that repeats have: of the display. */
  leastSpread: number;
  /** One step of the candidate as typed: what lies within it of its fellows may only be rounded. */
  step: number;
  /** 'its repeats', 'what the label lets expect'. */
  words: string;
  /** Repeats can be tested by their own spread; an expectation only for slips. */
  repeats: boolean;
}

function contactsOf(c: CandidateReading): number | null {
  const length = readTypedQuantity(c.at_length ?? '', 'length', c.at_length_unit?.trim() || 'mm');
  return length.ok ? length.value.value : null;
}

/** Counted repeats on the same piece; ohms per metre where all have a distance. */
function repeatsOf(trial: Trial, c: CandidateReading, value: number, step: number): Fellows | null {
  const same = trial.readings.filter(
    (r) => r.standing === 'counted' && r.specimen === c.specimen && r.quantity === c.quantity,
  );
  if (same.length === 0) return null;
  const contacts = contactsOf(c);
  const isPerMetre = c.quantity === 'resistance' && contacts !== null && same.every((r) => r.atLength !== null);
  const over = isPerMetre ? contacts : 1;
  return {
    values: same.map((r) => (isPerMetre ? r.value / r.atLength! : r.value)),
    figure: value / over,
    leastSpread: (Math.max(...same.map((r) => r.step)) * ROUNDING) / over,
    step: step / over,
    words: same.length === 1 ? 'the reading before' : 'its repeats',
    repeats: true,
  };
}

/** What the label and the piece let expect of a reading that has no repeats, to find a slip by. */
function firstOf({ middles, words }: Expected, value: number): Fellows | null {
  const apart = (middle: number) => Math.abs(Math.log(value / middle));
  const [nearest] = [...middles].sort((a, b) => apart(a) - apart(b));
  if (nearest === undefined) return null;
  const expectation = `what ${words} would read`;
  return { values: [nearest], figure: value, leastSpread: 0, step: 0, words: expectation, repeats: false };
}

function slip(c: CandidateReading, name: string, { values, figure, words }: Fellows): Question | null {
  const middle = median(values);
  if (!(middle > 0) || !(figure > 0)) return null;
  const shown = typedText(c.value, c.unit);
  const asGrams = (figure * GRAMS_IN_OUNCE) / middle;
  if (MASSES.has(c.quantity) && asGrams < OUNCES_WITHIN && asGrams > 1 / OUNCES_WITHIN)
    return { code: 'ounces', text: `The ${name}, ${shown}, fits ${words} if it is in ounces. Is the unit right?` };
  const ratio = figure / middle;
  if (ratio >= SLIP.least && ratio <= SLIP.most)
    return {
      code: 'ten-times',
      text: `The ${name}, ${shown}, is about ten times ${words}. Is the decimal point right?`,
    };
  if (1 / ratio >= SLIP.least && 1 / ratio <= SLIP.most)
    return { code: 'tenth', text: `The ${name}, ${shown}, is about a tenth of ${words}. Is the decimal point right?` };
  return null;
}

function farOff(c: CandidateReading, name: string, fellows: Fellows): Question | null {
  if (!fellows.repeats || DIFFER_ON_PURPOSE.has(c.quantity)) return null;
  const all = [...fellows.values, fellows.figure];
  if (Math.abs(fellows.figure - median(fellows.values)) <= fellows.step) return null;
  if (!outlying(all, LEVEL, fellows.leastSpread).includes(all.length - 1)) return null;
  return {
    code: 'far-off',
    text: `The ${name}, ${typedText(c.value, c.unit)}, stands far from ${fellows.words}. Keep it, or measure again?`,
  };
}

/** `0.023 to 0.46 kg`: two digits, in the unit of what was typed. */
function spanText({ least, most }: Expected, { value, unit }: CandidateReading): string {
  const typed = findUnit(splitTyped(value).unit || unit);
  const figure = (si: number) => Number((typed?.fromSI(si) ?? si).toPrecision(2)).toString();
  return least <= 0
    ? `up to ${typedText(figure(most), unit)}`
    : `${figure(least)} to ${typedText(figure(most), typed?.symbol ?? unit)}`;
}

/** Outside of what label and piece let be, whatever the metal. */
function outOfSpan(c: CandidateReading, name: string, figure: number, expected: Expected | null): Question | null {
  if (expected === null || isWithin(expected, figure)) return null;
  const much = figure > expected.most;
  return {
    code: much ? 'too-much' : 'too-little',
    text: `The ${name}, ${typedText(c.value, c.unit)}, is far ${much ? 'above' : 'below'} what ${expected.words} can read, ${spanText(expected, c)}. Are the unit and the decimal point right?`,
  };
}

const isWithin = ({ least, most }: Expected, figure: number) => figure >= least && figure <= most;

/** Contacts that cannot stand so on the piece, or a resistance without them. */
function contactsQuestion(trial: Trial, c: CandidateReading): Question | null {
  if (c.quantity !== 'resistance') return null;
  const contacts = contactsOf(c);
  if (contacts === null) return { code: 'no-contacts', text: NO_CONTACTS };
  const expected = expectedContacts(trial, c.specimen);
  if (expected === null || isWithin(expected, contacts)) return null;
  const shown = typedText(c.at_length ?? '', c.at_length_unit || 'mm');
  return {
    code: 'contacts',
    text: `Between the contacts, ${shown}, is far ${contacts > expected.most ? 'above' : 'below'} what ${expected.words} has room for. Are the distance and its unit right?`,
  };
}

function temperatureOf(c: CandidateReading): number | null {
  const typed = readTypedQuantity(c.temperature ?? '', 'temperature', c.temperature_unit?.trim() || 'C');
  return typed.ok ? typed.value.value : null;
}

function tooWarm(trial: Trial, c: CandidateReading): Question | null {
  const read = temperatureOf(c);
  const target = trial.targetTemperature;
  if (read === null || target === null || Math.abs(read - target) < TEMPERATURE_APART - 1e-9) return null;
  const celsius = (kelvin: number) => `${Number(toCelsius(kelvin).toFixed(1))} °C`;
  return {
    code: 'temperature',
    text: `${celsius(read)} is 3 °C or more from the trial's ${celsius(target)}. Is the piece at the room's temperature yet?`,
  };
}

/** Repeats that label or piece already call a slip are no measure for what comes after them. */
function fellowsOf(trial: Trial, c: CandidateReading, value: number, step: number, expected: Expected | null) {
  const repeats = repeatsOf(trial, c, value, step);
  const first = expected && firstOf(expected, value);
  if (repeats === null || expected === null) return repeats ?? first;
  const others = trial.readings.filter(
    (r) => r.standing === 'counted' && r.specimen === c.specimen && r.quantity === c.quantity,
  );
  return isWithin(expected, median(others.map((r) => r.value))) ? repeats : first;
}

/**
 * Whether a reading about to be kept deserves a question: ounces typed as grams, a slip of the decimal point, far from its
 * repeats (Grubbs' test from six readings, a robust z for three to five; among few, further apart than their tools
 * explain), outside of what the label (whatever the metal) and
 * the piece's length let be, ohms without or with impossible contacts, or 3 °C and more from the target. It asks; it never
 * stops anything.
 *
 * @returns null when there is nothing to ask, or the value cannot be read: the row's own check says that
 */
export function questionFor(trial: Trial, c: CandidateReading): Question | null {
  const quantity = quantityNamed(c.quantity);
  const outcome = readingValue(c.quantity, c.value, c.unit);
  if (quantity === null || !outcome.ok) return null;
  const { value, step } = outcome.value;
  const { name } = quantity;
  const figure = Math.abs(value);
  const badContacts = contactsQuestion(trial, c);
  // Contacts that cannot be foretell nothing, and the reading beside them is not to blame.
  const contacts = badContacts?.code === 'contacts' ? null : contactsOf(c);
  const expected = expectedReading(trial, c.specimen, c.quantity, contacts);
  const fellows = fellowsOf(trial, c, value, step, expected);
  const slipped = fellows && slip(c, name, fellows);
  return (
    slipped ??
    bendQuestion(trial, c, value) ??
    outOfSpan(c, name, figure, expected) ??
    (fellows && farOff(c, name, fellows)) ??
    (fellows?.repeats ? fewDiffer(trial, c, name, { value, step, contacts, temperature: temperatureOf(c) }) : null) ??
    badContacts ??
    tooWarm(trial, c)
  );
}
