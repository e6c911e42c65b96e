import { useState } from 'preact/hooks';
import type { Reading, Trial } from '../../../../trial/trial.ts';
import { FieldTrouble } from '../../parts/trouble.tsx';
import { addContacts, contacts, contactsNotKnown, contactsUnit, lackingContacts } from '../../store/bench/contacts.ts';
import { show } from '../../store/bench/dialogs.ts';
import { inHand } from '../../store/bench/inHand.ts';
import { quantityHead, signOf } from '../../store/bench/names.ts';
import { asked, keepIt, measureAgain, type OpenQuestion, openQuestions } from '../../store/bench/questions.ts';
import { lastKept } from '../../store/bench/sitting.ts';
import { backToField } from './dialogs.tsx';

/**
 * Doubts about readings: the one about the reading before in full, and those from before until they are answered. They stand
 * in nobody's way: a reading counts until somebody says otherwise.
 */
export function Questions({ trial }: { trial: Trial }) {
  const now = asked.value;
  const earlier = openQuestions.value.filter((each) => each !== now);
  const lacking = lackingContacts.value;
  // One distance is asked for at a time: of the piece just read, else of the one in hand.
  const first = [lastKept.value?.specimen, inHand.value?.item.specimen]
    .map((specimen) => lacking.find((each) => each.specimen === specimen))
    .find((each) => each !== undefined);
  const others = lacking.filter((each) => each !== first);
  const folded = earlier.length + others.length;
  return (
    <>
      {now !== null && <Question trial={trial} question={now} label="A question about the reading before" />}
      {first !== undefined && <LackingContacts key={first.specimen} trial={trial} {...first} />}
      {folded > 0 && (
        <details class="open-questions">
          <summary>{folded === 1 ? '1 question is still open' : `${folded} questions are still open`}</summary>
          {earlier.map((each) => (
            <Question
              key={each.about.reading}
              trial={trial}
              question={each}
              label={`A question about ${each.about.shown}`}
            />
          ))}
          {others.map((each) => (
            <LackingContacts key={each.specimen} trial={trial} {...each} />
          ))}
        </details>
      )}
    </>
  );
}

function Question({ trial, question, label }: { trial: Trial; question: OpenQuestion; label: string }) {
  const { about, text } = question;
  return (
    <section class="question" aria-label={label}>
      <QuestionMark />
      <div>
        <p>
          <b>
            <bdi dir="auto">{signOf(trial, about.specimen)}</bdi>: {text}
          </b>
        </p>
        <p>It is kept, and counts until you say otherwise.</p>
        <div class="buttons">
          <button type="button" class="button" onClick={() => keepIt(question)}>
            Keep it
          </button>
          <button type="button" class="button" onClick={() => show('strike', about.reading)}>
            Strike out, with a reason
          </button>
          <button type="button" class="button" onClick={() => measureAgain(question)}>
            Measure again
          </button>
        </div>
      </div>
    </section>
  );
}

interface LackingProps {
  trial: Trial;
  specimen: string;
  readings: readonly Reading[];
}

/** Ohms that were kept without the distance that they were read over: it can be added, or said to be unknown. */
function LackingContacts({ trial, specimen, readings }: LackingProps) {
  const sign = signOf(trial, specimen);
  const [text, setText] = useState<string | null>(null);
  const [trouble, setTrouble] = useState('');
  const shown = text ?? (inHand.value?.item.specimen === specimen ? contacts.value : '');
  const id = `lacking-${specimen}`;
  const add = async (event: Event) => {
    event.preventDefault();
    const wrong = await addContacts(readings, shown).catch((error: unknown) => String(error));
    setTrouble(wrong ?? '');
    if (wrong === null) backToField();
  };
  const count = readings.length === 1 ? 'one reading' : `${readings.length} readings`;
  return (
    <section class="question" aria-label={`The contacts of ${sign}`}>
      <QuestionMark />
      <form onSubmit={(event) => void add(event)}>
        <p>
          <b>
            <bdi dir="auto">{sign}</bdi>: how far apart were the voltage contacts?
          </b>{' '}
          {quantityHead('resistance')}, {count} without the distance: until it is added, the ohms say nothing about the
          metal.
        </p>
        <div class="buttons">
          <p class="small-field">
            <label for={id}>Distance, {contactsUnit.value}</label>
            <input
              id={id}
              type="text"
              inputMode="text"
              autocomplete="off"
              value={shown}
              aria-invalid={trouble !== ''}
              aria-describedby={trouble === '' ? undefined : `${id}-trouble`}
              onInput={(event) => {
                setText(event.currentTarget.value);
                setTrouble('');
              }}
            />
          </p>
          <button type="submit" class="button">
            Add it
          </button>
          <button type="button" class="button" onClick={() => void contactsNotKnown(readings)}>
            I do not know
          </button>
        </div>
        <FieldTrouble field={id}>{trouble}</FieldTrouble>
      </form>
    </section>
  );
}

const QuestionMark = () => (
  <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
    <circle cx="12" cy="12" r="10.5" fill="none" stroke="var(--ink)" stroke-width="2" />
    <path d="M12 6v8M12 16.5v2" stroke="var(--ink)" stroke-width="2" />
  </svg>
);
