/** The sound at the stop temperature: three tones that are heard over a workshop. It switches nothing off. */

/** Hz, s and loudness. Ours. */
const TONES = { pitch: 880, length: 0.5, apart: 0.7, count: 3, loudness: 0.5 };

let sound: AudioContext | null = null;

export function soundStop(): void {
  try {
    sound ??= new AudioContext();
    for (let i = 0; i < TONES.count; i++) {
      const tone = new OscillatorNode(sound, { type: 'square', frequency: TONES.pitch });
      tone.connect(new GainNode(sound, { gain: TONES.loudness })).connect(sound.destination);
      tone.start(sound.currentTime + i * TONES.apart);
      tone.stop(sound.currentTime + i * TONES.apart + TONES.length);
    }
  } catch {
    // A browser without sound still shows the stop.
  }
}
