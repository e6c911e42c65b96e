/** What is looked at before it is published, and what became of the parts that were sealed. */
import { computed, signal } from '@preact/signals';
import type { Entry } from '../../../../journal/entry.ts';
import { PART_PLACES, type PartPlace } from '../../../../journal/kinds/seal.ts';
import { LICENCES } from '../../../../report/publish/licences.ts';
import type { DisplayUnits } from '../../../../units/display.ts';
import type { PartChecked } from '../../../publish/checkedParts.ts';
import { Bench, Stopped } from '../../worker/bench.ts';
import type { PublishShown, PublishSubject } from '../../worker/jobs.ts';
import { ask } from '../api.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { forgetSaid } from './lastSaid.ts';

export interface Publishing {
  trial: string;
  /** Null until it was computed for the first time. */
  shown: PublishShown | null;
  /** What stood in the way; empty when nothing does. */
  sentence: string;
  /** True while it is computed anew. */
  busy: boolean;
}

export const publishing = signal<Publishing | null>(null);
/** Every sealed part computed again; null until it was. */
export const checkedParts = signal<{ entries: readonly Entry[]; parts: PartChecked[]; sentence: string } | null>(null);
export const subject = signal<PublishSubject>({ part: null, places: PART_PLACES });
export const licenceId = signal(LICENCES[0]!.id);
export const licence = computed(() => LICENCES.find(({ id }) => id === licenceId.value) ?? LICENCES[0]!);

const showing = new Bench();

export function lookAtPart(part: string | null): void {
  subject.value = { ...subject.peek(), part };
}

/** Takes a place into the draft or out of it, in the order of the work. */
export function choosePlace(place: PartPlace, wanted: boolean): void {
  const { places } = subject.peek();
  subject.value = {
    part: null,
    places: PART_PLACES.filter((each) => (each === place ? wanted : places.includes(each))),
  };
}

/** Computes what the subject would publish; an answer that comes after another question is not heard. */
export async function show(trial: string, entries: readonly Entry[], units: DisplayUnits): Promise<void> {
  const asked = subject.peek();
  const before = publishing.peek();
  publishing.value = {
    trial,
    shown: before?.trial === trial ? before.shown : null,
    sentence: '',
    busy: true,
  };
  showing.stop();
  if (asked.part === null && asked.places.length === 0) {
    publishing.value = { trial, shown: null, sentence: 'Choose a place to show something.', busy: false };
    return;
  }
  try {
    const shown = await showing.ask('publish', { entries, subject: asked, licence: licence.peek(), units });
    publishing.value = { trial, shown, sentence: '', busy: false };
  } catch (error) {
    if (error instanceof Stopped) return;
    publishing.value = { trial, shown: null, sentence: sentenceOf(error), busy: false };
  }
}

/** Has the bench computer compute every sealed part again: its digits are those that the seal holds. */
export async function checkParts(trial: string, entries: readonly Entry[]): Promise<void> {
  if (checkedParts.peek()?.entries === entries) return;
  const answer = await ask<PartChecked[]>(`/api/parts?${new URLSearchParams({ trial })}`);
  if (publishing.peek()?.trial !== trial) return;
  checkedParts.value = answer.ok
    ? { entries, parts: answer.value, sentence: '' }
    : { entries: [], parts: checkedParts.peek()?.parts ?? [], sentence: answer.sentence };
}

/** Lets go of the worker and of what was found. */
export function leavePublish(): void {
  forgetSaid();
  showing.stop();
  publishing.value = null;
  checkedParts.value = null;
  subject.value = { part: null, places: PART_PLACES };
}
