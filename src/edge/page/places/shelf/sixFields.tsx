import { noBreak } from '../../../../report/words/noBreak.ts';
import { bareUnits } from '../../store/bareUnits.ts';
import { clearFields, fields, readings, troubles, typeField } from '../../store/sixFields.ts';
import { FIELD_WORDS, type FieldWords } from './fieldWords.ts';
import { QuickAnswer } from './quickAnswer.tsx';

/** One cable in six fields, answered while they are typed. */
export function SixFields() {
  const typed = Object.values(fields.value).some((text) => text !== '');
  return (
    <section class="six" aria-labelledby="six">
      <h2 id="six">One cable, six fields</h2>
      <div class="parts">
        <form class="ask" onSubmit={(event) => event.preventDefault()}>
          <p class="note">Any unit you like: 312 gr, 1 3/8 in, 0.39 mohm. A blank field widens the answer.</p>
          {FIELD_WORDS.map(Field)}
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
  const read = readings.value[name];
  const said = trouble !== undefined ? `six-${name}-trouble` : read !== undefined ? `six-${name}-read` : undefined;
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
        placeholder={`such as ${example(bareUnits.value)}`}
        autocomplete="off"
        spellcheck={false}
        dir="auto"
        aria-invalid={trouble === undefined ? undefined : 'true'}
        aria-describedby={said}
        onInput={(event) => typeField(name, event.currentTarget.value)}
      />
      {trouble !== undefined && (
        <p class="trouble" id={said}>
          {noBreak(`Found ${trouble.found}; expected ${trouble.expected}.${spaced(trouble.advice)}`)}
        </p>
      )}
      {read !== undefined && (
        <p class="read-as" id={said}>
          read as {noBreak(read)}
        </p>
      )}
    </div>
  );
}

const spaced = (advice: string) => (advice === '' ? '' : ` ${advice}`);
