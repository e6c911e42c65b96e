/** Photos, small where they belong; touching one opens it large. */
import '../styles/photos.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Note } from '../../../trial/trial.ts';
import { type PictureFound, pictureOf } from '../store/bend/photoPicture.ts';
import { Dialog } from './dialog.tsx';

interface PhotosProps {
  trial: string;
  notes: readonly Note[];
}

/** The photos of these notes in a row, each with what it shows. */
export function Photos({ trial, notes }: PhotosProps) {
  return (
    <ul class="photo-row">
      {notes.map((note) => (
        <li key={note.note}>
          <Photo trial={trial} note={note} />
        </li>
      ))}
    </ul>
  );
}

/** What a photo shows, as far as somebody said it. */
export const photoWords = (note: Note) => [note.shot, note.text].filter((part) => part !== '').join(': ') || 'Photo';

/** A small photo with its words. */
export function Photo({ trial, note }: { trial: string; note: Note }) {
  const [open, setOpen] = useState(false);
  const [place, near] = useNear<HTMLButtonElement>();
  const small = usePicture(trial, near ? note.row.thumbnail?.trim() || note.photo : null);
  const words = photoWords(note);
  return (
    <>
      <button ref={place} type="button" class="photo" onClick={() => setOpen(true)}>
        <span class="photo-small">
          {small?.ok === true ? <img src={small.url} alt="" /> : <span>{small === null ? '' : 'not here'}</span>}
        </span>
        <bdi dir="auto">{words}</bdi>
        <span class="hidden">, open it large</span>
      </button>
      {open && <Large trial={trial} note={note} onClose={() => setOpen(false)} />}
    </>
  );
}

function Large({ trial, note, onClose }: { trial: string; note: Note; onClose: () => void }) {
  const picture = usePicture(trial, note.photo);
  const [unreadable, setUnreadable] = useState(false);
  return (
    <Dialog title={photoWords(note)} onClose={onClose}>
      {picture?.ok === false && <p>{picture.sentence}</p>}
      {unreadable && (
        <p>This browser cannot show photos of this kind. It is kept as it is, and goes out with the data.</p>
      )}
      {picture?.ok === true && !unreadable && (
        <img class="photo-large" src={picture.url} alt={photoWords(note)} onError={() => setUnreadable(true)} />
      )}
      {picture === null && <p role="status">Fetching the photo …</p>}
      <form method="dialog" class="buttons">
        <button type="submit" class="button">
          Close
        </button>
      </form>
    </Dialog>
  );
}

/** The picture of this name, let go of when it is no longer shown; null until it is there, or when none is wanted. */
function usePicture(trial: string, name: string | null): PictureFound | null {
  const [found, setFound] = useState<PictureFound | null>(null);
  useEffect(() => {
    if (name === null) return;
    let wanted = true;
    let url = '';
    void pictureOf(trial, name).then((picture) => {
      if (picture.ok) url = picture.url;
      if (wanted) setFound(picture);
      else if (url !== '') URL.revokeObjectURL(url);
    });
    return () => {
      wanted = false;
      if (url !== '') URL.revokeObjectURL(url);
    };
  }, [trial, name]);
  return found;
}

/** True from when the thing has come near the visible part of the page: what nobody looks at need not be fetched. */
function useNear<T extends Element>() {
  const place = useRef<T>(null);
  const [near, setNear] = useState(false);
  useEffect(() => {
    const watch = new IntersectionObserver(
      (seen) => {
        if (seen.some((one) => one.isIntersecting)) setNear(true);
      },
      { rootMargin: '300px' },
    );
    if (place.current !== null) watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  return [place, near] as const;
}
