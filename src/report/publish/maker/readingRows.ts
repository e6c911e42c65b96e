/** Every reading of one cable as it was typed, repeats of one thing on one line, so that they fit a page. */
import { cell } from '../../../trial/cells.ts';
import { pieceSign, quantityHead } from '../../../trial/plainWords.ts';
import { STANDING_WORDS } from '../../../trial/standing.ts';
import type { Reading, Trial } from '../../../trial/trial.ts';
import { typedText } from '../../../units/typedText.ts';

/** Piece, what was read, the values as typed, and how; with it, why it does not count where it does not. */
export type ReadingRow = [piece: string, what: string, read: string, how: string];

/** Readings that may stand on one line: of one thing, by one tool, in one unit, with one fate. */
function groupKey({ specimen, quantity, row, set, standing, why }: Reading): string {
  const cells = ['unit', 'instrument', 'at_length', 'at_length_unit'].map((name) => cell(row, name));
  return JSON.stringify([specimen, quantity, set, standing, why, ...cells]);
}

function grouped(readings: readonly Reading[]): Reading[][] {
  const groups = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = groupKey(reading);
    const group = groups.get(key);
    if (group) group.push(reading);
    else groups.set(key, [reading]);
  }
  return [...groups.values()];
}

/** `0.971, 0.972 forward; 0.970 reverse mΩ`: neighbours of one position together, the unit once at the end. */
export function typedTogether(readings: readonly Pick<Reading, 'row' | 'position'>[]): string {
  const runs: { position: string; values: string[] }[] = [];
  readings.forEach(({ row, position }, i) => {
    const last = i === readings.length - 1;
    const value = cell(row, 'value');
    const typed = last ? typedText(value, cell(row, 'unit')) : value;
    const run = runs[runs.length - 1];
    if (run && run.position === position) run.values.push(typed);
    else runs.push({ position, values: [typed] });
  });
  return runs.map(({ position, values }) => `${position === '' ? '' : `${position} `}${values.join(', ')}`).join('; ');
}

/** `17.7 to 18.0 °C`, or what was typed where it is no number. */
function temperatures(readings: readonly Reading[]): string {
  const typed = readings.flatMap(({ row, temperature }) =>
    temperature === null
      ? []
      : [{ kelvin: temperature, text: cell(row, 'temperature'), unit: cell(row, 'temperature_unit') }],
  );
  if (typed.length === 0) return '';
  const byHeat = [...typed].sort((a, b) => a.kelvin - b.kelvin);
  const [low, high] = [byHeat[0]!, byHeat[byHeat.length - 1]!];
  const to = typedText(high.text, high.unit);
  if (low.text === high.text && low.unit === high.unit) return to;
  return `${low.unit === high.unit ? low.text : typedText(low.text, low.unit)} to ${to}`;
}

/** The piece by its tag and what it was cut for: `KR, apart`. */
function pieceWords(trial: Trial, specimen: string): string {
  const kind = trial.specimens.find((piece) => piece.specimen === specimen)?.row.kind ?? '';
  return [pieceSign(trial, specimen), kind.trim()].filter((text) => text !== '').join(', ');
}

export function readingRows(trial: Trial): ReadingRow[] {
  const kinds = new Map(trial.instruments.map(({ instrument, kind }) => [instrument, kind]));
  return grouped(trial.readings).map((group): ReadingRow => {
    const [first] = group as [Reading];
    const { specimen, quantity, row, instrument, standing, why } = first;
    const over = typedText(cell(row, 'at_length'), cell(row, 'at_length_unit'));
    const heat = temperatures(group);
    const aside = standing === 'counted' ? [] : [`${STANDING_WORDS[standing]}, does not count`, why];
    const how = [
      instrument === null ? '' : kinds.get(instrument) || instrument,
      over && `over ${over}`,
      heat && `at ${heat}`,
      aside.filter((text) => text !== '').join(': '),
    ];
    return [
      pieceWords(trial, specimen),
      quantityHead(quantity),
      typedTogether(group),
      how.filter((text) => text !== '').join(', '),
    ];
  });
}

/** `DM, 3 pieces` where pieces bear one sign, as pieces of one cable do; else each sign in its order. */
function signsTogether(signs: readonly string[]): string {
  const different = [...new Set(signs)];
  return different.length === 1 && signs.length > 1 ? `${different[0]}, ${signs.length} pieces` : different.join(', ');
}

/** Pieces worn out on purpose: each test on one line, its amounts in their order. */
export function enduranceRows(trial: Trial): ReadingRow[] {
  const tests = new Map<string, { row: Readonly<Record<string, string>>; amounts: string[]; signs: string[] }>();
  for (const { row } of trial.endurance) {
    const load = typedText(cell(row, 'stress'), cell(row, 'stress_unit'));
    const key = [cell(row, 'test'), load, cell(row, 'unit')].join('\u001f');
    const test = tests.get(key) ?? { row, amounts: [], signs: [] };
    test.amounts.push(`${cell(row, 'amount')}${cell(row, 'outcome') === 'survived' ? ' and came through' : ''}`);
    test.signs.push(pieceSign(trial, cell(row, 'specimen')));
    tests.set(key, test);
  }
  return [...tests.values()].map(({ row, amounts, signs }): ReadingRow => {
    const load = typedText(cell(row, 'stress'), cell(row, 'stress_unit'));
    const heat = typedText(cell(row, 'temperature'), cell(row, 'temperature_unit'));
    const test = cell(row, 'test').replaceAll('_', ' ');
    const how = [load && `under ${load}`, heat && `at ${heat}`].filter((text) => text !== '').join(', ');
    const what = `Worn by ${test}`;
    return [signsTogether(signs), what, `${amounts.join(', ')} ${cell(row, 'unit')}`.trim(), how];
  });
}
