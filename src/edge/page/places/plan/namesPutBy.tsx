import type { Trial } from '../../../../trial/trial.ts';
import { hideNames, showNames } from '../../store/plan/namesShown.ts';

/** In the place of cables and cut list while the trial goes by codes: names and codes would stand side by side there. */
export function NamesPutBy({ trial }: { trial: Trial }) {
  return (
    <section class="names-put-by" aria-labelledby="names-put-by">
      <h2 id="names-put-by">Names are put by</h2>
      <p>
        The trial goes by codes. Cables, prices, cut list and proof shots name makers beside codes, so they are not
        shown here. Whoever cuts and labels the pieces has to see them; whoever has seen them should not judge.
      </p>
      <div class="buttons">
        <button type="button" class="button" onClick={() => void showNames(trial.trial, trial.blinding.since)}>
          Show names to the one who cuts
        </button>
      </div>
      <p class="note">That it was done, when and by whom goes into the journal. Other devices go on by codes.</p>
    </section>
  );
}

/** A line that the names stand here although the trial is blind, and the way to hide them again. */
export function NamesStandHere({ trial }: { trial: Trial }) {
  return (
    <p class="heavy names-stand-here" role="note">
      <b>Names are shown on this device although the trial goes by codes.</b> Let nobody judge who sees this page.{' '}
      <button type="button" class="link" onClick={() => hideNames(trial.trial, trial.blinding.since)}>
        Hide them again
      </button>
    </p>
  );
}
