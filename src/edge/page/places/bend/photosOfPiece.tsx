import type { Note } from '../../../../trial/trial.ts';
import { Photo } from '../../parts/photos.tsx';
import type { Assay } from '../../store/assay.ts';
import { pieceDetail } from '../../store/bench/names.ts';
import { bendRoute } from '../../store/bend/openInBend.ts';
import { folded } from '../../store/journal/journal.ts';
import { addressOf } from '../../store/routeOf.ts';

/** The photos of a cable's pieces, each with the way to mark the droop in it. */
export function PhotosOfPiece({ now, cable }: { now: Assay; cable: string }) {
  const trial = folded.value;
  if (trial === null) return null;
  if (now.blind === true)
    return <p class="note">Photos are put by while the trial goes by codes: they show the jacket.</p>;
  const pieces = trial.specimens.filter((piece) => piece.cable === cable && piece.kind !== 'apart');
  const photos = trial.notes.filter((note) => note.photo !== '' && isOf(note, pieces, trial));
  return (
    <div class="photos">
      <h4>Photos of it drooping</h4>
      {photos.length === 0 ? (
        <p class="note">
          None. Take one at the bench, square on, with a rule in the plane of the piece: the droop can be marked in it
          here.
        </p>
      ) : (
        <ul class="plain">
          {photos.map((note) => (
            <li key={note.note}>
              <Photo trial={trial.trial} note={note} />
              <a href={addressOf(bendRoute(trial.trial, { what: 'photo', note: note.note }))}>
                Mark the droop in the photo
              </a>{' '}
              <bdi class="note" dir="auto">
                {pieceDetail(trial, pieceOf(note, trial) ?? '')}
              </bdi>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

type Folded = NonNullable<typeof folded.value>;

/** The piece that a note is about: itself, or that of its reading. */
export function pieceOf(note: Note, trial: Folded): string | null {
  if (note.about === 'specimen') return note.which;
  if (note.about !== 'reading') return null;
  return trial.readings.find((reading) => reading.reading === note.which)?.specimen ?? null;
}

const isOf = (note: Note, pieces: Folded['specimens'], trial: Folded) => {
  const piece = pieceOf(note, trial);
  return piece !== null && pieces.some(({ specimen }) => specimen === piece);
};
