import { WANTED_SHOTS } from '../../../../findings/plan/proofShots.ts';
import type { CablePlan, TrialPlan } from '../../../../findings/plan.ts';
import { Name } from '../../parts/name.tsx';
import { Photos } from '../../parts/photos.tsx';
import { folded } from '../../store/journal/journal.ts';

/** Photos that answer a doubt before it is raised: which are there, and when to take the others. */
export function ProofShots({ plan }: { plan: TrialPlan | null }) {
  if (plan === null || plan.cables.length === 0) return null;
  const there = plan.cables.reduce((sum, { shots }) => sum + shots.filter(({ notes }) => notes.length > 0).length, 0);
  const all = plan.cables.length * WANTED_SHOTS.length;
  return (
    <details class="shots">
      <summary>
        <h2>Proof shots</h2>{' '}
        <span class="note">
          {there} of {all}
        </span>
      </summary>
      <p class="note">Taken on Bench, as photos at the step that they belong to:</p>
      <ul class="note">
        {WANTED_SHOTS.map(({ shot, when }) => (
          <li key={shot}>
            {shot}: {when}
          </li>
        ))}
      </ul>
      <ul class="shot-list">
        {plan.cables.map((cable) => (
          <Shots key={cable.cable} cable={cable} />
        ))}
      </ul>
    </details>
  );
}

function Shots({ cable: { name, shots } }: { cable: CablePlan }) {
  const there = shots.filter(({ notes }) => notes.length > 0).map(({ shot }) => shot);
  const trial = folded.value;
  // A photo shows the jacket, so there is none while the trial goes by codes.
  const names = trial === null || trial.blinding.blind ? [] : shots.flatMap(({ notes }) => notes);
  const photos = trial === null ? [] : trial.notes.filter(({ note }) => names.includes(note));
  const lacking = shots.filter(({ notes }) => notes.length === 0).map(({ shot }) => shot);
  return (
    <li>
      <Name>{name}</Name>
      <span>
        {there.length > 0 && (
          <>
            <b>There:</b> {there.join(', ')}.{' '}
          </>
        )}
        {lacking.length > 0 ? `To take: ${lacking.join(', ')}.` : 'All there.'}
      </span>
      {photos.length > 0 && <Photos trial={trial!.trial} notes={photos} />}
    </li>
  );
}
