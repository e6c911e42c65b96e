import '../../styles/history.css';
import { useEffect } from 'preact/hooks';
import { wholeText } from '../../../../units/wholeText.ts';
import { Frame } from '../../parts/frame.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { entries, folded, held, openJournal } from '../../store/journal/journal.ts';
import { Bare } from '../bench/bare.tsx';
import { CorrectionList } from './correctionList.tsx';
import { JournalView } from './journalView.tsx';
import { LookBack } from './lookBack.tsx';
import { ReadingLives } from './readingLives.tsx';

/** What was said, when, by whom and on what; every reading's life; and the trial as it stood at an earlier moment. */
export function History({ trial, at }: { trial: string; at: string | null }) {
  useEffect(() => {
    void openJournal(trial);
  }, [trial]);
  const now = folded.value;
  const title = now?.title || trial;
  return (
    <Frame
      title={`History, ${title}`}
      places={trialPlaces(trial, 'history')}
      trial={{ title, place: now?.place ?? '' }}
      compact
    >
      {now === null ? (
        <Bare trial={null} held={held.value} />
      ) : (
        <>
          <h1>{sentence(entries.value.length, at !== null)}</h1>
          <LookBack trial={now} entries={entries.value} at={at} />
          {at === null && (
            <>
              <CorrectionList trial={now} entries={entries.value} />
              <ReadingLives trial={now} entries={entries.value} />
              <JournalView trial={now} entries={entries.value} />
            </>
          )}
        </>
      )}
    </Frame>
  );
}

function sentence(count: number, back: boolean): string {
  if (back) return 'Looking back. Nothing is changed by it.';
  return count === 1
    ? 'One thing was said, and it stays.'
    : `${wholeText(count)} things were said, and all of them stay.`;
}
