import type { BenchAct } from '../../../../findings/nextAct.ts';
import { Switch } from '../../parts/switch.tsx';
import { contacts, contactsTyped, position } from '../../store/bench/field.ts';
import { room, roomUnit, roomWarning, setRoom, targetText } from '../../store/bench/room.ts';

/** What goes with the reading and is carried along to the next: temperature, and for ohms the contacts. */
export function Carried({ act }: { act: BenchAct }) {
  const ohms = act.item.quantity === 'resistance';
  return (
    <div class="carried">
      <div class="carried-fields">
        <Small
          id="bench-room"
          label={ohms ? `Copper, °${roomUnit.value}` : `Room and pieces, °${roomUnit.value}`}
          value={room.value}
          onType={setRoom}
          beside={targetText.value}
        />
        {ohms && (
          <Small
            id="bench-contacts"
            label="Between the voltage contacts"
            value={contacts.value}
            onType={(text) => {
              contactsTyped.value = { specimen: act.item.specimen, text };
            }}
            beside=""
          />
        )}
        {ohms && (
          <Switch
            legend="How the clips stand"
            choices={[
              ['', 'not said', 'not said'],
              ['forward', 'forward', 'forward'],
              ['reverse', 'reversed', 'reversed'],
            ]}
            value={position.value}
            onChoose={(next) => {
              position.value = next;
            }}
          />
        )}
      </div>
      {roomWarning.value !== '' && <p class="note room-warning">{roomWarning.value}</p>}
    </div>
  );
}

interface SmallProps {
  id: string;
  label: string;
  value: string;
  beside: string;
  onType: (text: string) => void;
}

function Small({ id, label, value, beside, onType }: SmallProps) {
  return (
    <p class="small-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={value}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {beside !== '' && <span class="note">{beside}</span>}
    </p>
  );
}
