import type { Note, Trial } from '../../../../trial/trial.ts';
import { Photo } from '../../parts/photos.tsx';
import type { Assay } from '../../store/assay.ts';
import { pieceDetail } from '../../store/bench/names.ts';
import { droopPhotos, pieceOf } from '../../store/bend/droopPhotos.ts';
import { bendRoute } from '../../store/bend/openInBend.ts';
import { folded } from '../../store/journal/journal.ts';
import { addressOf } from '../../store/routeOf.ts';

/** The photos of a cable's pieces, each with the way to mark the droop in it. */
export function PhotosOfPiece({ now, cable }: { now: Assay; cable: string }) {
  const trial = folded.value;
  if (trial === null) return null;
  if (now.blind === true)
    return <p class="note">Photos are put by while the trial goes by codes: they show the jacket.</p>;
  const photos = droopPhotos(trial, [cable]);
  return (
    <div class="photos">
      <h4>Photos of it drooping</h4>
      {photos.length === 0 ? (
        <p class="note">
          None. Take one at the bench, square on, with a rule in the plane of the piece, and say that it shows a droop:
          it can be marked here.
        </p>
      ) : (
        <PhotosToMark trial={trial} photos={photos} />
      )}
    </div>
  );
}

/** Photos of cables of which no bending was read yet: marked, they give the first droop. */
export function PhotosWithoutSheet({ trial: id, sheets }: { trial: string; sheets: readonly string[] }) {
  const trial = folded.value;
  if (trial?.trial !== id || trial.blinding.blind) return null;
  const cables = trial.cables.map(({ cable }) => cable).filter((cable) => !sheets.includes(cable));
  const photos = droopPhotos(trial, cables);
  if (!photos.some(({ shot }) => shot === 'droop')) return null;
  return (
    <section class="photos droop-photos">
      <h2>Droops in photos, not marked yet</h2>
      <PhotosToMark trial={trial} photos={photos} />
    </section>
  );
}

function PhotosToMark({ trial, photos }: { trial: Trial; photos: readonly Note[] }) {
  return (
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
  );
}
