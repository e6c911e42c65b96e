import { useState } from 'preact/hooks';
import { Trouble } from '../../parts/trouble.tsx';
import { leaveNetwork, openCode, type Role, type Sharing } from '../../store/devices.ts';

const ROLES: readonly (readonly [Role, string])[] = [
  ['recorder', 'reads and records'],
  ['reader', 'reads'],
  ['keeper', 'reads, records, and takes phones off this list'],
];

/** Asks for a new code, opening the local network where that was not done yet; or closes it. */
export function NewCode({ sharing, onChanged }: { sharing: Sharing; onChanged: () => Promise<void> }) {
  const [role, setRole] = useState<Role>('recorder');
  const [trouble, setTrouble] = useState('');
  const act = async (asked: Promise<{ ok: boolean; sentence?: string }>) => {
    const answer = await asked;
    setTrouble(answer.ok ? '' : (answer.sentence ?? ''));
    await onChanged();
  };
  return (
    <form
      class="new-code"
      onSubmit={(event) => {
        event.preventDefault();
        void act(openCode(role));
      }}
    >
      <fieldset class="choice-list">
        <legend>The phone</legend>
        {ROLES.map(([value, words]) => (
          <label key={value}>
            <input type="radio" name="role" checked={role === value} onChange={() => setRole(value)} />
            {words}
          </label>
        ))}
      </fieldset>
      <Trouble>{trouble}</Trouble>
      <div class="buttons">
        <button type="submit" class="button main">
          {sharing.code === null ? 'Show a code' : 'Show another code'}
        </button>
        {sharing.sharing && (
          <button type="button" class="button" onClick={() => void act(leaveNetwork())}>
            Close the network again
          </button>
        )}
      </div>
      {!sharing.sharing && (
        <p class="note">This lets devices on the local network reach Cupel until it is stopped or closed again.</p>
      )}
    </form>
  );
}
