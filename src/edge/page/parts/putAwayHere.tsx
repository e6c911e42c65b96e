import { folded } from '../store/journal/journal.ts';
import { PutAside } from './putAside.tsx';

/** That the open trial was put away, why, and the way back; nothing while it stands on the shelf. */
export function PutAwayHere() {
  const trial = folded.value;
  if (trial === null || trial.putAway === null) return null;
  const { why } = trial.putAway;
  return (
    <aside class="put-away-here" aria-label="Put away">
      <p>
        <b>This trial was put away:</b> “<bdi dir="auto">{why}</bdi>”. It stands folded at the foot of the shelf, and
        nothing of it is lost.
      </p>
      <PutAside about="trial" which={trial.trial} name={trial.title || trial.trial} again />
    </aside>
  );
}
