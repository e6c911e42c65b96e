import type { BenchAct } from '../../../../findings/nextAct.ts';
import { carriedWords } from '../../store/bench/carriedWords.ts';
import { contacts, contactsUnit } from '../../store/bench/contacts.ts';
import { position } from '../../store/bench/field.ts';
import { roomUnit, targetText, temperatureFor, temperatureWarning } from '../../store/bench/room.ts';
import { Carried } from './carried.tsx';

/** On a phone: what goes with the reading, in a line above the field, where nothing covers it; the fields unfold from it. */
export function CarriedFold({ act }: { act: BenchAct }) {
  const { quantity } = act.item;
  const words = carriedWords(quantity, {
    temperature: temperatureFor(quantity),
    temperatureUnit: roomUnit.value,
    offTarget: temperatureWarning(quantity) === '' ? '' : targetText.value,
    contacts: contacts.value,
    contactsUnit: contactsUnit.value,
    position: position.value,
  });
  return (
    <details class="carried-fold">
      <summary>{words}</summary>
      <Carried act={act} />
    </details>
  );
}
