import { useState } from 'preact/hooks';
import type { Trial } from '../../../../../trial/trial.ts';
import { typedText } from '../../../../../units/typedText.ts';
import { Trouble } from '../../../parts/trouble.tsx';
import {
  BEFORE_AFTER,
  type Exposed,
  exposedAsked,
  exposedTrouble,
  keepAsRead,
  keepExposed,
  readOf,
  takeBackRead,
} from '../../../store/jacket/beforeAfter.ts';

/** Mass and diameter of the piece in hand before and after its exposure, each kept when it is read. */
export function BeforeAfter({ trial, specimen, test }: { trial: Trial; specimen: string; test: string }) {
  return (
    <section class="before-after" aria-labelledby="before-after">
      <h2 id="before-after">Before and after</h2>
      {BEFORE_AFTER.map((what) => (
        <One key={`${specimen} ${what.quantity}`} what={what} trial={trial} specimen={specimen} test={test.trim()} />
      ))}
      <Trouble>{exposedTrouble.value}</Trouble>
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
    <>
      <form
        class="exposed"
        onSubmit={async (event) => {
          event.preventDefault();
          if (await keepExposed(what, specimen, test, text)) setText('');
        }}
      >
        <label for={id}>
          {what.words}, {what.unit}
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
      {read.map((r) => {
        const shown = typedText(r.row.value ?? '', r.row.unit ?? '');
        const question = exposedAsked.value[r.reading];
        return (
          <div key={r.reading} class="exposed-read">
            <p>
              <b>{shown}</b>{' '}
              <button
                type="button"
                class="link"
                aria-label={`Take back ${what.words.toLowerCase()}, ${shown}`}
                onClick={() => void takeBackRead(r.reading)}
              >
                take back
              </button>
            </p>
            {question !== undefined && (
              <p role="alert">
                <b>{question}</b>{' '}
                <button type="button" class="link" onClick={() => keepAsRead(r.reading)}>
                  It is right
                </button>
              </p>
            )}
          </div>
        );
      })}
    </>
  );
}
