/** Bringing a logger's file: read here, looked at, and kept as rows of currents once the person says so. */
import { computed, signal } from '@preact/signals';
import {
  LOG_UNITS,
  type LogPreview,
  type LogRole,
  missingOf,
  previewLog,
} from '../../../../methods/current/log/columns.ts';
import { decodeText } from '../../../../report/package/decodeText.ts';
import { ZERO_CELSIUS } from '../../../../units/dimension.ts';
import { Bench, Stopped } from '../../worker/bench.ts';
import type { LogBrought } from '../../worker/jobs.ts';
import { freshName } from '../bench/freshName.ts';
import { folded, sayAll } from '../journal/journal.ts';
import { keepLog } from '../journal/photos.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { behind } from './logShift.ts';
import { typedNumber } from './typedNumber.ts';

export interface FileBrought {
  name: string;
  text: string;
  /** The file as it came; of pasted text one made of it. */
  file: File;
  /** How it was read, where that is worth saying. */
  note: string;
}

export const brought = signal<FileBrought | null>(null);
export const preview = signal<LogPreview | null>(null);
export const piece = signal('');
export const statedCurrent = signal('');
export const statedAmbient = signal('');
/** Share of the file that is read; null while nothing is. */
export const reading = signal<number | null>(null);
export const result = signal<LogBrought | null>(null);
/** What is wrong, in one sentence. */
export const logTrouble = signal('');
/** What was kept last. */
export const logKept = signal('');
/** The piece whose rows were kept last. */
export const keptPiece = signal('');

const bench = new Bench();
/** Characters from the beginning that the guess is made of. */
const BEGINNING = 100_000;

/** Lets go of the file. */
export function putDown(): void {
  bench.stop();
  brought.value = null;
  preview.value = null;
  result.value = null;
  reading.value = null;
  logTrouble.value = '';
}

export async function bring(file: File): Promise<void> {
  putDown();
  logKept.value = '';
  const read = decodeText(new Uint8Array(await file.arrayBuffer()));
  if (!read.ok) {
    const { found, expected, advice } = read.refused;
    logTrouble.value = `Found ${found}; expected ${expected}. ${advice ?? ''}`.trim();
    return;
  }
  const guessed = previewLog(read.text.slice(0, BEGINNING));
  if (guessed === null) {
    logTrouble.value =
      'No line of this file holds two figures side by side; rows of times and temperatures were expected.';
    return;
  }
  brought.value = { name: file.name, text: read.text, file, note: read.note === null ? '' : `It ${read.note}.` };
  preview.value = guessed;
}

export const bringText = (text: string): Promise<void> => bring(new File([text], 'pasted.csv', { type: 'text/csv' }));

/** Says what a column holds. A role that another column had goes over to this one. */
export function setRole(index: number, role: LogRole): void {
  change((column) => {
    if (column.index === index) return { ...column, role, unit: LOG_UNITS[role][0], why: 'as you said' };
    return role !== 'unused' && column.role === role
      ? { ...column, role: 'unused', unit: '', why: 'given to another' }
      : column;
  });
}

export function setUnit(index: number, unit: string): void {
  change((column) => (column.index === index ? { ...column, unit } : column));
}

function change(step: (column: LogPreview['columns'][number]) => LogPreview['columns'][number]): void {
  const now = preview.peek();
  if (now === null) return;
  const columns = now.columns.map(step);
  preview.value = { ...now, columns, missing: missingOf(columns) };
  result.value = null;
  logTrouble.value = '';
}

const has = (role: LogRole) => preview.value?.columns.some((c) => c.role === role) ?? false;
export const asksCurrent = computed(() => preview.value !== null && !has('current'));
export const asksAmbient = computed(() => preview.value !== null && !has('ambient'));

/** What is missing before the file can be read, each in words. */
export const lacking = computed(() => {
  const now = preview.value;
  if (now === null) return [];
  const list = [...now.missing];
  if (asksCurrent.value && !(typedNumber(statedCurrent.value) > 0))
    list.push('no column holds the current: say how many amps flowed, more than 0');
  if (statedAmbient.value.trim() !== '' && !Number.isFinite(typedNumber(statedAmbient.value)))
    list.push(`the surroundings are "${statedAmbient.value}", which is no number`);
  if (piece.value === '') list.push('no piece is chosen');
  return list;
});

/** Reads the whole file in the worker. @param metal what was found of the cable. */
export async function readBrought(metal: string | null): Promise<void> {
  const [file, now] = [brought.peek(), preview.peek()];
  if (file === null || now === null) return;
  logTrouble.value = '';
  result.value = null;
  reading.value = 0;
  const ambient = typedNumber(statedAmbient.peek());
  const stated = {
    specimen: piece.peek(),
    current: asksCurrent.peek() ? typedNumber(statedCurrent.peek()) : null,
    ambient: asksAmbient.peek() && Number.isFinite(ambient) ? ambient + ZERO_CELSIUS : null,
  };
  try {
    const columns = now.columns.map(({ index, role, unit }) => ({ index, role, unit }));
    result.value = await bench.ask('log', { text: file.text, layout: now.layout, columns, stated, metal }, (done) => {
      reading.value = done / file.text.length;
    });
  } catch (error) {
    if (!(error instanceof Stopped)) logTrouble.value = sentenceOf(error);
  } finally {
    reading.value = null;
  }
}

export const stopReading = (): void => bench.stop();

/** Largest file that is kept beside its rows, bytes: what the bench computer takes. */
const LARGEST = 32 * 1024 * 1024;

/** Keeps the file under its hash; answers why not where it cannot be. */
async function keptWhole(trial: string, file: File): Promise<string | Error> {
  if (file.size > LARGEST) return new Error(`it has ${Math.round(file.size / 1e6)} MB, and 32 MB are taken at most.`);
  return keepLog(trial, file).catch((error: Error) => error);
}

/**
 * Keeps the rows, and the file as it came beside them under its hash.
 *
 * @throws Error when this device refuses to keep them
 */
export async function keepBrought(): Promise<void> {
  const [file, found, trial] = [brought.peek(), result.peek(), folded.peek()];
  if (file === null || found === null || trial === null) return;
  const specimen = piece.peek();
  const earlier = trial.currents.filter((row) => row.specimen === specimen).map((row) => Number(row.row.time_s));
  const { rows, shift } = behind(found.rows, earlier);
  const whole = await keptWhole(trial.trial, file.file);
  const kept = whole instanceof Error ? '' : whole;
  const later = shift === 0 ? '' : `, put ${shift} s later, behind what was on record`;
  const note = {
    note: freshName('n'),
    about: 'specimen',
    which: specimen,
    text: `Heating log ${file.name}: ${found.readings} rows, kept as ${rows.length} means${later}`,
    photo: kept,
    at: new Date().toISOString(),
  };
  await sayAll([...rows.map((body) => ({ kind: 'current' as const, body })), { kind: 'note' as const, body: note }]);
  const why = whole instanceof Error ? ` The file itself could not be kept here: ${whole.message}` : '';
  keptPiece.value = specimen;
  logKept.value = `Kept: ${rows.length} rows of ${file.name}${later}.${why}`;
  putDown();
}
