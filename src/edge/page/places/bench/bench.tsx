import '../../styles/bench.css';
import '../../styles/benchMore.css';
import '../../styles/benchSides.css';
import '../../styles/keypad.css';
import { useEffect } from 'preact/hooks';
import { Frame } from '../../parts/frame.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { clearField } from '../../store/bench/field.ts';
import { beginAnew, inHand } from '../../store/bench/inHand.ts';
import { followQuestions } from '../../store/bench/questions.ts';
import { forget } from '../../store/bench/record.ts';
import { takeUpPiece } from '../../store/bench/scanned.ts';
import { followAreas } from '../../store/bench/soFar.ts';
import { benchWork } from '../../store/bench/work.ts';
import { folded, held, openJournal } from '../../store/journal/journal.ts';
import { Announcer } from './announcer.tsx';
import { Bare } from './bare.tsx';
import { BenchDialogs } from './dialogs.tsx';
import { KeyList } from './keyList.tsx';
import { benchKeys } from './keys.ts';
import { Place } from './place.tsx';
import { Slate } from './slate.tsx';

interface BenchProps {
  trial: string;
  slate: boolean;
  /** Code or name of a piece to take up first, as the QR on its label says. */
  specimen?: string;
}

/** One reading at a time, in type that can be read at arm's length. */
export function Bench({ trial, slate, specimen = '' }: BenchProps) {
  useEffect(() => {
    beginAnew();
    clearField();
    forget(trial);
    void openJournal(trial);
    const stops = [followAreas(), followQuestions()];
    return () => {
      for (const stop of stops) stop();
    };
  }, [trial]);
  useEffect(() => {
    if (slate) return;
    document.addEventListener('keydown', benchKeys);
    return () => document.removeEventListener('keydown', benchKeys);
  }, [slate]);
  const now = folded.value;
  const there = now?.trial === trial && benchWork.value !== null;
  useEffect(() => {
    if (there && specimen !== '') takeUpPiece(specimen);
  }, [there, specimen]);
  if (slate && now !== null) return <Slate trial={now} />;
  const title = now?.title || trial;
  return (
    <Frame
      title={`Bench, ${title}`}
      places={trialPlaces(trial, 'bench')}
      trial={{ title, place: now?.place ?? '' }}
      compact
    >
      {now === null || benchWork.value === null || inHand.value === null ? (
        <Bare trial={now} held={held.value} />
      ) : (
        <Place trial={now} act={inHand.value} work={benchWork.value} />
      )}
      <KeyList />
      <BenchDialogs />
      <Announcer />
    </Frame>
  );
}
