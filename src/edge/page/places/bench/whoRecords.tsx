import { useState } from 'preact/hooks';
import { nameRecorder, recorder } from '../../store/journal/device.ts';
import { isBoolean, keptSignal } from '../../store/kept.ts';
import { toValueField } from './keys.ts';

/** Asked once on a device; a name can still be given under "This bench". */
const askedWho = keptSignal('cupel.bench.askedWho', false, isBoolean);

/** Who records, asked once before the first reading of a device and easily passed over. */
export function WhoRecords() {
  const [name, setName] = useState('');
  if (askedWho.value || recorder.value !== '') return null;
  const answer = (typed: string) => {
    nameRecorder(typed.trim());
    askedWho.value = true;
    toValueField();
  };
  return (
    <form
      class="who-records"
      onSubmit={(event) => {
        event.preventDefault();
        answer(name);
      }}
    >
      <p class="small-field">
        <label for="who-records">Who records on this device?</label>
        <input
          id="who-records"
          class="wide"
          type="text"
          autocomplete="off"
          maxLength={100}
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </p>
      <button type="submit" class="button">
        Put it with my readings
      </button>
      <button type="button" class="button" onClick={() => answer('')}>
        Without a name
      </button>
    </form>
  );
}
