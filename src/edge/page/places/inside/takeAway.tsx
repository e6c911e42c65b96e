import { useEffect, useState } from 'preact/hooks';
import { photosNamed, smallPhotos } from '../../../../report/package/photos.ts';
import type { Assay } from '../../store/assay.ts';
import { folded } from '../../store/journal/journal.ts';
import { sizeOfPhotos } from '../../store/photoBytes.ts';
import { addressOf } from '../../store/routeOf.ts';
import { savePackage } from '../../store/takeAway.ts';

/** The way out for the data: everything that was said, in files that anybody can read and compute again. */
export function TakeAway({ now }: { now: Assay }) {
  const [sentence, setSentence] = useState('');
  const [withPhotos, setWithPhotos] = useState(true);
  const trial = folded.value;
  const names = trial === null ? [] : photosNamed(trial);
  const count = trial === null ? 0 : names.length - smallPhotos(trial).size;
  const save = async () => {
    setSentence('Packing …');
    setSentence(await savePackage(now, withPhotos ? names : []));
  };
  return (
    <section class="take-away" aria-labelledby="take-away">
      <h2 id="take-away">Take it with you</h2>
      <p>
        All {now.entries.length} entries as CSV files with their description, for a spreadsheet, for another bench, or
        for whoever doubts a figure.
        {trial !== null && trial.parts.length > 0 && (
          <>
            {' '}
            Sealed parts come along from{' '}
            <a href={addressOf({ place: 'publish', trial: now.trial, opened: null })}>Publish</a>.
          </>
        )}
      </p>
      {names.length > 0 && (
        <div class="tick">
          <input
            type="checkbox"
            id="with-photos"
            checked={withPhotos}
            onChange={(event) => setWithPhotos(event.currentTarget.checked)}
          />
          <label for="with-photos">
            With <HowManyPhotos trial={now.trial} names={names} count={count} />
          </label>
        </div>
      )}
      <div class="buttons">
        <button type="button" class="button" onClick={() => void save()}>
          Save the data as .zip
        </button>
      </div>
      <p role="status">{sentence}</p>
    </section>
  );
}

/** `3 photos, 8.4 MB`; what cannot be had here is said. */
function HowManyPhotos({ trial, names, count }: { trial: string; names: readonly string[]; count: number }) {
  const [size, setSize] = useState<{ bytes: number; missing: number } | null>(null);
  const all = names.join(' ');
  useEffect(() => {
    let wanted = true;
    void sizeOfPhotos(trial, names).then((found) => wanted && setSize(found));
    return () => {
      wanted = false;
    };
  }, [trial, all]);
  const words = count === 1 ? 'the photo' : `the ${count} photos`;
  if (size === null) return <>{words}</>;
  const missing = size.missing === 0 ? '' : `; ${size.missing} not on the bench computer yet`;
  return <>{`${words}, ${sizeWords(size.bytes)}${missing}`}</>;
}

/** Bytes as people say them: `8.4 MB`, `312 kB`. */
function sizeWords(bytes: number): string {
  if (bytes >= 1e6) return `${(bytes / 1e6).toFixed(1)}\u00a0MB`;
  return `${Math.max(1, Math.round(bytes / 1000))}\u00a0kB`;
}
