import { useState } from 'preact/hooks';
import type { Trial } from '../../../../../trial/trial.ts';
import { BEFORE_AFTER, type Exposed, exposedTrouble, keepExposed, readOf } from '../../../store/jacket/beforeAfter.ts';

/** Mass and diameter of the piece in hand before and after its exposure, each kept when it is read. */
export function BeforeAfter({ trial, specimen, test }: { trial: Trial; specimen: string; test: string }) {
  return (
    <section class="before-after" aria-labelledby="before-after">
      <h2 id="before-after">Before and after</h2>
      {BEFORE_AFTER.map((what) => (
        <One key={`${specimen} ${what.quantity}`} what={what} trial={trial} specimen={specimen} test={test.trim()} />
      ))}
      {exposedTrouble.value !== '' && (
        <p class="trouble-sentence" role="alert">
          {exposedTrouble.value}
        </p>
      )}
      <p class="note">The same tool before and after: what it reads wrongly then drops out of the change.</p>
    </section>
  );
}

interface OneProps {
  what: Exposed;
  trial: Trial;
  specimen: string;
  test: string;
}

function One({ what, trial, specimen, test }: OneProps) {
  const [text, setText] = useState('');
  const read = readOf(trial, specimen, test, what.quantity);
  const id = `exposed-${what.quantity}`;
  return (
    <form
      class="exposed"
      onSubmit={async (event) => {
        event.preventDefault();
        if (await keepExposed(what, specimen, test, text)) setText('');
      }}
    >
      <label for={id}>
        {what.words}, {what.unit} {read !== '' && <b>{read}</b>}
      </label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <button type="submit" class="button" aria-label={`Keep ${what.words.toLowerCase()}`}>
        Keep
      </button>
    </form>
  );
}
