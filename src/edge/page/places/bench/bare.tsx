import type { Trial } from '../../../../trial/trial.ts';
import { Trouble } from '../../parts/trouble.tsx';
import type { Held } from '../../store/journal/journal.ts';
import { addressOf } from '../../store/routeOf.ts';

/** The bench while there is nothing to read on it, with what to do about it. */
export function Bare({ trial, held }: { trial: Trial | null; held: Held | null }) {
  if (trial === null) {
    if (held?.link !== 'away') return <h1>Reading the trial.</h1>;
    return (
      <>
        <h1>This trial is not in this browser, and the bench computer does not give it.</h1>
        <Trouble>{held.sentence}</Trouble>
        <a href="/">Back to the shelf</a>
      </>
    );
  }
  return (
    <>
      <h1>No piece of cable is on record yet.</h1>
      <p>
        A reading is taken on a piece that was cut from a cable. The plan says what to cut: accept its cut list there,
        and the bench asks for its pieces. Rows of specimens.csv, brought in on <a href="/">the shelf</a>, do as well.
      </p>
      <p>
        <a class="button main" href={addressOf({ place: 'plan', trial: trial.trial, sheet: null })}>
          To “Accept this cut list” on Plan
        </a>
      </p>
    </>
  );
}
