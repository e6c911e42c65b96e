/** Keeping the one cable of the six fields as the start of a trial. */
import { computed, signal } from '@preact/signals';
import { v7 as newId } from 'uuid';
import { quickEntries } from '../../../findings/quick.ts';
import type { Entry } from '../../../journal/entry.ts';
import { sendTogether } from './api.ts';
import { bareUnits } from './bareUnits.ts';
import { goTo } from './route.ts';
import { sessionSignal } from './sessionSignal.ts';
import { fields, troubles } from './sixFields.ts';

/** A trial that was kept from the fields, and what stood in them. */
interface Kept {
  trial: string;
  title: string;
  typed: string;
}

/** What stands in the fields, and how its bare numbers are taken. */
const typed = computed(() => JSON.stringify([fields.value, bareUnits.value]));
const refused = signal({ typed: '', sentence: '' });
const lastKept = sessionSignal<Kept>('cupel.six-kept', { trial: '', title: '', typed: '' }, isKept);

/** Why the cable could not be kept, told of the fields that it was asked for; empty when nothing stood in the way. */
export const keepTrouble = computed(() => (refused.value.typed === typed.value ? refused.value.sentence : ''));

/** True while the entries are on their way. */
export const keeping = signal(false);

/** The trial that just these fields were kept as; null when they have changed since, or never were. */
export const keptAs = computed(() => (lastKept.value.typed === typed.value ? lastKept.value : null));

/** The same fields make the same entries however often they are sent, so that a repeated try adds nothing. */
let prepared: (Kept & { entries: Entry[] }) | null = null;

/** Keeps the six fields as the start of a trial, and goes there. Does nothing while that is under way, or a field is in trouble. */
export async function keepAsTrial(): Promise<void> {
  if (keeping.value || Object.keys(troubles.value).length > 0) return;
  if (keptAs.value !== null) return goTo({ place: 'inside', trial: keptAs.value.trial, cable: null });
  keeping.value = true;
  if (prepared?.typed !== typed.value) prepared = prepare();
  const { entries, ...kept } = prepared;
  const sent = await sendTogether(kept.trial, entries);
  keeping.value = false;
  if (!sent.ok) {
    refused.value = { typed: kept.typed, sentence: sent.sentence };
    return;
  }
  lastKept.value = kept;
  goTo({ place: 'inside', trial: kept.trial, cable: null });
}

function prepare(): Kept & { entries: Entry[] } {
  const now = new Date();
  const trial = `cable-${crypto.getRandomValues(new Uint32Array(1))[0]!.toString(36)}`;
  const title = titleFor(fields.value.label, now);
  const at = now.toISOString();
  const entries = quickEntries(fields.value, { trial, at, newId, bare: bareUnits.value, title, openedOn: at });
  return { trial, title, typed: typed.value, entries };
}

/** `2 AWG OFC, 25 November 2026, 10:58`: what tells one kept cable from the next of the same label. */
function titleFor(label: string, now: Date): string {
  const day = now.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  const time = now.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  return `${label.trim() || 'One cable'}, ${day}, ${time}`;
}

function isKept(kept: unknown): kept is Kept {
  if (typeof kept !== 'object' || kept === null) return false;
  return ['trial', 'title', 'typed'].every((name) => typeof (kept as Record<string, unknown>)[name] === 'string');
}
