import type { Note, Trial } from '../../trial/trial.ts';

/** Notes with a photo about a cable, a piece of it or a reading on it, in the order in which they were said. */
export function photosOfCable(trial: Pick<Trial, 'notes' | 'specimens' | 'readings'>, cable: string): Note[] {
  const isOfCable = ({ about, which }: Note) =>
    (about === 'cable' && which === cable) ||
    (about === 'specimen' && trial.specimens.some((s) => s.specimen === which && s.cable === cable)) ||
    (about === 'reading' && trial.readings.some((r) => r.reading === which && r.cable === cable));
  return trial.notes.filter((note) => note.photo !== '' && isOfCable(note));
}
