import { earlierSentence } from '../../../../../findings/bench/earlierOutcomes.ts';
import { mindLine } from '../../../../../methods/jacket/protocols/mindLine.ts';
import type { Trial } from '../../../../../trial/trial.ts';
import { capital } from '../../../../../units/capital.ts';
import { Mind } from '../../../parts/mind.tsx';
import { Trouble } from '../../../parts/trouble.tsx';
import { pieceDetail, signOf } from '../../../store/bench/names.ts';
import { jacketRoute } from '../../../store/jacket/openInJacket.ts';
import {
  chooseTest,
  earlier,
  earlierWasSlip,
  pieces,
  protocolNow,
  runTrouble,
  setUp,
} from '../../../store/jacket/running.ts';
import type { Run } from '../../../store/jacket/runState.ts';
import { handheld } from '../../../store/media.ts';
import { addressOf } from '../../../store/routeOf.ts';
import { BeforeAfter } from './beforeAfter.tsx';
import { ChoosePiece } from './choosePiece.tsx';
import { Counter } from './counter.tsx';
import { Outcomes } from './outcomes.tsx';
import { Steps } from './steps.tsx';

/** Signs longer than this are set smaller. */
const SHORT = 3;

/** The piece in hand, how far it has come, and what came of it. Nothing else is asked. */
export function Counting({ trial, run }: { trial: Trial; run: Run }) {
  const now = pieces.value;
  const protocol = protocolNow.value;
  if (now === null) return null;
  const { inHand, next, all, left, done } = now;
  return (
    <div class="run-columns">
      <section class="run-now" aria-label="The piece in hand">
        <h1 class="run-head">
          <bdi dir="auto">{capital(run.test)}</bdi>{' '}
          <span>
            {conditions(run)}
            {done} of {all.length} pieces done
          </span>
        </h1>
        {inHand === null ? (
          <NoneLeft trial={trial.trial} done={done} />
        ) : (
          <>
            <div class="run-piece">
              <bdi class={signOf(trial, inHand.specimen).length > SHORT ? 'sign long' : 'sign'} dir="auto">
                {signOf(trial, inHand.specimen)}
              </bdi>
              <p>
                <bdi dir="auto">{pieceDetail(trial, inHand.specimen)}</bdi>.
                {earlier.value.length > 0 && <b> {earlierSentence(earlier.value)}</b>}
                {inHand.usedIn.length > 0 && <b> Its jacket was used before: {inHand.usedIn.join(', ')}.</b>}
              </p>
              {earlier.value.length > 0 && (
                <p>
                  <button type="button" class="button" onClick={() => void earlierWasSlip()}>
                    The earlier one was a slip
                  </button>
                </p>
              )}
            </div>
            <Mind look="mind">{mindLine(run.test)}</Mind>
            <Counter run={run} />
          </>
        )}
        <Trouble>{runTrouble.value}</Trouble>
        <Outcomes run={run} none={inHand === null} />
        {inHand !== null && run.way === 'once' && run.unit === 'h' && (
          <BeforeAfter trial={trial} specimen={inHand.specimen} test={run.test} />
        )}
        {next !== null && inHand !== null && (
          <p class="note">
            Then <bdi dir="auto">{signOf(trial, next.specimen)}</bdi>; {left.length}{' '}
            {left.length === 1 ? 'piece' : 'pieces'} left, in mixed order.
          </p>
        )}
      </section>
      <aside class="run-aside" aria-label="How it is done">
        {!handheld.value && <KeyWords run={run} />}
        {protocol !== null && (
          <details open={!handheld.value}>
            <summary>Steps and cautions</summary>
            <Steps protocol={protocol} />
          </details>
        )}
        <ChoosePiece trial={trial} all={all} inHand={inHand?.specimen ?? ''} />
        <div class="buttons">
          <button type="button" class="button" onClick={() => setUp({ begun: false })}>
            Change the set-up
          </button>
          <button type="button" class="button" onClick={() => chooseTest('none')}>
            Another test
          </button>
        </div>
        <p>
          <a href={addressOf(jacketRoute(trial.trial, { what: 'nothing' }))}>What the tests say so far</a>
        </p>
      </aside>
    </div>
  );
}

function conditions({ stress, stressUnit, every, unit, way }: Run): string {
  const load = stress.trim() === '' ? '' : `${stress.trim()} ${stressUnit === 'C' ? '°C' : stressUnit}, `;
  const looks = every.trim() === '' || way !== 'strokes' ? '' : `looked at every ${every.trim()} ${unit}, `;
  return `${load}${looks}`;
}

function NoneLeft({ trial, done }: { trial: string; done: number }) {
  return (
    <p class="none-left">
      {done > 0 ? 'Every fresh piece is through this test.' : 'No fresh piece is left: all were used in other tests.'}{' '}
      Choose a piece by hand, or see <a href={addressOf(jacketRoute(trial, { what: 'nothing' }))}>what the tests say</a>
      .
    </p>
  );
}

function KeyWords({ run }: { run: Run }) {
  return (
    <dl class="keys">
      <dt>Enter, space or a foot pedal</dt>
      <dd>{run.way === 'strokes' ? 'one more' : 'start or stop the clock'}</dd>
      {run.way === 'strokes' && (
        <>
          <dt>T</dt>
          <dd>ten more</dd>
          <dt>U or Backspace</dt>
          <dd>one tap back</dd>
        </>
      )}
      <dt>F</dt>
      <dd>failed</dd>
      <dt>S</dt>
      <dd>survived</dd>
    </dl>
  );
}
