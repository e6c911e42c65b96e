import { useState } from 'preact/hooks';
import { WAYS_OF_BLINDING } from '../../../../journal/settings.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { codesWereSeen, NewCodes } from '../../parts/newCodes.tsx';
import { goBlind } from '../../store/bench/putRight.ts';
import { DialogForm } from './dialogForm.tsx';

/** Goes by codes alone from here on. */
export function BlindDialog({ trial }: { trial: Trial }) {
  const [newCodes, setNewCodes] = useState(codesWereSeen(trial));
  const [how, setHow] = useState<string>('sleeve');
  const hide = async () => {
    await goBlind(how, newCodes);
    return null;
  };
  return (
    <DialogForm title="Judge blind" act="Hide the names" onAct={hide}>
      <p>
        The bench shows codes only until somebody reveals the names. Colour, print and thickness still give a cable
        away, so say how nobody was to know.
      </p>
      <p class="written">
        <label for="blind-how">How nobody is to know</label>
        <select id="blind-how" value={how} onChange={(event) => setHow(event.currentTarget.value)}>
          {WAYS_OF_BLINDING.map((way) => (
            <option key={way} value={way}>
              {way}
            </option>
          ))}
        </select>
      </p>
      <NewCodes trial={trial} on={newCodes} onTurn={setNewCodes} />
    </DialogForm>
  );
}
