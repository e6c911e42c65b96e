import { judge, lastJudged, undoJudgement } from '../../../store/bend/judging.ts';
import { handheld } from '../../../store/media.ts';

/** The three answers under the thumb, and the way back. */
export function Answers() {
  const last = lastJudged.value;
  const keys = !handheld.value;
  return (
    <div class="judge-acts">
      <div class="judged-last">
        {last === null ? (
          <p class="note">An answer is kept on this device at once.</p>
        ) : (
          <>
            <p>
              Kept: <bdi dir="auto">{last.words}</bdi>.
            </p>
            <button type="button" class="link" onClick={() => void undoJudgement()}>
              Undo{keys && <span class="key-hint"> U</span>}
            </button>
          </>
        )}
      </div>
      <fieldset class="answers">
        <legend class="hidden">Which bends more easily</legend>
        <button type="button" class="button" onClick={() => void judge('left')}>
          Left {keys && <span class="key-hint">←</span>}
        </button>
        <button type="button" class="button" onClick={() => void judge('same')}>
          Same {keys && <span class="key-hint">↓ or space</span>}
        </button>
        <button type="button" class="button" onClick={() => void judge('right')}>
          Right {keys && <span class="key-hint">→</span>}
        </button>
      </fieldset>
    </div>
  );
}
