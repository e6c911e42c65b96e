import { keepOutcome, lastTested, takeBackOutcome } from '../../../store/jacket/running.ts';
import type { Run } from '../../../store/jacket/runState.ts';
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
      <div class="tested-last">
        {last === null ? (
          <p class="note">The count is kept on this device with every tap; an outcome is an entry at once.</p>
        ) : (
          <>
            <p>
              Kept: <bdi dir="auto">{last.words}</bdi>.
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
