import { useState } from 'preact/hooks';
import { OVER_CONTACTS } from '../../../../findings/bench/withoutContacts.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { Switch } from '../../parts/switch.tsx';
import { FieldTrouble } from '../../parts/trouble.tsx';
import { contacts, contactsRead, contactsTrouble, contactsUnit, typeContacts } from '../../store/bench/contacts.ts';
import { position } from '../../store/bench/field.ts';
import {
  asksForCopper,
  roomUnit,
  setTemperatureFor,
  targetText,
  temperatureFor,
  temperatureWarning,
} from '../../store/bench/room.ts';
import { WARMTH } from './keys.ts';

/** What goes with the reading and is carried along to the next: temperature, and for ohms the contacts. */
export function Carried({ act }: { act: BenchAct }) {
  const { quantity, specimen } = act.item;
  const ohms = OVER_CONTACTS.has(quantity);
  const where = asksForCopper(quantity) ? 'Copper, among the strands' : 'Room and pieces';
  const warning = temperatureWarning(quantity);
  return (
    <div class="carried">
      <div class="carried-fields">
        <Small
          id={WARMTH}
          label={`${where}, °${roomUnit.value}`}
          value={temperatureFor(quantity)}
          onType={(text) => setTemperatureFor(quantity, text)}
          beside={targetText.value}
        />
        {ohms && (
          <Small
            key={specimen}
            id="bench-contacts"
            label={`Between the voltage contacts, ${contactsUnit.value}`}
            value={contacts.value}
            onType={(text) => typeContacts(specimen, text)}
            beside={contactsRead(contacts.value)}
            troubleOf={contactsTrouble}
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
      {warning !== '' && <p class="note room-warning">{warning}</p>}
    </div>
  );
}

interface SmallProps {
  id: string;
  label: string;
  value: string;
  beside: string;
  onType: (text: string) => void;
  /** What is wrong with a text, told once the field is left. */
  troubleOf?: (text: string) => string;
}

function Small({ id, label, value, beside, onType, troubleOf = () => '' }: SmallProps) {
  const [left, setLeft] = useState(true);
  const trouble = left ? troubleOf(value) : '';
  return (
    <div class="small-with-trouble">
      <p class="small-field">
        <label for={id}>{label}</label>
        <input
          id={id}
          type="text"
          inputMode={troubleOf('x') === '' ? 'decimal' : 'text'}
          autocomplete="off"
          value={value}
          aria-invalid={trouble !== ''}
          aria-describedby={trouble === '' ? undefined : `${id}-trouble`}
          onInput={(event) => {
            setLeft(false);
            onType(event.currentTarget.value);
          }}
          onBlur={() => setLeft(true)}
        />
        {beside !== '' && <span class="note">{beside}</span>}
      </p>
      <FieldTrouble field={id}>{trouble}</FieldTrouble>
    </div>
  );
}
