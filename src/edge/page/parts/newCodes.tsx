import { useId } from 'preact/hooks';
import type { Trial } from '../../../trial/trial.ts';

/** Whether codes are on record that stood beside names. */
export const codesWereSeen = (trial: Trial): boolean => trial.specimens.some(({ code }) => code !== '');

/** Asks whether new codes are drawn as the trial goes blind; nothing where no piece has one yet. */
export function NewCodes({ trial, on, onTurn }: { trial: Trial; on: boolean; onTurn: (on: boolean) => void }) {
  const id = useId();
  if (!codesWereSeen(trial)) return null;
  return (
    <>
      <div class="tick">
        <input type="checkbox" id={id} checked={on} onChange={(event) => onTurn(event.currentTarget.checked)} />
        <label for={id}>Draw new codes</label>
      </div>
      <p class="note">
        {on
          ? 'The codes so far stood beside the names, so whoever saw them knows them. Labels printed so far are void: print them anew, and let somebody who does not judge put them on.'
          : 'The codes stay as they are: only for those who have never seen them beside a name is the trial blind.'}
      </p>
    </>
  );
}
