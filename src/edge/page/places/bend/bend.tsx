import '../../styles/bend.css';
import '../../styles/judge.css';
import '../../styles/photoMarks.css';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { Frame } from '../../parts/frame.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { type Assay, assay, followTrial } from '../../store/assay.ts';
import { bendOpened } from '../../store/bend/bendAddress.ts';
import { folded, openJournal } from '../../store/journal/journal.ts';
import { NothingToSay } from '../inside/nothingToSay.tsx';
import { Working } from '../inside/working.tsx';
import { Bending } from './bending.tsx';
import { JudgePlace } from './judge/judgePlace.tsx';
import { NoBendingYet } from './noBendingYet.tsx';
import { PhotoPlace } from './photo/photoPlace.tsx';

/** How easily each cable bends: by the table's edge, by the scale, and by hand. */
export function Bend({ trial, opened }: { trial: string; opened: string | null }) {
  const open = bendOpened(opened);
  if (open.what === 'judge') return <Acting trial={trial} act={<JudgePlace trial={trial} />} title="Judge pairs" />;
  if (open.what === 'photo')
    return <Acting trial={trial} act={<PhotoPlace trial={trial} note={open.note} />} title="Droop in a photo" />;
  return <Looking trial={trial} cable={open.what === 'cable' ? open.cable : null} />;
}

/** Where something is recorded: the journal is followed, and nothing is computed. */
function Acting({ trial, act, title }: { trial: string; act: ComponentChildren; title: string }) {
  useEffect(() => void openJournal(trial), [trial]);
  const now = folded.value?.trial === trial ? folded.value : null;
  const called = now?.title || trial;
  return (
    <Frame
      title={`${title}, ${called}`}
      places={trialPlaces(trial, 'bend')}
      trial={{ title: called, place: now?.place ?? '' }}
      compact
    >
      {act}
    </Frame>
  );
}

function Looking({ trial, cable }: { trial: string; cable: string | null }) {
  useEffect(() => followTrial(trial), [trial]);
  const now = assay.value?.trial === trial ? assay.value : null;
  const findings = now?.findings ?? null;
  useEffect(() => {
    if (findings !== null && scrollY === 0) document.querySelector('.bend-open')?.scrollIntoView({ block: 'nearest' });
  }, [findings === null]);
  return (
    <Frame
      title={`Bend, ${findings?.title || trial}`}
      places={trialPlaces(trial, 'bend')}
      trial={now?.stage === 'failed' ? undefined : { title: findings?.title || trial, place: now?.place ?? '' }}
      units
      compact
    >
      {findings === null ? (
        <Waiting trial={trial} now={now} />
      ) : findings.flex === null ? (
        <NoBendingYet trial={trial} />
      ) : (
        <Bending now={now!} findings={findings} flex={findings.flex} open={cable} />
      )}
    </Frame>
  );
}

function Waiting({ trial, now }: { trial: string; now: Assay | null }) {
  if (now?.stage === 'failed') return <NothingToSay trial={trial} sentence={now.sentence} />;
  return (
    <>
      <h1>Reading the trial.</h1>
      {now !== null && <Working now={now} />}
    </>
  );
}
