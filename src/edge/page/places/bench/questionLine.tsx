import type { Trial } from '../../../../trial/trial.ts';
import { show } from '../../store/bench/dialogs.ts';
import { signOf } from '../../store/bench/names.ts';
import { asked, keepIt, measureAgain } from '../../store/bench/record.ts';

/** A doubt about the reading before. It stands in nobody's way: the reading counts until somebody says otherwise. */
export function QuestionLine({ trial }: { trial: Trial }) {
  const now = asked.value;
  if (now === null) return null;
  return (
    <section class="question" aria-label="A question about the reading before">
      <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
        <circle cx="12" cy="12" r="10.5" fill="none" stroke="var(--ink)" stroke-width="2" />
        <path d="M12 6v8M12 16.5v2" stroke="var(--ink)" stroke-width="2" />
      </svg>
      <div>
        <p>
          <b>
            <bdi dir="auto">{signOf(trial, now.about.specimen)}</bdi>: {now.question.text}
          </b>
        </p>
        <p>It is kept, and counts until you say otherwise.</p>
        <div class="buttons">
          <button type="button" class="button" onClick={keepIt}>
            Keep it
          </button>
          <button type="button" class="button" onClick={() => show('strike')}>
            Strike out, with a reason
          </button>
          <button type="button" class="button" onClick={measureAgain}>
            Measure again
          </button>
        </div>
      </div>
    </section>
  );
}
