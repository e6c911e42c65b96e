import type { SixFields as Fields } from '../../../../findings/quick.ts';
import { clearFields, fields, troubles, typeField } from '../../store/sixFields.ts';
import { QuickAnswer } from './quickAnswer.tsx';

interface FieldWords {
  name: keyof Fields;
  label: string;
  hint: string;
  example: string;
}

const WORDS: readonly FieldWords[] = [
  { name: 'label', label: 'What the label says', hint: 'size and metal, word for word', example: '2 AWG OFC' },
  { name: 'mass', label: 'Mass of the bare conductor', hint: 'jacket off, strands clean', example: '95.6 g' },
  { name: 'length', label: 'Length that was weighed', hint: 'cut square, measured straight', example: '300 mm' },
  { name: 'ohms', label: 'Ohms', hint: 'four wires; the whole length is best', example: '0.76 mohm' },
  { name: 'contacts', label: 'Length between the voltage contacts', hint: 'not the cut length', example: '1500 mm' },
  { name: 'temperature', label: 'Temperature of the copper', hint: 'of the strands, not of the room', example: '20 C' },
];

/** One cable in six fields, answered while they are typed. */
export function SixFields() {
  const typed = Object.values(fields.value).some((text) => text !== '');
  return (
    <section class="six" aria-labelledby="six">
      <h2 id="six">One cable, six fields</h2>
      <div class="parts">
        <form class="ask" onSubmit={(event) => event.preventDefault()}>
          <p class="note">Any unit you like: 312 gr, 1 3/8 in, 0.39 mohm. A blank field widens the answer.</p>
          {WORDS.map(Field)}
          {typed && (
            <button type="button" class="link" onClick={clearFields}>
              Empty all six
            </button>
          )}
          <p class="note caution">
            Take the cable off the vehicle, or disconnect the battery, before anything else. Clamp the piece before it
            is cut, and wear eye protection. Read ohms with the meter’s own low current only.
          </p>
        </form>
        <QuickAnswer />
      </div>
    </section>
  );
}

function Field({ name, label, hint, example }: FieldWords) {
  const trouble = troubles.value[name];
  return (
    <div class="field" key={name}>
      <label for={`six-${name}`}>
        {label}
        <span class="hint">{hint}</span>
      </label>
      <input
        id={`six-${name}`}
        name={name}
        value={fields.value[name]}
        placeholder={`such as ${example}`}
        autocomplete="off"
        spellcheck={false}
        dir="auto"
        aria-invalid={trouble === undefined ? undefined : 'true'}
        aria-describedby={trouble === undefined ? undefined : `six-${name}-trouble`}
        onInput={(event) => typeField(name, event.currentTarget.value)}
      />
      {trouble !== undefined && (
        <p class="trouble" id={`six-${name}-trouble`}>
          Found {trouble.found}; expected {trouble.expected}. {trouble.advice}
        </p>
      )}
    </div>
  );
}
