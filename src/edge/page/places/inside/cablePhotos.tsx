import { photosOfCable } from '../../../../findings/plan/photosOfCable.ts';
import { Photos } from '../../parts/photos.tsx';
import { folded } from '../../store/journal/journal.ts';
import { route } from '../../store/route.ts';

/** The photos of a cable, its pieces and its readings; on a look back those that were there then. */
export function CablePhotos({ cable }: { cable: string }) {
  const trial = folded.value;
  const here = route.value;
  // A photo shows the jacket, so there is none while the trial goes by codes.
  if (trial === null || trial.blinding.blind) return null;
  const until = here.place === 'history' ? here.at : null;
  const notes = photosOfCable(trial, cable).filter(({ entry }) => until === null || entry <= until);
  if (notes.length === 0) return null;
  return (
    <section class="cable-photos">
      <h3>Photos</h3>
      <Photos trial={trial.trial} notes={notes} />
    </section>
  );
}
