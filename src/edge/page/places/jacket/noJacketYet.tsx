import { jacketRoute } from '../../store/jacket/openInJacket.ts';
import { addressOf } from '../../store/routeOf.ts';
import { OutcomesOnRecord } from './outcomesOnRecord.tsx';

/** What to do where nothing about jackets is on record. */
export function NoJacketYet({ trial }: { trial: string }) {
  return (
    <>
      <h1>Nothing about jackets has been recorded yet.</h1>
      <div class="ways">
        <section>
          <h2>Read the wall</h2>
          <p>
            Six readings round a cut face, the first where the wall is thinnest, and the diameter over the jacket. They
            give the wall, how even it is, and how much of the face is metal, air and jacket.
          </p>
          <a class="button main" href={addressOf({ place: 'bench', trial, slate: false })}>
            To the bench
          </a>
        </section>
        <section>
          <h2>See what it lasts</h2>
          <p>
            A needle, sandpaper, an edge, the cold: three pieces of each cable are the least that say anything. Each
            test comes with what to build, its steps and a counter.
          </p>
          <a class="button" href={addressOf(jacketRoute(trial, { what: 'run' }))}>
            Run a test
          </a>
        </section>
        <section>
          <h2>No pieces yet?</h2>
          <p>The plan says how many pieces to cut for abuse and how long, and puts them into the cut list.</p>
          <a class="button" href={addressOf({ place: 'plan', trial, sheet: null })}>
            To the plan
          </a>
        </section>
      </div>
      <OutcomesOnRecord trial={trial} />
    </>
  );
}
