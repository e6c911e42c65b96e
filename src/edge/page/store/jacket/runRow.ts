/** The row that an outcome is kept as, and what of it or of a set-up cannot be. */
import { ENDURANCE_TABLE } from '../../../../journal/kinds/endurance.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import { isBareFluid } from '../../../../methods/jacket/protocols/protocols.ts';
import { roomUnit } from '../bench/room.ts';
import { recordedBy } from '../journal/device.ts';
import type { Run } from './runState.ts';

export type Outcome = 'failed' | 'survived';

/** The row of an outcome. */
export function rowOf(
  now: Run,
  specimen: string,
  amount: string,
  unit: string,
  outcome: Outcome,
): Record<string, string> {
  const warm = now.temperature.trim();
  const looked = now.way === 'strokes' || now.way === 'timer' ? now.every.trim() : '';
  return {
    specimen,
    test: now.test.trim(),
    amount,
    unit,
    outcome,
    ...(looked === '' ? {} : { inspected_every: looked }),
    ...(now.stress.trim() === '' ? {} : { stress: now.stress.trim(), stress_unit: now.stressUnit }),
    ...(warm === '' ? {} : { temperature: warm, temperature_unit: roomUnit.peek() }),
    by: recordedBy(),
    at: new Date().toISOString(),
  };
}

const WHERE: Readonly<Record<string, string>> = {
  test: 'Name of the test',
  unit: 'Unit',
  stress: 'Load',
  inspected_every: 'Looked at every',
  temperature: 'Temperature',
};

/** What of a row cannot be, a sentence for each cell; empty when all can. `amountIs`: what the amount is called. */
export function wrongWith(row: Record<string, string>, amountIs: string): string {
  return wrongCells(row, amountIs).join(' ');
}

function wrongCells(row: Record<string, string>, amountIs: string): string[] {
  return checkRow(ENDURANCE_TABLE, row, { now: Date.now() }).map(({ column, found, expected, advice = '' }) =>
    `${WHERE[column] ?? amountIs}: found ${found}; expected ${expected}. ${advice}`.trim(),
  );
}

/** Fields of a set-up as they are called when something in them cannot be. */
export const FIELDS = {
  exposure: 'How much for every piece',
  stress: 'Load',
  every: 'Looked at every',
  stopAt: 'Ended at',
} as const;

/** What of a set-up cannot be, a sentence for each field; empty when all can. */
export function wrongSetUp(now: Run): string[] {
  if (isBareFluid(now.test))
    return [
      `Name: found "${now.test.trim()}" alone; expected the fluid too, such as "fluid: diesel". Every fluid is a test of its own.`,
    ];
  const amount = now.way === 'once' ? now.exposure.trim() : '1';
  const cells = wrongCells(rowOf(now, 'x', amount, now.unit.trim(), 'survived'), FIELDS.exposure);
  const stop = now.stopAt.trim();
  const ends = stop === '' ? [] : wrongCells(rowOf(now, 'x', stop, now.unit, 'survived'), FIELDS.stopAt);
  // What is wrong beside the amount is wrong in both rows, in the same words.
  return [...new Set([...cells, ...ends])];
}
