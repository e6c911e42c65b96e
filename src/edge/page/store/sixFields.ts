import { computed, signal } from '@preact/signals';
import { v7 as newId } from 'uuid';
import { quickEntries, type SixFields } from '../../../findings/quick.ts';
import type { Findings } from '../../../findings/schema.ts';
import type { Entry } from '../../../journal/entry.ts';
import { Bench, Stopped } from '../worker/bench.ts';
import { sendEntries } from './api.ts';
import { fieldTroubles } from './fieldTroubles.ts';
import { goTo } from './route.ts';

const BLANK: SixFields = { label: '', mass: '', length: '', ohms: '', contacts: '', temperature: '' };

/** The answer about one cable. The last findings stay in sight while newer ones are computed. */
export interface QuickAnswer {
  findings: Findings | null;
  busy: boolean;
  sentence: string;
}

/** What stands in the six fields, as typed. */
export const fields = signal<SixFields>(BLANK);

/** What to say under each field that cannot be read. */
export const troubles = computed(() => fieldTroubles(fields.value));

export const quickAnswer = signal<QuickAnswer>({ findings: null, busy: false, sentence: '' });

/** Why the cable could not be kept; empty when nothing stood in the way. */
export const keepTrouble = signal('');

/** Wait after the last keystroke before computing, ms: short enough to feel at once, long enough for a whole number. */
const PAUSE = 150;

const bench = new Bench();
let pause: ReturnType<typeof setTimeout> | undefined;
let asked = 0;

/** Takes what was typed in a field, and answers anew. */
export function typeField(name: keyof SixFields, text: string): void {
  fields.value = { ...fields.value, [name]: text };
  keepTrouble.value = '';
  quickAnswer.value = { ...quickAnswer.value, busy: true };
  clearTimeout(pause);
  pause = setTimeout(() => void answer(), PAUSE);
}

/** Empties all six fields. */
export function clearFields(): void {
  clearTimeout(pause);
  asked += 1;
  fields.value = BLANK;
  keepTrouble.value = '';
  quickAnswer.value = { findings: null, busy: false, sentence: '' };
}

/** Keeps the six fields as the start of a trial, and goes there. */
export async function keepAsTrial(): Promise<void> {
  const trial = `cable-${crypto.getRandomValues(new Uint32Array(1))[0]!.toString(36)}`;
  const sent = await sendEntries(trial, readableEntries(trial));
  if (sent.ok) {
    clearFields();
    goTo({ place: 'inside', trial, cable: null });
  } else keepTrouble.value = sent.sentence;
}

async function answer(): Promise<void> {
  asked += 1;
  const mine = asked;
  const entries = readableEntries('one-cable');
  if (entries.length === 0) {
    quickAnswer.value = { findings: null, busy: false, sentence: '' };
    return;
  }
  try {
    const { findings } = await bench.ask('assay', { entries, draws: 0 });
    if (mine === asked) quickAnswer.value = { findings, busy: false, sentence: '' };
  } catch (error) {
    if (mine !== asked || error instanceof Stopped) return;
    quickAnswer.value = {
      findings: null,
      busy: false,
      sentence: error instanceof Error ? error.message : String(error),
    };
  }
}

/** The entries that the readable fields make; a field that cannot be read counts as blank. None when all are. */
function readableEntries(trial: string): Entry[] {
  const readable = { ...fields.value };
  for (const name of Object.keys(troubles.value) as (keyof SixFields)[]) readable[name] = '';
  if (Object.values(readable).every((text) => text.trim() === '')) return [];
  return quickEntries(readable, { trial, at: new Date().toISOString(), newId });
}
