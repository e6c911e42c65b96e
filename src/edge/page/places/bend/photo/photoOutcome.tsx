import { useState } from 'preact/hooks';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import type { Note } from '../../../../../trial/trial.ts';
import { Switch } from '../../../parts/switch.tsx';
import { Trouble } from '../../../parts/trouble.tsx';
import { keepPhotoReadings } from '../../../store/bend/keepPhotoReadings.ts';
import {
  apart,
  apartTyped,
  faceUp,
  inPhoto,
  overhang,
  overhangTyped,
  photoReading,
  ruleIsLevel,
} from '../../../store/bend/photoMarks.ts';
import { sentenceOf } from '../../../store/sentenceOf.ts';

/** What is typed with the marks, what follows, and the offer to keep it. */
export function PhotoOutcome({ note, piece }: { note: Note; piece: string }) {
  return (
    <div class="photo-outcome">
      <Length
        id="photo-apart"
        label="The known distance"
        example="300 mm, or 12 in"
        value={apartTyped.value}
        wrong={apartTyped.value.trim() !== '' && apart.value === null}
        onType={(text) => {
          apartTyped.value = text;
        }}
      />
      <label class="turn-on">
        <input
          type="checkbox"
          checked={ruleIsLevel.value}
          onChange={(event) => {
            ruleIsLevel.value = event.currentTarget.checked;
          }}
        />
        It lies level, even if the camera did not
      </label>
      <Length
        id="photo-overhang"
        label="What hangs free, along the cable"
        example="320 mm"
        value={overhangTyped.value}
        wrong={overhangTyped.value.trim() !== '' && overhang.value === null}
        onType={(text) => {
          overhangTyped.value = text;
        }}
      />
      <p>
        <Switch
          legend="Which way up the piece lies"
          choices={[
            ['up', 'as laid', 'as laid'],
            ['down', 'turned over', 'turned over'],
          ]}
          value={faceUp.value}
          onChoose={(next) => {
            faceUp.value = next;
          }}
        />
      </p>
      <Outcome note={note} piece={piece} />
    </div>
  );
}

interface LengthProps {
  id: string;
  label: string;
  example: string;
  value: string;
  wrong: boolean;
  onType: (text: string) => void;
}

function Length({ id, label, example, value, wrong, onType }: LengthProps) {
  return (
    <p class="written">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        placeholder={example}
        value={value}
        aria-invalid={wrong ? 'true' : undefined}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {wrong && (
        <span id={`${id}-wrong`} class="trouble">
          Found “{value.trim()}”; expected a length such as {example}.
        </span>
      )}
    </p>
  );
}

function Outcome({ note, piece }: { note: Note; piece: string }) {
  const [said, setSaid] = useState<{ text: string; kept: string } | null>(null);
  const read = photoReading.value;
  const found = inPhoto.value;
  if (found === null) return <p class="note">Set all four marks and type the known distance: the drop follows.</p>;
  const mm = (metres: number, decimals = 0) => (metres * 1000).toFixed(decimals).replace('-', '−');
  const state = `${mm(found.drop, 1)} ${overhangTyped.value} ${faceUp.value}`;
  const keep = async () => {
    const text = await keepPhotoReadings(piece, note.note, note.at, read!).then(
      () => 'Kept as readings. Turn the piece over for a second photo, and its own set drops out.',
      (error: unknown) => `Not kept. ${sentenceOf(error)}`,
    );
    setSaid({ text, kept: state });
  };
  return (
    <>
      <p class="photo-found" role="status">
        {noBreak(
          `Drop ${mm(found.drop, 1)}${read === null ? '' : ` ± ${mm(2 * read.doubt, 1)}`} mm, ${mm(found.reach)} mm out from the clamp, ${mm(found.chord)} mm in a straight line.`,
        )}
      </p>
      {read === null && <p class="note">Type what hangs free, and the computed curve is drawn over the photo.</p>}
      <Trouble>{noBreak(read?.trouble ?? '')}</Trouble>
      {read !== null && read.lambda !== null && (
        <>
          <p class="note">
            The drawn curve is what a straight, even piece would do that hangs so deep. Where the cable leaves it, it
            has a curl of its own, or the marks are off.
          </p>
          <button type="button" class="button main" disabled={said?.kept === state} onClick={() => void keep()}>
            Keep these as readings
          </button>
        </>
      )}
      {said !== null && <p role="status">{said.text}</p>}
    </>
  );
}
