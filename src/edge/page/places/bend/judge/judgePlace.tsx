import { useEffect } from 'preact/hooks';
import { andList } from '../../../../../report/words/andList.ts';
import type { Trial } from '../../../../../trial/trial.ts';
import { Mind } from '../../../parts/mind.tsx';
import { Trouble } from '../../../parts/trouble.tsx';
import { judgedSoFar, piecesToJudge } from '../../../store/bend/judgedPieces.ts';
import {
  beginJudging,
  blindedHow,
  judgeName,
  judgeTrouble,
  pairInHand,
  takeNextPair,
} from '../../../store/bend/judging.ts';
import { bendRoute } from '../../../store/bend/openInBend.ts';
import { folded, held } from '../../../store/journal/journal.ts';
import { addressOf } from '../../../store/routeOf.ts';
import { Announcer } from '../../bench/announcer.tsx';
import { Answers } from './answers.tsx';
import { ChoosePair } from './choosePair.tsx';
import { judgeKeys } from './judgeKeys.ts';
import { JudgeProgress } from './judgeProgress.tsx';
import { JudgeSettings } from './judgeSettings.tsx';
import { PairShown } from './pairShown.tsx';

/** Two pieces at a time, and which of them bends more easily. */
export function JudgePlace({ trial }: { trial: string }) {
  const now = folded.value?.trial === trial ? folded.value : null;
  const ready = now !== null;
  const who = judgeName.value;
  useEffect(() => beginJudging(), [trial]);
  useEffect(() => {
    if (ready) takeNextPair();
  }, [ready, who]);
  useEffect(() => {
    document.addEventListener('keydown', judgeKeys);
    return () => document.removeEventListener('keydown', judgeKeys);
  }, []);
  return (
    <div class="judging">
      {now === null ? <Waiting /> : <Judging trial={now} />}
      <Announcer />
    </div>
  );
}

function Waiting() {
  const here = held.value;
  return (
    <>
      <h1>Judge pairs</h1>
      <p>{here?.asked === true ? here.sentence || 'Nothing of this trial is on record yet.' : 'Reading the trial.'}</p>
    </>
  );
}

function Judging({ trial }: { trial: Trial }) {
  const { pieces, without } = piecesToJudge(trial);
  if (pieces.length < 2) return <TooFew trial={trial} count={pieces.length} />;
  const pair = pairInHand.value;
  const soFar = judgedSoFar(trial, pieces);
  return (
    <>
      <section class="judge-now" aria-label="The pair in hand">
        <JudgeProgress soFar={soFar} />
        {soFar.groups.length > 1 && soFar.done >= pieces.length && (
          <p class="note">
            No answer joins {groupsText(soFar.groups, named(trial))} yet, so nothing can be said across them: the next
            pair joins two.
          </p>
        )}
        {pair !== null && <PairShown trial={trial} pair={pair} />}
        <Trouble>{judgeTrouble.value}</Trouble>
        <Answers />
      </section>
      <aside class="judge-aside" aria-label="How it is judged">
        <Mind>
          a coiled cable whips back, so hold both ends and keep your face out of its path. Rest your wrists when they
          tire.
        </Mind>
        <JudgeSettings />
        <ChoosePair trial={trial} pieces={pieces} now={pair} key={pair === null ? '' : `${pair.left} ${pair.right}`} />
        {without.length > 0 && !trial.blinding.blind && (
          <p class="note">
            Without a piece to bend on record, and so left out: <bdi dir="auto">{without.join(', ')}</bdi>.
          </p>
        )}
        <p>
          <a href={addressOf(bendRoute(trial.trial, { what: 'nothing' }))}>What the judgements say so far</a>
        </p>
      </aside>
    </>
  );
}

/** Names may be shown where nobody is kept from knowing. */
const named = (trial: Trial) => !trial.blinding.blind && blindedHow.value === 'open';

/** Groups by name; by their number alone where names are put by. */
const groupsText = (groups: readonly (readonly string[])[], open: boolean): string =>
  open ? groups.map((group) => andList(group)).join(' with ') : `the ${groups.length} groups of pieces judged so far`;

function TooFew({ trial, count }: { trial: Trial; count: number }) {
  return (
    <>
      <h1>Judging takes pieces of two cables.</h1>
      <p>
        {count === 0 ? 'No piece to bend is' : 'Only one piece to bend is'} on record. The plan says how long to cut
        them and gives each a code for its tag.
      </p>
      <a class="button main" href={addressOf({ place: 'plan', trial: trial.trial, sheet: null })}>
        To the plan
      </a>
    </>
  );
}
