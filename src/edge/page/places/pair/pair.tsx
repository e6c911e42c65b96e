import { useState } from 'preact/hooks';
import { Frame } from '../../parts/frame.tsx';
import { Trouble } from '../../parts/trouble.tsx';
import { letIn } from '../../store/devices.ts';
import { deviceName } from '../../store/journal/device.ts';
import { goTo } from '../../store/route.ts';

/** Where a phone is added: the code from the bench computer, and a name to know it by. */
export function Pair({ code: given }: { code: string }) {
  const [code, setCode] = useState(given);
  const [name, setName] = useState(deviceName());
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(false);
  const submit = async (event: Event) => {
    event.preventDefault();
    setBusy(true);
    const said = await letIn(code, name);
    setBusy(false);
    if (said === null) goTo({ place: 'shelf' });
    else setTrouble(said);
  };
  return (
    <Frame title="Add this phone" places={[{ name: 'Shelf', href: '/', here: false, state: '' }]}>
      <h1>Add this phone to the bench.</h1>
      <form class="pair" onSubmit={(event) => void submit(event)}>
        <div class="written">
          <label for="pair-code">Code that the bench computer shows</label>
          <input
            id="pair-code"
            value={code}
            onInput={(event) => setCode(event.currentTarget.value)}
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            required
          />
        </div>
        <div class="written">
          <label for="pair-name">Name by which it stands in the list</label>
          <input
            id="pair-name"
            value={name}
            onInput={(event) => setName(event.currentTarget.value)}
            maxLength={60}
            required
          />
        </div>
        <Trouble>{trouble}</Trouble>
        <div class="buttons">
          <button type="submit" class="button main" disabled={busy}>
            Add this phone
          </button>
        </div>
      </form>
    </Frame>
  );
}
