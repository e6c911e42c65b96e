import { WAYS_OF_BLINDING } from '../../../../../journal/settings.ts';
import { blindWords } from '../../../../../report/bend/blindWords.ts';
import { room, roomUnit, setRoom } from '../../../store/bench/room.ts';
import { blindedHow, judgeName, nameJudge, sayBlinded } from '../../../store/bend/judging.ts';
import { deviceName } from '../../../store/journal/device.ts';

const WAYS: Readonly<Record<string, string>> = {
  open: 'openly: the judge sees the pieces',
  sleeve: 'in sleeves that hide colour, print and thickness',
  'eyes covered': 'eyes covered, handed over by somebody else',
  'other room': 'handed over in another room',
};

/** Who judges, how nobody knows, and how warm the pieces are. */
export function JudgeSettings() {
  return (
    <details class="judge-settings">
      <summary>
        <bdi class="who" dir="auto">
          {judgeName.value.trim() || deviceName()}
        </bdi>
        , {blindWords([blindedHow.value])}
      </summary>
      <p class="written">
        <label for="judge-name">Who judges, on this device</label>
        <input
          id="judge-name"
          type="text"
          autocomplete="off"
          value={judgeName.value}
          onInput={(event) => nameJudge(event.currentTarget.value)}
        />
      </p>
      {judgeName.value.trim() === '' && (
        <p class="note">Without a name the answers stand under this device’s own, {deviceName()}.</p>
      )}
      <p class="written">
        <label for="judge-how">How the judge is kept from knowing</label>
        <select id="judge-how" value={blindedHow.value} onChange={(event) => sayBlinded(event.currentTarget.value)}>
          {WAYS_OF_BLINDING.map((way) => (
            <option key={way} value={way}>
              {WAYS[way] ?? way}
            </option>
          ))}
        </select>
      </p>
      <p class="note">
        {blindedHow.value === 'open'
          ? 'Every output will say that it was judged openly. Nobody is blind to colour, print and thickness without a sleeve or covered eyes.'
          : 'Only codes are shown here, and every output says how it was done.'}
      </p>
      <p class="written">
        <label for="judge-room">Temperature of the pieces, °{roomUnit.value}</label>
        <input
          id="judge-room"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={room.value}
          onInput={(event) => setRoom(event.currentTarget.value)}
        />
      </p>
      <p class="note">Several phones may judge at once, each judge under a name of their own.</p>
    </details>
  );
}
