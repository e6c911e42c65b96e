import { quantityNamed } from '../../journal/quantities.ts';
import { copperPerMetre, ohmsPerMetre } from '../../methods/decide/conductorSize.ts';
import { median } from '../../numerics/describe.ts';
import { outlying } from '../../numerics/outlying.ts';
import { readingValue } from '../../trial/makeReading.ts';
import { GRAMS_IN_OUNCE } from '../../trial/remarksOnValues.ts';
import type { Trial } from '../../trial/trial.ts';
import { toCelsius } from '../../units/display.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';
import { readLabel } from '../claims/label.ts';

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
}

/** A doubt about it: never in the way, for a person to answer. */
export interface Question {
  code: 'ounces' | 'ten-times' | 'tenth' | 'far-off' | 'temperature';
  text: string;
}

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

function lengthOf(trial: Trial, specimen: string): number | null {
  const read = trial.readings.filter(
    (r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === 'conductor_length',
  );
  if (read.length > 0) return median(read.map((r) => r.value));
  return trial.specimens.find((s) => s.specimen === specimen)?.cutLength ?? null;
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

/** What the label lets expect of a first reading. Copper is supposed; clad metal weighs less than half, which is no slip. */
function expectedOf(trial: Trial, c: CandidateReading, value: number): Fellows | null {
  const cable = trial.cables.find(
    (each) => each.cable === trial.specimens.find((s) => s.specimen === c.specimen)?.cable,
  );
  const area = cable ? readLabel(cable.label).area : null;
  if (area === null) return null;
  const length = c.quantity === 'conductor_mass' ? lengthOf(trial, c.specimen) : contactsOf(c);
  const perMetre =
    c.quantity === 'conductor_mass' ? copperPerMetre(area) : c.quantity === 'resistance' ? ohmsPerMetre(area) : null;
  if (length === null || perMetre === null) return null;
  return {
    values: [perMetre * length],
    figure: value,
    leastSpread: 0,
    step: 0,
    words: 'what a cable of that label would read',
    repeats: false,
  };
}

function slip(c: CandidateReading, name: string, { values, figure, words }: Fellows): Question | null {
  const middle = median(values);
  if (!(middle > 0) || !(figure > 0)) return null;
  const shown = `${c.value} ${c.unit}`.trim();
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
    text: `The ${name}, ${`${c.value} ${c.unit}`.trim()}, stands far from ${fellows.words}. Keep it, or measure again?`,
  };
}

function tooWarm(trial: Trial, c: CandidateReading): Question | null {
  const typed = readTypedQuantity(c.temperature ?? '', 'temperature', c.temperature_unit?.trim() || 'C');
  const target = trial.targetTemperature;
  if (!typed.ok || target === null || Math.abs(typed.value.value - target) < TEMPERATURE_APART - 1e-9) return null;
  const celsius = (kelvin: number) => `${Number(toCelsius(kelvin).toFixed(1))} °C`;
  return {
    code: 'temperature',
    text: `${celsius(typed.value.value)} is 3 °C or more from the trial's ${celsius(target)}. Is the piece at the room's temperature yet?`,
  };
}

/**
 * Whether a reading about to be kept deserves a question: ounces typed as grams, a slip of the decimal point, far from its
 * repeats (Grubbs' test from six readings, a robust z for three to five), or 3 °C and more from the target. It asks; it never
 * stops anything.
 *
 * @returns null when there is nothing to ask, or the value cannot be read: the row's own check says that
 */
export function questionFor(trial: Trial, c: CandidateReading): Question | null {
  const quantity = quantityNamed(c.quantity);
  const outcome = readingValue(c.quantity, c.value, c.unit);
  if (quantity === null || !outcome.ok) return null;
  const { value, step } = outcome.value;
  const repeats = repeatsOf(trial, c, value, step);
  const fellows = repeats ?? expectedOf(trial, c, value);
  const about = fellows ? (slip(c, quantity.name, fellows) ?? farOff(c, quantity.name, fellows)) : null;
  return about ?? tooWarm(trial, c);
}
