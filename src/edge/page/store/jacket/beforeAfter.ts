/** What a piece weighed and measured before and after an exposure: readings of the set that is named after the test. */
import { signal } from '@preact/signals';
import { suggestedTool } from '../../../../findings/bench/wantedReadings.ts';
import { benchTools } from '../../../../findings/plan/benchTools.ts';
import { READING_TABLE } from '../../../../journal/kinds/reading.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { splitTyped, typedText } from '../../../../units/typedText.ts';
import { freshName } from '../bench/freshName.ts';
import { announce } from '../bench/said.ts';
import { folded, say } from '../journal/journal.ts';

/** What is read, and the unit that it is taken in unless one is typed. */
export const BEFORE_AFTER = [
  { quantity: 'mass_before', words: 'Mass before', unit: 'g', like: 'specimen_mass' },
  { quantity: 'diameter_before', words: 'Diameter before', unit: 'mm', like: 'outer_diameter' },
  { quantity: 'mass_after', words: 'Mass after', unit: 'g', like: 'specimen_mass' },
  { quantity: 'diameter_after', words: 'Diameter after', unit: 'mm', like: 'outer_diameter' },
] as const;

export type Exposed = (typeof BEFORE_AFTER)[number];

export const exposedTrouble = signal('');

/** What was read of a piece in this test, as typed. */
export function readOf(trial: Trial, specimen: string, test: string, quantity: string): string {
  return trial.readings
    .filter((r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === quantity && r.set === test)
    .map((r) => typedText(r.row.value ?? '', r.row.unit ?? ''))
    .join(', ');
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
      await say('reading', filled);
      announce(`Kept: ${what.words.toLowerCase()}, ${typedText(number, row.unit!)}.`, { kept: true });
      return true;
    } catch (error) {
      exposedTrouble.value = `Not kept. ${error instanceof Error ? error.message : String(error)}`;
    }
  }
  announce(exposedTrouble.value);
  return false;
}
