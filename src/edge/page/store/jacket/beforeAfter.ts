/** What a piece weighed and measured before and after an exposure: readings of the set that is named after the test. */
import { signal } from '@preact/signals';
import { exposureQuestion } from '../../../../findings/bench/exposureQuestion.ts';
import { suggestedTool } from '../../../../findings/bench/wantedReadings.ts';
import { benchTools } from '../../../../findings/plan/benchTools.ts';
import { READING_TABLE } from '../../../../journal/kinds/reading.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import type { Reading, Trial } from '../../../../trial/trial.ts';
import { splitTyped, typedText } from '../../../../units/typedText.ts';
import { freshName } from '../bench/freshName.ts';
import { announce } from '../bench/said.ts';
import { folded, say } from '../journal/journal.ts';
import { sentenceOf } from '../sentenceOf.ts';

/** What is read, and the unit that it is taken in unless one is typed. */
export const BEFORE_AFTER = [
  { quantity: 'mass_before', words: 'Mass before', unit: 'g', like: 'specimen_mass' },
  { quantity: 'diameter_before', words: 'Diameter before', unit: 'mm', like: 'outer_diameter' },
  { quantity: 'mass_after', words: 'Mass after', unit: 'g', like: 'specimen_mass' },
  { quantity: 'diameter_after', words: 'Diameter after', unit: 'mm', like: 'outer_diameter' },
] as const;

export type Exposed = (typeof BEFORE_AFTER)[number];

export const exposedTrouble = signal('');

/** What is asked about readings just kept here, by the reading: a doubt that stands in nobody's way. */
export const exposedAsked = signal<Readonly<Record<string, string>>>({});

/** What was read of a piece in this test and counts. */
export function readOf(trial: Trial, specimen: string, test: string, quantity: string): Reading[] {
  return trial.readings.filter(
    (r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === quantity && r.set === test,
  );
}

/** The reading stays as it is: its question is answered. */
export function keepAsRead(reading: string): void {
  const { [reading]: _, ...others } = exposedAsked.value;
  exposedAsked.value = others;
}

/** Strikes one reading out with the reason on record. */
export async function takeBackRead(reading: string): Promise<void> {
  try {
    await say('strike', { reading, why: 'taken back by whoever tested', at: new Date().toISOString() });
    keepAsRead(reading);
    announce('Taken back. It stays on record, struck out.');
  } catch (error) {
    exposedTrouble.value = `Not taken back. ${sentenceOf(error)}`;
    announce(exposedTrouble.value);
  }
}

/** Keeps one reading; answers whether it was kept. */
export async function keepExposed(what: Exposed, specimen: string, test: string, text: string): Promise<boolean> {
  const trial = folded.peek();
  if (trial === null) return false;
  const { number, unit } = splitTyped(text);
  const row: Record<string, string> = {
    reading: freshName('r'),
    specimen,
    quantity: what.quantity,
    value: number,
    unit: unit || what.unit,
    instrument: suggestedTool(what.like, benchTools(trial)) ?? '',
    set: test,
    at: new Date().toISOString(),
  };
  const filled = Object.fromEntries(Object.entries(row).filter(([, cell]) => cell !== ''));
  const problem = checkRow(READING_TABLE, { value: '', ...filled }, { now: Date.now() })[0];
  exposedTrouble.value =
    problem === undefined ? '' : `${what.words}: found ${problem.found}; expected ${problem.expected}.`;
  if (problem === undefined) {
    try {
      const question = exposureQuestion(trial, {
        ...{ specimen, quantity: what.quantity, value: number, unit: row.unit! },
        ...{ set: test, words: what.words, like: what.like },
      });
      await say('reading', filled);
      if (question !== '') exposedAsked.value = { ...exposedAsked.value, [row.reading!]: question };
      announce(`Kept: ${what.words.toLowerCase()}, ${typedText(number, row.unit!)}. ${question}`.trim(), {
        kept: true,
      });
      return true;
    } catch (error) {
      exposedTrouble.value = `Not kept. ${sentenceOf(error)}`;
    }
  }
  announce(exposedTrouble.value);
  return false;
}
