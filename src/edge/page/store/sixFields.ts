import { computed, effect, signal } from '@preact/signals';
import { v7 as newId } from 'uuid';
import { quickEntries, type SixFields } from '../../../findings/quick.ts';
import type { Findings } from '../../../findings/schema.ts';
import { Bench, Stopped } from '../worker/bench.ts';
import { bareUnits } from './bareUnits.ts';
import { fieldTroubles, without } from './fieldTroubles.ts';
import { type FieldName, readField } from './readField.ts';
import { sentenceOf } from './sentenceOf.ts';
import { sessionSignal } from './sessionSignal.ts';

const BLANK: SixFields = { label: '', mass: '', length: '', ohms: '', contacts: '', temperature: '' };

/** The answer about one cable. The last findings stay in sight while newer ones are computed. */
export interface QuickAnswer {
  findings: Findings | null;
  busy: boolean;
  sentence: string;
}

const NO_ANSWER: QuickAnswer = { findings: null, busy: false, sentence: '' };

/** What stands in the six fields, as typed. */
export const fields = sessionSignal<SixFields>('cupel.six-fields', BLANK, isSixFields);

/** What to say under each field that cannot be read, or holds what cannot be. */
export const troubles = computed(() => fieldTroubles(fields.value, bareUnits.value, Date.now()));

/** How each field was understood; fields that are blank or in trouble are not there. */
export const readings = computed(() => {
  const found: Partial<Record<FieldName, string>> = {};
  for (const name of Object.keys(fields.value) as FieldName[]) {
    if (fields.value[name].trim() === '' || troubles.value[name] !== undefined) continue;
    const read = readField(name, fields.value[name], bareUnits.value);
    if (read.ok) found[name] = read.value;
  }
  return found;
});

export const quickAnswer = signal<QuickAnswer>(NO_ANSWER);

/** Wait after the last keystroke before computing, ms: short enough to feel at once, long enough for a whole number. */
const PAUSE = 150;

const bench = new Bench();
let pause: ReturnType<typeof setTimeout> | undefined;
let asked = 0;

/** Takes what was typed in a field. */
export function typeField(name: FieldName, text: string): void {
  fields.value = { ...fields.value, [name]: text };
}

/** Empties all six fields. */
export function clearFields(): void {
  fields.value = BLANK;
}

/** Answers anew whenever a field, or the unit that a bare number is taken in, changed. */
effect(() => {
  const readable = without(fields.value, troubles.value);
  const bare = bareUnits.value;
  clearTimeout(pause);
  asked += 1;
  if (isBlank(readable)) {
    quickAnswer.value = NO_ANSWER;
    return;
  }
  const mine = asked;
  quickAnswer.value = { ...quickAnswer.peek(), busy: true };
  const entries = quickEntries(readable, { trial: 'one-cable', at: new Date().toISOString(), newId, bare });
  pause = setTimeout(() => void answer(mine, entries), PAUSE);
});

async function answer(mine: number, entries: ReturnType<typeof quickEntries>): Promise<void> {
  try {
    const { findings } = await bench.ask('assay', { entries, draws: 0 });
    if (mine === asked) quickAnswer.value = { findings, busy: false, sentence: '' };
  } catch (error) {
    if (mine !== asked || error instanceof Stopped) return;
    const sentence = sentenceOf(error);
    quickAnswer.value = { findings: null, busy: false, sentence };
  }
}

/** Hoisted: the effect above runs while this file is still being read. */
function isBlank(typed: SixFields): boolean {
  return Object.values(typed).every((text) => text.trim() === '');
}

function isSixFields(kept: unknown): kept is SixFields {
  if (typeof kept !== 'object' || kept === null) return false;
  return Object.keys(BLANK).every((name) => typeof (kept as Record<string, unknown>)[name] === 'string');
}
