import { answerHours, hoursAsked, keepOutcome, lastTested, takeBackOutcome } from '../../../store/jacket/running.ts';
import { clockAmount, type Run } from '../../../store/jacket/runState.ts';
import { handheld } from '../../../store/media.ts';

/** What came of the piece, and the way back. */
export function Outcomes({ run, none }: { run: Run; none: boolean }) {
  const last = lastTested.value;
  const keys = !handheld.value && run.way !== 'typed';
  const [failed, survived] = run.way === 'once' ? ['It cracked', 'It came through'] : ['Copper shows', 'It survived'];
  return (
    <div class="run-acts">
      {!none && (
        <fieldset class="outcomes">
          <legend class="hidden">What came of the piece</legend>
          <button
            type="button"
            class="button"
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => void keepOutcome('failed')}
          >
            {failed} {keys && <span class="key-hint">F</span>}
          </button>
          <button
            type="button"
            class="button"
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => void keepOutcome('survived')}
          >
            {survived} {keys && <span class="key-hint">S</span>}
          </button>
        </fieldset>
      )}
      {!none && hoursAsked.value !== null && <HoursQuestion run={run} />}
      <div class="tested-last">
        {last === null ? (
          <p class="note">
            {run.way === 'strokes' ? 'The count is kept on this device with every tap; an' : 'An'} outcome is an entry
            at once.
          </p>
        ) : (
          <>
            <p>
              Kept: <bdi dir="auto">{last.words}</bdi>.{last.mind !== '' && <b> {last.mind}</b>}
            </p>
            <button type="button" class="link" onClick={() => void takeBackOutcome()}>
              Take it back
            </button>
          </>
        )}
      </div>
    </div>
  );
}

/** Asked once a test: the clock here did not run as long as planned, so somebody has to know the hours. */
function HoursQuestion({ run }: { run: Run }) {
  const ran = clockAmount(run, Date.now());
  return (
    <section class="hours-question" aria-label="A question about the hours">
      <p>
        <b>
          The clock here {ran > 0 ? `shows ${ran} h` : 'did not run'}; {run.exposure} h were planned. Are the hours
          known otherwise?
        </b>
      </p>
      <div class="buttons">
        <button type="button" class="button" onClick={() => answerHours(true)}>
          Yes, {run.exposure} h for every piece
        </button>
        <button type="button" class="button" onClick={() => answerHours(false)}>
          No, not yet
        </button>
      </div>
    </section>
  );
}
