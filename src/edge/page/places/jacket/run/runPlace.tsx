import { useEffect } from 'preact/hooks';
import type { Trial } from '../../../../../trial/trial.ts';
import { jacketRoute } from '../../../store/jacket/openInJacket.ts';
import { run } from '../../../store/jacket/running.ts';
import { folded, held } from '../../../store/journal/journal.ts';
import { addressOf } from '../../../store/routeOf.ts';
import { Announcer } from '../../bench/announcer.tsx';
import { ChooseTest } from './chooseTest.tsx';
import { Counting } from './counting.tsx';
import { runKeys } from './runKeys.ts';
import { SetUp } from './setUp.tsx';

/** One endurance test from what to build to what came of each piece. */
export function RunPlace({ trial }: { trial: string }) {
  const now = folded.value?.trial === trial ? folded.value : null;
  useEffect(() => {
    document.addEventListener('keydown', runKeys);
    return () => document.removeEventListener('keydown', runKeys);
  }, []);
  return (
    <div class="running">
      {now === null ? <Waiting /> : <Running trial={now} />}
      <Announcer />
    </div>
  );
}

function Waiting() {
  const here = held.value;
  return (
    <>
      <h1>Run a test</h1>
      <p>{here?.asked === true ? here.sentence || 'Nothing of this trial is on record yet.' : 'Reading the trial.'}</p>
    </>
  );
}

function Running({ trial }: { trial: Trial }) {
  const now = run.value;
  if (!trial.specimens.some((s) => s.kind === 'abuse')) return <NoPieces trial={trial.trial} />;
  if (now === null) return <ChooseTest trial={trial} />;
  return now.begun ? <Counting trial={trial} run={now} /> : <SetUp run={now} />;
}

function NoPieces({ trial }: { trial: string }) {
  return (
    <>
      <h1>No piece to abuse is on record.</h1>
      <p>
        A test uses up its pieces: three of each cable are the least that say anything, five are better. The plan says
        how long to cut them and gives each a code for its tag.
      </p>
      <div class="buttons">
        <a class="button main" href={addressOf({ place: 'plan', trial, sheet: null })}>
          To the plan
        </a>
        <a class="button" href={addressOf(jacketRoute(trial, { what: 'nothing' }))}>
          What is known of the jackets
        </a>
      </div>
    </>
  );
}
