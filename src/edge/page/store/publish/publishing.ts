/** What is looked at before it is published, and what became of the parts that were sealed. */
import { computed, signal } from '@preact/signals';
import type { Entry } from '../../../../journal/entry.ts';
import { PART_PLACES, type PartPlace } from '../../../../journal/kinds/seal.ts';
import { LICENCES } from '../../../../report/publish/licences.ts';
import type { DisplayUnits } from '../../../../units/display.ts';
import { Bench, Stopped } from '../../worker/bench.ts';
import type { PartChecked, PublishShown, PublishSubject } from '../../worker/jobs.ts';

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
export const checkedParts = signal<{ entries: readonly Entry[]; parts: PartChecked[] } | null>(null);
export const subject = signal<PublishSubject>({ part: null, places: PART_PLACES });
export const licenceId = signal(LICENCES[0]!.id);
export const licence = computed(() => LICENCES.find(({ id }) => id === licenceId.value) ?? LICENCES[0]!);

const showing = new Bench();
const checking = new Bench();

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

/** Computes every sealed part again. */
export async function checkParts(entries: readonly Entry[]): Promise<void> {
  if (checkedParts.peek()?.entries === entries) return;
  checking.stop();
  try {
    checkedParts.value = { entries, parts: await checking.ask('parts', { entries }) };
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
  }
}

/** Lets go of the workers and of what they found. */
export function leavePublish(): void {
  showing.stop();
  checking.stop();
  publishing.value = null;
  checkedParts.value = null;
  subject.value = { part: null, places: PART_PLACES };
}

export const sentenceOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
