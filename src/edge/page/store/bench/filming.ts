/** The filming clock: where in the recording a reading stands. Off until somebody starts it. */
import { computed, signal } from '@preact/signals';
import { isTexts, keptSignal } from '../kept.ts';

/** `take`, `footage` (its name) and `since` (when the camera began); `since` is blank while nothing is filmed. */
const kept = keptSignal<Record<string, string>>('cupel.bench.filming', {}, isTexts);

/** Where the reading in hand stands in a recording that is watched again, as typed; empty at the bench itself. */
export const timecodeTyped = signal('');

export const filming = computed(() => (kept.value.since ?? '') !== '');
export const take = computed(() => Number(kept.value.take ?? '0') || 0);
export const footage = computed(() => kept.value.footage ?? '');

export function nameFootage(name: string): void {
  kept.value = { ...kept.value, footage: name };
}

/** The camera runs: a new take begins. */
export function cameraRuns(): void {
  const number = take.value + 1;
  kept.value = { take: String(number), footage: footage.value || `take ${number}`, since: new Date().toISOString() };
}

export function cameraStopped(): void {
  kept.value = { take: String(take.value), footage: '', since: '' };
}

/** Columns of a reading or a note: which recording, and where in it. Nothing while nothing is filmed or watched. */
export function inFootage(now: number): Record<string, string> {
  if (timecodeTyped.value.trim() !== '') return { footage: footage.value, timecode: timecodeTyped.value.trim() };
  if (!filming.value) return {};
  return { footage: footage.value, timecode: timecodeOf(now - Date.parse(kept.value.since!)) };
}

/** `1:02:31`, or `12:31` within the first hour. */
export function timecodeOf(milliseconds: number): string {
  const seconds = Math.max(0, Math.floor(milliseconds / 1000));
  const two = (value: number) => String(value).padStart(2, '0');
  const [h, m, s] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${two(m)}:${two(s)}`;
}
