/** Photos in which the droop of a piece can be marked. */
import type { Note, Trial } from '../../../../trial/trial.ts';

/** The piece that a note is about: itself, or that of its reading. */
export function pieceOf(note: Note, trial: Trial): string | null {
  if (note.about === 'specimen') return note.which;
  if (note.about !== 'reading') return null;
  return trial.readings.find((reading) => reading.reading === note.which)?.specimen ?? null;
}

/** A photo that says nothing of what it shows may show a droop, unless its piece lies in parts. */
const MAY_SHOW_A_DROOP: ReadonlySet<string> = new Set(['', 'other']);

/** Photos that show a droop of a piece of these cables, or may, those that say so first. */
export function droopPhotos(trial: Trial, cables: readonly string[]): Note[] {
  const pieces = trial.specimens.filter(({ cable }) => cables.includes(cable));
  const shows = (note: Note): boolean => {
    const piece = pieces.find(({ specimen }) => specimen === pieceOf(note, trial));
    if (note.photo === '' || piece === undefined) return false;
    return note.shot === 'droop' || (MAY_SHOW_A_DROOP.has(note.shot) && piece.kind !== 'apart');
  };
  const all = trial.notes.filter(shows);
  return [...all.filter(({ shot }) => shot === 'droop'), ...all.filter(({ shot }) => shot !== 'droop')];
}
