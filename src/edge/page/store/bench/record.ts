/** Records what is in the field: one reading, kept here before anything else happens. */
import { signal } from '@preact/signals';
import { bendActOf } from '../../../../findings/bench/bendSets.ts';
import { type Question, questionFor } from '../../../../findings/bench/questionFor.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { READING_TABLE } from '../../../../journal/kinds/reading.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import { nextId } from '../journal/device.ts';
import { folded, say } from '../journal/journal.ts';
import { bendCells, partnerOf } from './bendHand.ts';
import { contacts, position, trouble, typed, unit } from './field.ts';
import { inFootage, timecodeTyped } from './filming.ts';
import { goOnFrom, inHand, takeUp } from './inHand.ts';
import { signOf, valueWords } from './names.ts';
import { room, roomUnit } from './room.ts';
import { announce } from './said.ts';

/** A reading that was just kept on this device. */
export interface JustKept {
  reading: string;
  specimen: string;
  quantity: string;
  shown: string;
  /** When Enter was pressed, ms of the page's clock: what the speed of the page is measured from. */
  pressed: number;
}

/** The last reading recorded here, until it is undone. */
export const lastKept = signal<JustKept | null>(null);
/** A doubt about a reading that was kept. It counts until somebody says otherwise. */
export const asked = signal<{ about: JustKept; question: Question } | null>(null);
/** The reading that the next one is to replace, after "measure again". */
export const again = signal<JustKept | null>(null);

/** Lets go of what was just done, as when a bench is opened. */
export function forget(): void {
  lastKept.value = null;
  asked.value = null;
  again.value = null;
}

/** Characters of an id that name a reading: 40 random bits, so that two devices never take the same name. */
const NAME_LENGTH = 10;

/** A short name that no other device gives. */
export const freshName = (letter: string): string => `${letter}-${nextId().replaceAll('-', '').slice(-NAME_LENGTH)}`;

function rowOf(act: BenchAct, reading: string, text: string): Record<string, string> {
  const { specimen, quantity, instrument } = act.item;
  const now = new Date();
  const replaced = again.value?.specimen === specimen && again.value.quantity === quantity ? again.value : null;
  return {
    reading,
    specimen,
    quantity,
    value: text,
    unit: unit.value,
    instrument: instrument ?? '',
    at: now.toISOString(),
    ...(room.value.trim() === '' ? {} : { temperature: room.value.trim(), temperature_unit: roomUnit.value }),
    ...(quantity === 'resistance' ? contactCells() : {}),
    ...(bendActOf(quantity) === null ? { position: position.value } : bendCells(act, text, unit.value)),
    ...(replaced === null ? {} : { replaces: replaced.reading, why: 'measured again' }),
    ...inFootage(now.getTime()),
  };
}

/** `600 mm` in its two columns, the number as typed. */
function contactCells(): Record<string, string> {
  const match = /^(.*?)\s*([a-z"']+)?$/i.exec(contacts.value.trim());
  const [, number = '', unitTyped = ''] = match ?? [];
  return number === '' ? {} : { at_length: number, at_length_unit: unitTyped || 'mm' };
}

/** The sentence about the first thing that is wrong with a row; empty when it may be recorded. */
function wrongWith(row: Record<string, string>): string {
  const filled = Object.fromEntries(Object.entries(row).filter(([, cell]) => cell !== ''));
  const problem = checkRow(READING_TABLE, { unit: '', ...filled }, { now: Date.now() })[0];
  if (problem === undefined) return '';
  const where: Readonly<Record<string, string>> = {
    temperature: 'Temperature: found',
    at_length: 'Between the contacts: found',
    timecode: 'Place in the recording: found',
  };
  const advice = problem.advice ? ` ${problem.advice}` : '';
  return `${where[problem.column] ?? 'Found'} ${problem.found}; expected ${problem.expected}.${advice}`;
}

/** Records what is typed and goes on to the next reading. The value stays in the field when it cannot be read. */
export async function record(): Promise<void> {
  const [act, trial, text, pressed] = [inHand.value, folded.value, typed.value.trim(), performance.now()];
  if (act === null || trial === null) return;
  const row = rowOf(act, freshName('r'), text);
  trouble.value = text === '' ? 'Found nothing; type what the tool shows.' : wrongWith(row);
  if (trouble.value !== '') return announce(trouble.value);
  const question = questionFor(trial, { specimen: '', quantity: '', value: '', unit: '', ...row });
  const kept: JustKept = { ...about(act), reading: row.reading!, shown: valueWords(text, row.unit!), pressed };
  typed.value = '';
  again.value = null;
  timecodeTyped.value = '';
  goOnFrom(act);
  const partner = act.item.left === 0 ? partnerOf(act) : null;
  if (partner !== null) takeUp({ specimen: act.item.specimen, quantity: partner });
  try {
    await say('reading', row);
  } catch (error) {
    typed.value = text;
    takeUp(act.item);
    trouble.value = `Not kept. ${error instanceof Error ? error.message : String(error)}`;
    return announce(trouble.value);
  }
  lastKept.value = kept;
  // The room's temperature has its own warning, which stands there all the time.
  asked.value = question === null || question.code === 'temperature' ? null : { about: kept, question };
  announce(keptWords(act, signOf(trial, act.item.specimen), kept.shown, asked.value?.question.text), { kept: true });
}

const about = ({ item: { specimen, quantity } }: BenchAct) => ({ specimen, quantity });

function keptWords(act: BenchAct, sign: string, shown: string, question = ''): string {
  const of = act.item.wanted >= act.repeat ? ` of ${act.item.wanted}` : '';
  return `Kept: ${shown}, reading ${act.repeat}${of} on ${sign}.${question === '' ? '' : ` ${question}`}`;
}

/** Answers the question: the reading stays as it is. */
export function keepIt(): void {
  asked.value = null;
}

/** Answers the question: the piece is taken up again, and the next reading on it replaces the one in doubt. */
export function measureAgain(): void {
  const doubt = asked.value?.about ?? null;
  asked.value = null;
  again.value = doubt;
  if (doubt !== null) takeUp(doubt);
}
