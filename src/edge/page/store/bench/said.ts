/** Tells that a reading is kept: for those who hear the page, and, where it is wanted, by voice and a short tone. */
import { signal } from '@preact/signals';
import { isBoolean, keptSignal } from '../kept.ts';

/** What is announced. Changes even when the same words are said twice. */
export const announced = signal<{ text: string; number: number }>({ text: '', number: 0 });

export const beeps = keptSignal('cupel.bench.beeps', false, isBoolean);
export const speaks = keptSignal('cupel.bench.speaks', false, isBoolean);

/** Pitch and length of the tone, Hz and s: short, and above the noise of a workshop. Ours. */
const TONE = { pitch: 1320, length: 0.09, loudness: 0.2 };

let sound: AudioContext | null = null;

export function announce(text: string, { kept = false } = {}): void {
  announced.value = { text, number: announced.value.number + 1 };
  if (kept && beeps.value) beep();
  if (speaks.value && 'speechSynthesis' in globalThis) {
    speechSynthesis.cancel();
    speechSynthesis.speak(new SpeechSynthesisUtterance(text));
  }
}

function beep(): void {
  try {
    sound ??= new AudioContext();
    const tone = new OscillatorNode(sound, { frequency: TONE.pitch });
    tone.connect(new GainNode(sound, { gain: TONE.loudness })).connect(sound.destination);
    tone.start();
    tone.stop(sound.currentTime + TONE.length);
  } catch {
    // A browser without sound still keeps the reading.
  }
}
