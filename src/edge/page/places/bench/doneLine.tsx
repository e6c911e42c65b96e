import { undo } from '../../store/bench/putRight.ts';
import { lastAct, told } from '../../store/bench/sitting.ts';

/** What was done last on this device, in sight, with its undo; after an undo, the one before it can go too. */
export function DoneLine() {
  const [words, act] = [told.value, lastAct.value];
  if (words === '') return null;
  const isThis = act?.words === words;
  return (
    <p class="done-line">
      <b>{words}</b>
      {act !== null && (
        <button type="button" class="link" aria-label={`Undo: ${act.words}`} onClick={() => void undo()}>
          {isThis ? 'Undo' : `Undo before it: ${act.words}`}
        </button>
      )}
    </p>
  );
}
