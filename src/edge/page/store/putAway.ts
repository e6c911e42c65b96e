/** Puts a whole trial away from the shelf, and takes it up again: for one that is not open. */
import { checkEntry } from '../../../journal/entryCheck.ts';
import { sendTogether } from './api.ts';
import { deviceName, nextId, recorder } from './journal/device.ts';
import { actRow } from './putAside.ts';
import { loadShelf } from './shelf.ts';

/**
 * Says it on the bench computer itself, because the shelf is its list; the trial's own journal reads it when it is opened.
 *
 * @throws with a sentence for the person when the bench computer did not take it
 */
export async function putTrialAway(trial: string, why: string, again: boolean): Promise<void> {
  const checked = checkEntry({
    id: nextId(),
    trial,
    kind: 'withdrawal',
    at: new Date().toISOString(),
    by: recorder.value,
    device: deviceName(),
    body: actRow({ about: 'trial', which: trial }, again ? 'taken up again' : 'put aside', why),
  });
  if (!checked.ok) throw new Error(`Found ${checked.found}; expected ${checked.expected}.`);
  const sent = await sendTogether(trial, [checked.value]);
  if (!sent.ok) throw new Error(sent.sentence);
  await loadShelf();
}
