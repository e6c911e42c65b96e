import { show } from '../../store/bench/dialogs.ts';
import { later } from '../../store/bench/inHand.ts';
import { record } from '../../store/bench/record.ts';
import { handheld } from '../../store/media.ts';

/** Every act of the bench as a button; on a phone the keypad has the one that records. */
export function Acts() {
  return (
    <fieldset class="acts">
      <legend class="hidden">Acts</legend>
      {!handheld.value && (
        <button type="button" class="button main record" onClick={() => void record()}>
          Record <span class="key-hint">Enter</span>
        </button>
      )}
      <button type="button" class="button" onClick={() => show('strike')}>
        Strike out
      </button>
      <button type="button" class="button" onClick={() => show('note')}>
        Note
      </button>
      <button type="button" class="button" onClick={() => show('photo')}>
        Photo
      </button>
      <button type="button" class="button" onClick={later}>
        Later
      </button>
    </fieldset>
  );
}
