import { useId, useState } from 'preact/hooks';
import { photosNamed } from '../../../../report/package/photos.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { plainName, saveFile } from '../../store/publish/files.ts';
import { licence } from '../../store/publish/publishing.ts';
import { useSaid } from './useSaid.ts';

/** Rows and photos for whoever wants to compute it all again. */
export function DataPackage({ trial }: { trial: Trial }) {
  const id = useId();
  const [withPhotos, setWithPhotos] = useState(true);
  const [said, setSaid] = useSaid();
  const photos = photosNamed(trial);
  const save = async () => {
    setSaid('Packing …');
    const wanted = { trial: trial.trial, photos: withPhotos ? 'yes' : 'no', licence: licence.peek().id };
    setSaid(await saveFile(`/api/package?${new URLSearchParams(wanted)}`, `${plainName(trial.trial)}.zip`));
  };
  return (
    <section class="data-package" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Data</h2>
      <p>
        {`The whole trial as CSV files under ${licence.value.name}, with every sealed part that readers see in a folder of its own. Who has it can compute each part again, digit by digit.`}
      </p>
      {trial.blinding.blind && <p class="note">It holds the names, which are hidden here.</p>}
      {photos.length > 0 && (
        <div class="tick">
          <input
            type="checkbox"
            id={id}
            checked={withPhotos}
            onChange={(event) => setWithPhotos(event.currentTarget.checked)}
          />
          <label for={id}>With photos</label>
        </div>
      )}
      <div class="buttons">
        <button type="button" class="button" onClick={() => void save()}>
          Save the data package
        </button>
      </div>
      <p class="note" role="status">
        {said}
      </p>
    </section>
  );
}
