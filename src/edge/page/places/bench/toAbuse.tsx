import { piecesToAbuse } from '../../../../findings/bench/piecesToAbuse.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { jacketRoute } from '../../store/jacket/openInJacket.ts';
import { addressOf } from '../../store/routeOf.ts';

/** The way to the endurance tests, where pieces were cut for them. */
export function ToAbuse({ trial }: { trial: Trial }) {
  const { all } = piecesToAbuse(trial, '');
  if (all.length === 0) return null;
  const fresh = all.filter((p) => p.usedIn.length === 0).length;
  return (
    <p class="to-abuse">
      <a href={addressOf(jacketRoute(trial.trial, { what: 'run' }))}>Run an endurance test</a>{' '}
      <span class="note">
        {fresh} of {all.length} pieces to abuse are fresh
      </span>
    </p>
  );
}
