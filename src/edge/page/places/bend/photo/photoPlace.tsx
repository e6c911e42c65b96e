import { useEffect, useState } from 'preact/hooks';
import type { Note, Trial } from '../../../../../trial/trial.ts';
import { Trouble } from '../../../parts/trouble.tsx';
import { pieceWords } from '../../../store/bench/names.ts';
import { pieceOf } from '../../../store/bend/droopPhotos.ts';
import { bendRoute } from '../../../store/bend/openInBend.ts';
import { beginMarking } from '../../../store/bend/photoMarks.ts';
import { type PictureFound, pictureOf } from '../../../store/bend/photoPicture.ts';
import { folded, held } from '../../../store/journal/journal.ts';
import { addressOf } from '../../../store/routeOf.ts';
import { Announcer } from '../../bench/announcer.tsx';
import { MarkedPhoto } from './markedPhoto.tsx';
import { MarkList } from './markList.tsx';
import { PhotoOutcome } from './photoOutcome.tsx';

/** The droop in one photo: four spots marked, and what follows from them. */
export function PhotoPlace({ trial, note: name }: { trial: string; note: string }) {
  const now = folded.value?.trial === trial ? folded.value : null;
  useEffect(() => beginMarking(), [trial, name]);
  const note = now?.notes.find((each) => each.note === name) ?? null;
  const piece = note === null || now === null ? null : pieceOf(note, now);
  if (now === null)
    return (
      <Plain words={held.value?.asked === true ? 'Nothing of this trial is on record yet.' : 'Reading the trial.'} />
    );
  if (now.blinding.blind)
    return <Plain words="Photos are put by while the trial goes by codes: they show the jacket." />;
  if (note === null || note.photo === '' || piece === null)
    return <Plain words="No photo of a piece goes by this address." />;
  return (
    <div class="photo-place">
      <h1>
        The droop of <bdi dir="auto">{pieceWords(now, piece)}</bdi> in its photo
      </h1>
      <Photographed trial={now} note={note} piece={piece} />
      <p>
        <a href={addressOf(bendRoute(trial, { what: 'cable', cable: cableOf(now, piece) }))}>Back to its sheet</a>
      </p>
      <Announcer />
    </div>
  );
}

const cableOf = (trial: Trial, piece: string) => trial.specimens.find((each) => each.specimen === piece)?.cable ?? '';

function Plain({ words }: { words: string }) {
  return (
    <>
      <h1>The droop in a photo</h1>
      <p>{words}</p>
    </>
  );
}

function Photographed({ trial, note, piece }: { trial: Trial; note: Note; piece: string }) {
  const [picture, setPicture] = useState<PictureFound | null>(null);
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  useEffect(() => {
    let url = '';
    let gone = false;
    void pictureOf(trial.trial, note.photo).then(async (found) => {
      if (found.ok) url = found.url;
      if (gone && found.ok) return URL.revokeObjectURL(url);
      if (found.ok) {
        const measured = await sizeOf(found.url);
        if (gone) return;
        if (measured === null)
          return setPicture({ ok: false, sentence: 'This browser cannot show the photo’s format.' });
        setSize(measured);
      }
      setPicture(found);
    });
    return () => {
      gone = true;
      if (url !== '') URL.revokeObjectURL(url);
    };
  }, [trial.trial, note.photo]);
  if (picture === null) return <p>Fetching the photo.</p>;
  if (!picture.ok) return <Trouble>{picture.sentence}</Trouble>;
  if (size === null) return null;
  return (
    <div class="photo-parts">
      <MarkedPhoto url={picture.url} size={size} />
      <div>
        <MarkList size={size} url={picture.url} />
        <PhotoOutcome note={note} piece={piece} />
      </div>
    </div>
  );
}

/** Width and height of a picture, px; null when the browser cannot read it. */
function sizeOf(url: string): Promise<{ width: number; height: number } | null> {
  return new Promise((settle) => {
    const image = new Image();
    image.onload = () => settle({ width: image.naturalWidth, height: image.naturalHeight });
    image.onerror = () => settle(null);
    image.src = url;
  });
}
