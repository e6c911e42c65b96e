import { useState } from 'preact/hooks';
import { bendActOf } from '../../../../findings/bench/bendSets.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { SHOTS } from '../../../../journal/kinds/note.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { pieceWords, signOf, valueWords } from '../../store/bench/names.ts';
import { type About, addPhoto, writeNote } from '../../store/bench/remarks.ts';
import { DialogForm } from './dialogForm.tsx';

/** A note or a photo, about the piece, its last reading, its cable or the whole trial. */
export function NoteDialog({ trial, act, photo }: { trial: Trial; act: BenchAct; photo: boolean }) {
  const subjects = subjectsOf(trial, act);
  const [subject, setSubject] = useState(0);
  const [text, setText] = useState('');
  const [file, setFile] = useState<File | null>(null);
  const [shot, setShot] = useState(isDroop(act) ? DROOP : '');
  const name = (what: string) => {
    setShot(what);
    // A droop is marked for a piece: a photo of the cable at large has none.
    if (what === DROOP) setSubject(0);
  };
  const keep = async () => {
    const about = subjects[subject]!.about;
    if (photo) {
      if (file === null) return 'Found no photo; take or choose one first.';
      await addPhoto(about, file, shot, text.trim());
    } else {
      if (text.trim() === '') return 'Found no words; write what you saw.';
      await writeNote(about, text.trim());
    }
    return null;
  };
  return (
    <DialogForm
      title={photo ? 'Add a photo' : 'Write a note'}
      act={photo ? 'Keep the photo' : 'Keep the note'}
      onAct={keep}
    >
      {photo && (
        <p class="written">
          <label for="note-photo">The photo</label>
          <input
            id="note-photo"
            type="file"
            accept="image/*"
            capture="environment"
            onChange={(event) => setFile(event.currentTarget.files?.[0] ?? null)}
          />
        </p>
      )}
      {photo && (
        <p class="written">
          <label for="note-shot">What it shows</label>
          <select id="note-shot" value={shot} onChange={(event) => name(event.currentTarget.value)}>
            <option value="">nothing in particular</option>
            <optgroup label="the cable">{SHOTS.cable.map(shotOption)}</optgroup>
            <optgroup label="proof">{SHOTS.proof.map(shotOption)}</optgroup>
            {SHOTS.other.map(shotOption)}
          </select>
        </p>
      )}
      <p class="written">
        <label for="note-about">What it is about</label>
        <select
          id="note-about"
          value={String(subject)}
          onChange={(event) => setSubject(Number(event.currentTarget.value))}
        >
          {subjects.map(({ words }, place) => (
            <option key={words} value={String(place)}>
              {words}
            </option>
          ))}
        </select>
      </p>
      <p class="written">
        <label for="note-text">{photo ? 'Words to it, if any' : 'What you saw'}</label>
        <textarea
          id="note-text"
          rows={4}
          autofocus={!photo}
          maxLength={5000}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </p>
    </DialogForm>
  );
}

const DROOP = 'droop';
/** True while a droop is being read: the photo is of it, most likely. */
const isDroop = ({ item }: BenchAct) => bendActOf(item.quantity) === 'droop';

const shotOption = (shot: string) => (
  <option key={shot} value={shot}>
    {shot}
  </option>
);

function subjectsOf(trial: Trial, { item }: BenchAct): { words: string; about: About }[] {
  const last = trial.readings.findLast((each) => each.specimen === item.specimen && each.quantity === item.quantity);
  const cable = trial.blinding.blind
    ? `the cable ${signOf(trial, item.specimen)}`
    : `the cable ${trial.cables.find((each) => each.cable === item.cable)?.name ?? item.cable}`;
  return [
    { words: `the piece ${pieceWords(trial, item.specimen)}`, about: { about: 'specimen', which: item.specimen } },
    ...(last === undefined
      ? []
      : [
          {
            words: `the last reading on it, ${valueWords(last.row.value ?? '', last.row.unit ?? '')}`,
            about: { about: 'reading' as const, which: last.reading },
          },
        ]),
    { words: cable, about: { about: 'cable', which: item.cable } },
    { words: 'the whole trial', about: { about: 'trial', which: '' } },
  ];
}
