import '../../styles/publish.css';
import { useEffect } from 'preact/hooks';
import type { Trial } from '../../../../trial/trial.ts';
import { numberWord, numberWordFirst } from '../../../../units/numberWords.ts';
import { Frame } from '../../parts/frame.tsx';
import { NothingToSay } from '../../parts/nothingToSay.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { Trouble } from '../../parts/trouble.tsx';
import { askWhoIAm, readsOnly } from '../../store/devices.ts';
import { entries, folded, held, openJournal } from '../../store/journal/journal.ts';
import { fetchFontsAhead } from '../../store/publish/pageFonts.ts';
import {
  checkedParts,
  checkParts,
  leavePublish,
  licenceId,
  publishing,
  show,
  subject,
} from '../../store/publish/publishing.ts';
import { units } from '../../store/units.ts';
import { BoxText } from './boxText.tsx';
import { Cards } from './cards.tsx';
import { DataPackage } from './dataPackage.tsx';
import { Film, GROUNDS } from './film.tsx';
import { Filming } from './filming.tsx';
import { Maker } from './maker.tsx';
import { Parts } from './parts.tsx';
import { Report } from './report.tsx';
import { WhatIsShown } from './whatIsShown.tsx';

/** What goes out to the world: parts that are sealed, and the report, cards, words and data of each. */
export function Publish({ trial, opened }: { trial: string; opened: string | null }) {
  const ground = GROUNDS.find((each) => each === opened);
  return ground === undefined ? <PublishPlace trial={trial} /> : <Film trial={trial} ground={ground} />;
}

function PublishPlace({ trial }: { trial: string }) {
  useEffect(() => {
    void openJournal(trial);
  }, [trial]);
  useEffect(() => leavePublish, [trial]);
  useEffect(() => {
    void askWhoIAm();
    fetchFontsAhead();
  }, []);
  const now = folded.value?.trial === trial ? folded.value : null;
  const title = now?.title || trial;
  const away = held.value?.trial === trial && held.value.asked && held.value.link === 'away';
  return (
    <Frame
      title={`Publish, ${title}`}
      places={trialPlaces(trial, 'publish')}
      trial={{ title, place: now?.place ?? '' }}
      units
      compact
    >
      {now !== null ? (
        <Published trial={now} />
      ) : away ? (
        <NothingToSay trial={trial} sentence={held.value?.sentence ?? ''} />
      ) : (
        <h1>Reading the trial.</h1>
      )}
    </Frame>
  );
}

function Published({ trial }: { trial: Trial }) {
  const journal = entries.value;
  const asked = subject.value;
  // Only what has reached the bench computer can be checked by it.
  const there = held.value?.outbox.unacknowledged.length === 0;
  useEffect(() => {
    if (there) void checkParts(trial.trial, journal);
  }, [journal, there]);
  useEffect(() => {
    void show(trial.trial, journal, units.value);
  }, [journal, asked, units.value, licenceId.value]);
  const now = publishing.value?.trial === trial.trial ? publishing.value : null;
  return (
    <>
      <h1 class="publish-sentence">{sentence(trial)}</h1>
      <Parts trial={trial} />
      <WhatIsShown trial={trial} />
      <Trouble>{now?.sentence ?? ''}</Trouble>
      {now?.shown == null ? (
        (now === null || now.busy) && (
          <p class="working" role="status">
            <progress aria-label="Making the preview" />
            Making the preview.
          </p>
        )
      ) : (
        <div class="published" aria-busy={now.busy}>
          <Report trial={trial.trial} shown={now.shown} />
          <Cards trial={trial.trial} shown={now.shown} />
          <BoxText shown={now.shown} parts={trial.parts} />
          <DataPackage trial={trial} />
          {!trial.blinding.blind && !readsOnly.value && <Maker trial={trial} shown={now.shown} />}
          <Filming trial={trial} />
        </div>
      )}
    </>
  );
}

function sentence({ parts }: Trial): string {
  if (parts.length === 0)
    return 'Nothing is sealed yet. Choose places, look at them as they will look, and seal them as a part.';
  const checked = checkedParts.value?.parts ?? [];
  const changed = checked.filter(({ changed: since }) => since !== null && since.changes.length > 0).length;
  const sealed =
    parts.length === 1 ? `Part ${parts[0]!.part} is sealed` : `${numberWordFirst(parts.length)} parts are sealed`;
  if (checked.length === 0) return `${sealed}.`;
  if (changed === 0) return `${sealed}; nothing of it would read otherwise today.`;
  if (parts.length === 1) return `${sealed}; it would read otherwise today.`;
  return `${sealed}; ${changed === 1 ? 'one of them would' : `${numberWord(changed)} of them would`} read otherwise today.`;
}
