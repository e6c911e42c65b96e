/** This device: its own name, who records on it, and the ids that it gives to entries. */
import { signal } from '@preact/signals';
import type { Entry } from '../../../../journal/entry.ts';
import { type IdState, NO_ID_YET, newId, RANDOM_BYTES, seenId } from '../../../../journal/newId.ts';

const DEVICE = 'cupel.device';
const RECORDER = 'cupel.recorder';

let lastId: IdState = NO_ID_YET;

/** The next id. Comes after every id that this page has made or seen. */
export function nextId(): string {
  // `crypto.randomUUID` is missing on a page that came over plain http from another computer; this is not.
  const made = newId(lastId, Date.now(), crypto.getRandomValues(new Uint8Array(RANDOM_BYTES)));
  lastId = made.state;
  return made.id;
}

/** Notes ids of entries that came from elsewhere, so that a correction sorts after what it corrects. */
export function noteIds(entries: readonly Entry[]): void {
  const last = entries.at(-1);
  if (last !== undefined) lastId = seenId(lastId, last.id);
}

/** Who records; kept in this browser, and empty until somebody says it. */
export const recorder = signal(stored(RECORDER));

export function nameRecorder(name: string): void {
  recorder.value = name.slice(0, 100);
  keep(RECORDER, recorder.value);
}

/** A name for this browser that nothing else has: `phone 4f2a`, `browser 90c1`. Made once. */
export function deviceName(): string {
  const known = stored(DEVICE);
  if (known !== '') return known;
  const [a, b] = crypto.getRandomValues(new Uint8Array(2));
  const kind = matchMedia('(pointer: coarse)').matches ? 'phone' : 'browser';
  const name = `${kind} ${[a!, b!].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
  keep(DEVICE, name);
  return name;
}

/** Who an entry is said to be by: whoever records, else the device itself. */
export const recordedBy = (): string => recorder.peek().trim() || deviceName();

function stored(key: string): string {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
}

function keep(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // A browser that keeps nothing asks again next time.
  }
}
