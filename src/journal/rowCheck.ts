/**
 * What makes a row impossible, and so refused at every door. Unlikely rows are let in and remarked on by the fold.
 */
import type { Dimension } from '../units/dimension.ts';
import { dimensionUnits, dimensionWanted } from '../units/dimensionWords.ts';
import type { ReadOutcome } from '../units/reading.ts';
import { findUnit } from '../units/unit.ts';
import { cellNumber, cellQuantity } from './cellQuantity.ts';
import { leastProblem, outOfReach } from './impossible.ts';
import { readKnownThing } from './knownThing.ts';
import { readLimitText } from './limitText.ts';
import { readMoment } from './moment.ts';
import { nearestWord } from './nearestWord.ts';
import { quantityNamed } from './quantities.ts';
import { retagProblem } from './retagCheck.ts';
import { settingExpected } from './settings.ts';
import type { Column, TableShape } from './tableShape.ts';
import { readTimecode } from './timecode.ts';

/** What is wrong with one cell. */
export interface CellProblem {
  column: string;
  found: string;
  expected: string;
  advice?: string;
}

export interface RowCheckOptions {
  /** Milliseconds since 1970: dates after it are refused. */
  now: number;
}

type Row = Readonly<Record<string, string>>;
type Refused = Omit<CellProblem, 'column'>;

/** Clocks run up to this far ahead of UTC, and a date without a zone is taken as UTC. */
const FARTHEST_ZONE = 14 * 3_600_000;
const LONGEST_CELL = 10_000;
const LONGEST_SHOWN = 60;

export function shownCell(text: string): string {
  return `"${text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text}"`;
}

const refusedBy = (outcome: ReadOutcome<unknown> & { ok: false }): Refused => ({
  found: outcome.found,
  expected: outcome.expected,
  ...(outcome.advice ? { advice: outcome.advice } : {}),
});

function wordProblem(typed: string, values: readonly string[]): Refused | null {
  if (values.includes(typed.toLowerCase())) return null;
  const nearest = nearestWord(typed, values);
  const few = values.length <= 8;
  return {
    found: shownCell(typed),
    expected: few ? `one of ${values.join(', ')}` : 'a word from the list of this column',
    ...(nearest ? { advice: `Did you mean ${nearest}?` } : few ? {} : { advice: `The list: ${values.join(', ')}.` }),
  };
}

function momentProblem(typed: string, now: number): Refused | null {
  const moment = readMoment(typed);
  if (!moment.ok) return refusedBy(moment);
  if (moment.value <= now + FARTHEST_ZONE) return null;
  return { found: `${shownCell(typed)}, which is in the future`, expected: 'a day that has come' };
}

function quantityProblem(column: Column, typed: string, row: Row): Refused | null {
  const dimension = column.dimension!;
  const outcome = cellQuantity(typed, dimension, row[column.unitColumn!] ?? '', column.defaultUnit);
  if (!outcome.ok) return refusedBy(outcome);
  return (
    leastProblem(typed, outcome.value.value, column.least ?? leastOf(dimension), dimension) ??
    outOfReach(typed, outcome.value.value, dimension, column.label ?? false)
  );
}

const leastOf = (dimension: Dimension) => (dimension === 'temperature' ? 'any' : 'positive');

function numberProblem(column: Column, typed: string): Refused | null {
  const outcome = cellNumber(typed.replace(/\s*%$/, ''));
  if (!outcome.ok) return refusedBy(outcome);
  return leastProblem(typed, outcome.value.value, column.least ?? 'any', null);
}

function limitProblem(typed: string, row: Row): Refused | null {
  const unit = findUnit((row.unit ?? '').trim());
  const outcome = unit === null ? null : readLimitText(typed, unit);
  return outcome === null || outcome.ok ? null : refusedBy(outcome);
}

function timecodeProblem(typed: string): Refused | null {
  const outcome = readTimecode(typed);
  return outcome.ok ? null : refusedBy(outcome);
}

function cellProblem(column: Column, row: Row, now: number): Refused | null {
  const typed = (row[column.name] ?? '').trim();
  if (typed === '')
    return column.required && !column.mayBeBlank ? { found: 'nothing', expected: wanted(column) } : null;
  if (typed.length > LONGEST_CELL)
    return { found: `${typed.length} characters`, expected: `at most ${LONGEST_CELL} characters` };
  if (column.values) return wordProblem(typed, column.values);
  if (column.moment) return momentProblem(typed, now);
  if (column.timecode) return timecodeProblem(typed);
  if (column.dimension) return quantityProblem(column, typed, row);
  if (column.limit) return limitProblem(typed, row);
  return column.number ? numberProblem(column, typed) : null;
}

function wanted(column: Column): string {
  if (column.dimension) return dimensionWanted(column.dimension);
  return column.meaning.charAt(0).toLowerCase() + column.meaning.slice(1);
}

/** The value of a reading, which its quantity gives a dimension. */
function valueProblem(row: Row): CellProblem | null {
  const quantity = quantityNamed((row.quantity ?? '').trim().toLowerCase());
  const typed = (row.value ?? '').trim();
  if (quantity === null || typed === '') return null;
  const { dimension, least, whole, name } = quantity;
  const outcome = dimension === null ? cellNumber(typed) : cellQuantity(typed, dimension, row.unit ?? '');
  if (!outcome.ok) {
    const unitBlank = (row.unit ?? '').trim() === '' && dimension !== null && cellNumber(typed).ok;
    if (unitBlank) return { column: 'unit', found: 'nothing', expected: `one of ${dimensionUnits(dimension)}` };
    return { column: 'value', ...refusedBy(outcome) };
  }
  const { value } = outcome.value;
  const problem =
    leastProblem(typed, value, least, dimension) ??
    (dimension === null ? null : outOfReach(typed, value, dimension, false)) ??
    (whole && !Number.isInteger(value) ? { found: shownCell(typed), expected: `a whole number: ${name}` } : null);
  return problem && { column: 'value', ...problem };
}

function unitProblem(row: Row): CellProblem | null {
  const typed = (row.unit ?? '').trim();
  if (typed === '' || findUnit(typed) !== null) return null;
  return { column: 'unit', found: shownCell(typed), expected: 'a unit, such as g, mm, mohm, C, V or A' };
}

/** A strand cannot be wider than the cable that holds it. */
function labelProblem(row: Row): CellProblem | null {
  const width = (name: string, unit: string) => cellQuantity((row[name] ?? '').trim(), 'length', row[unit] ?? '', 'mm');
  const strand = width('claimed_strand_diameter', 'claimed_strand_unit');
  const cable = width('claimed_outer_diameter', 'claimed_outer_diameter_unit');
  if (!strand.ok || !cable.ok || strand.value.value <= cable.value.value) return null;
  return {
    column: 'claimed_strand_diameter',
    found: `${shownCell(row.claimed_strand_diameter!.trim())}, wider than the whole cable`,
    expected: 'a strand thinner than claimed_outer_diameter',
    advice: 'Check the units of both.',
  };
}

/** Judged only once unit and words are there: those columns speak for themselves. */
function checkProblem(row: Row): CellProblem | null {
  if ((row.unit ?? '').trim() === '' || (row.read_value ?? '').trim() === '') return null;
  const outcome = readKnownThing(row);
  // A limit that cannot be read is said by its own column.
  if (outcome.ok || (outcome.column === 'known_error' && limitProblem((row.known_error ?? '').trim(), row)))
    return null;
  return { column: outcome.column, ...refusedBy(outcome) };
}

/** A note that says nothing, or that does not say what it is about. */
function noteProblem(row: Row): CellProblem | null {
  const filled = (name: string) => (row[name] ?? '').trim() !== '';
  const about = (row.about ?? '').trim().toLowerCase();
  if (about !== '' && about !== 'trial' && !filled('which'))
    return { column: 'which', found: 'nothing', expected: `the name of the ${about} that it is about` };
  if (filled('text') || filled('photo') || filled('shot')) return null;
  return { column: 'text', found: 'nothing', expected: 'words, or a photo' };
}

/** Only the trial itself needs no name. */
function withdrawalProblem(row: Row): CellProblem | null {
  const about = (row.about ?? '').trim().toLowerCase();
  if (about === '' || about === 'trial' || (row.which ?? '').trim() !== '') return null;
  return { column: 'which', found: 'nothing', expected: `the name of the ${about} that it is about` };
}

function settingProblem(row: Row): CellProblem | null {
  const expected = settingExpected(row.setting ?? '', row.value ?? '');
  return expected === null ? null : { column: 'value', found: shownCell((row.value ?? '').trim()), expected };
}

const OF_ITS_KIND: Readonly<Record<string, (row: Row) => CellProblem | null>> = {
  reading: valueProblem,
  instrument: unitProblem,
  cable: labelProblem,
  check: checkProblem,
  note: noteProblem,
  retag: retagProblem,
  setting: settingProblem,
  withdrawal: withdrawalProblem,
};

/**
 * Everything impossible in one row of a table: blanks where something is needed, words outside a closed list, units of the
 * wrong kind, no number, a number that cannot be (negative mass, NaN, 300 °C at the bench), a date in the future.
 *
 * Columns that the table does not know are not judged. An empty list means that the row may enter the journal.
 */
export function checkRow(table: TableShape, row: Row, { now }: RowCheckOptions): CellProblem[] {
  const problems: CellProblem[] = [];
  for (const column of table.columns) {
    const problem = cellProblem(column, row, now);
    if (problem) problems.push({ column: column.name, ...problem });
  }
  const ofItsKind = OF_ITS_KIND[table.kind]?.(row) ?? null;
  if (ofItsKind) problems.push(ofItsKind);
  return problems;
}
