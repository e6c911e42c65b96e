/** Records what is in the field: one reading, kept here before anything else happens. */
import { batch } from '@preact/signals';
import { bendActOf } from '../../../../findings/bench/bendSets.ts';
import { doubtAbout } from '../../../../findings/bench/doubts.ts';
import { fourWirePair, fourWirePartner, isFourWire } from '../../../../findings/bench/fourWireSet.ts';
import { OVER_CONTACTS } from '../../../../findings/bench/withoutContacts.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { READING_TABLE } from '../../../../journal/kinds/reading.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { carriesUnits, splitTyped } from '../../../../units/typedText.ts';
import { folded, say } from '../journal/journal.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { bendCells, partnerOf } from './bendHand.ts';
import { contactCells, contacts } from './contacts.ts';
import { clearField, position, refuse, typed } from './field.ts';
import { inFootage, timecodeTyped } from './filming.ts';
import { freshName } from './freshName.ts';
import { goOnFrom, inHand, takeUp } from './inHand.ts';
import { quantityHead, signOf, valueWords } from './names.ts';
import { again, ask, asked } from './questions.ts';
import { roomUnit, temperatureFor } from './room.ts';
import { announce } from './said.ts';
import { beginSitting, done, type JustKept } from './sitting.ts';
import { unit } from './typedUnit.ts';
import { wallHour } from './wallHand.ts';

let sittingAt = '';

/** Lets go of what was just done, as when the bench of another trial is opened; whoever comes back to the same can still undo. */
export function forget(trial: string): void {
  again.value = null;
  if (trial !== sittingAt) beginSitting();
  sittingAt = trial;
}

function rowOf(act: BenchAct, reading: string, text: string): Record<string, string> {
  const { specimen, quantity, instrument } = act.item;
  const now = new Date();
  const { number, unit: own } = splitTyped(text);
  const warmth = temperatureFor(quantity).trim();
  const replaced = again.value?.specimen === specimen && again.value.quantity === quantity ? again.value : null;
  // A unit typed behind the number is the one that counts; `5 ft 6 in` carries its own.
  const goesWith = own || (carriesUnits(number) ? '' : unit.value);
  return {
    reading,
    specimen,
    quantity,
    value: number,
    unit: goesWith,
    instrument: instrument ?? '',
    at: now.toISOString(),
    ...(warmth === '' ? {} : { temperature: warmth, temperature_unit: roomUnit.value }),
    ...(OVER_CONTACTS.has(quantity) ? contactCells(contacts.value) : {}),
    ...(bendActOf(quantity) === null
      ? { position: wallHour.value ?? position.value }
      : bendCells(act, number, goesWith)),
    ...fourWireCells(act, replaced?.reading ?? null),
    ...(replaced === null ? {} : { replaces: replaced.reading, why: 'measured again' }),
    ...inFootage(now.getTime()),
  };
}

/** Volts and amps of one pair share their set; the pair that is turned round says so. What is measured again stays in its own. */
function fourWireCells({ item }: BenchAct, replaced: string | null): Record<string, string> {
  const trial = folded.value;
  if (trial === null || !isFourWire(item.quantity)) return {};
  const before = replaced === null ? undefined : trial.readings.find((r) => r.reading === replaced);
  if (before !== undefined) return { set: before.set, position: before.position };
  const { set, reversed } = fourWirePair(trial, item.specimen, item.quantity);
  return { set, position: position.value || (reversed ? 'reverse' : '') };
}

/** What the volts and amps of a piece go on with; null for anything else. */
function fourWireNext({ item }: BenchAct, trial: Trial): string | null {
  if (!isFourWire(item.quantity)) return null;
  return fourWirePartner(fourWirePair(trial, item.specimen, item.quantity), item.quantity);
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

/** Records what is typed and goes on to the next reading. What cannot be read stays in the field, marked whole. */
export async function record(): Promise<void> {
  const [act, trial, text, pressed] = [inHand.value, folded.value, typed.value.trim(), performance.now()];
  if (act === null || trial === null) return;
  const row = rowOf(act, freshName('r'), text);
  const wrong = text === '' ? 'Found nothing; type what the tool shows.' : wrongWith(row);
  if (wrong !== '') return turnAway(wrong);
  const question = doubtAbout(trial, row);
  const kept: JustKept = { ...about(act), reading: row.reading!, shown: valueWords(row.value!, row.unit!), pressed };
  const then = row.replaces === undefined ? null : (again.value?.backTo ?? null);
  clearField();
  again.value = null;
  timecodeTyped.value = '';
  if (then === null) goOnFrom(act);
  else takeUp(then);
  const partner = then === null && act.item.left === 0 ? (partnerOf(act) ?? fourWireNext(act, trial)) : null;
  if (partner !== null) takeUp({ specimen: act.item.specimen, quantity: partner });
  try {
    await say('reading', row);
  } catch (error) {
    takeUp(act.item);
    typed.value = text;
    return turnAway(`Not kept. ${sentenceOf(error)}`);
  }
  batch(() => {
    done({ what: 'kept', kept, words: keptLine(trial, kept), replaced: row.replaces ?? '' });
    if (question !== null) ask(kept.reading, question);
  });
  announce(keptWords(act, signOf(trial, act.item.specimen), kept.shown, asked.value?.text), { kept: true });
}

function turnAway(sentence: string): void {
  refuse(sentence);
  announce(sentence);
}

/** `Kept 39.27 g · KR, mass of the conductor` */
const keptLine = (trial: Trial, { shown, specimen, quantity }: JustKept) =>
  `Kept ${shown} · ${signOf(trial, specimen)}, ${quantityHead(quantity).toLowerCase()}`;

const about = ({ item: { specimen, quantity } }: BenchAct) => ({ specimen, quantity });

function keptWords(act: BenchAct, sign: string, shown: string, question = ''): string {
  const of = act.item.wanted >= act.repeat ? ` of ${act.item.wanted}` : '';
  return `Kept: ${shown}, reading ${act.repeat}${of} on ${sign}.${question === '' ? '' : ` ${question}`}`;
}
