import '../../styles/bend.css';
import '../../styles/jacket.css';
import '../../styles/jacketRun.css';
import { useEffect } from 'preact/hooks';
import { Frame } from '../../parts/frame.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { type Assay, assay, followTrial } from '../../store/assay.ts';
import { jacketOpened } from '../../store/jacket/jacketAddress.ts';
import { folded, openJournal } from '../../store/journal/journal.ts';
import { NothingToSay } from '../inside/nothingToSay.tsx';
import { Working } from '../inside/working.tsx';
import { Jackets } from './jackets.tsx';
import { NoJacketYet } from './noJacketYet.tsx';
import { RunPlace } from './run/runPlace.tsx';

/** What each jacket is, and what its pieces lasted. */
export function JacketPlace({ trial, opened }: { trial: string; opened: string | null }) {
  const open = jacketOpened(opened);
  if (open.what === 'run') return <Running trial={trial} />;
  return <Looking trial={trial} cable={open.what === 'cable' ? open.cable : null} />;
}

/** Where a test is run: the journal is followed, and nothing is computed. */
function Running({ trial }: { trial: string }) {
  useEffect(() => void openJournal(trial), [trial]);
  const now = folded.value?.trial === trial ? folded.value : null;
  const called = now?.title || trial;
  return (
    <Frame
      title={`Run a test, ${called}`}
      places={trialPlaces(trial, 'jacket')}
      trial={{ title: called, place: now?.place ?? '' }}
      compact
    >
      <RunPlace trial={trial} />
    </Frame>
  );
}

function Looking({ trial, cable }: { trial: string; cable: string | null }) {
  useEffect(() => followTrial(trial), [trial]);
  const now = assay.value?.trial === trial ? assay.value : null;
  const findings = now?.findings ?? null;
  useEffect(() => {
    if (findings !== null && scrollY === 0)
      document.querySelector('.jacket-open')?.scrollIntoView({ block: 'nearest' });
  }, [findings === null]);
  return (
    <Frame
      title={`Jacket, ${findings?.title || trial}`}
      places={trialPlaces(trial, 'jacket')}
      trial={now?.stage === 'failed' ? undefined : { title: findings?.title || trial, place: now?.place ?? '' }}
      units
      compact
    >
      {findings === null ? (
        <Waiting trial={trial} now={now} />
      ) : findings.jacket === null ? (
        <NoJacketYet trial={trial} />
      ) : (
        <Jackets trial={trial} findings={findings} jacket={findings.jacket} open={cable} />
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
