import { bendRoute } from '../../store/bend/openInBend.ts';
import { addressOf } from '../../store/routeOf.ts';
import { JudgementsOnRecord } from './judgementsOnRecord.tsx';
import { PhotosWithoutSheet } from './photosOfPiece.tsx';

/** What to do where nothing about bending is on record. */
export function NoBendingYet({ trial }: { trial: string }) {
  return (
    <>
      <h1>Nothing about bending has been recorded yet.</h1>
      <div class="ways">
        <section>
          <h2>Let a piece droop</h2>
          <p>
            Clamp it level over a sharp edge, measure what hangs free and how deep the tip hangs, then turn it over.
            With a rule that settles the stiffness to a few per cent.
          </p>
          <a class="button main" href={addressOf({ place: 'bench', trial, slate: false })}>
            To the bench
          </a>
        </section>
        <section>
          <h2>Judge pairs by hand</h2>
          <p>
            Two pieces at a time, and one answer: which bends more easily, or neither. Three answers for each pair of
            cables are the least for an order.
          </p>
          <a class="button" href={addressOf(bendRoute(trial, { what: 'judge' }))}>
            Judge pairs
          </a>
        </section>
        <section>
          <h2>No piece to bend yet?</h2>
          <p>The plan says how long to cut one for each cable, and puts it into the cut list.</p>
          <a class="button" href={addressOf({ place: 'plan', trial, sheet: null })}>
            To the plan
          </a>
        </section>
      </div>
      <PhotosWithoutSheet trial={trial} sheets={[]} />
      <JudgementsOnRecord trial={trial} />
    </>
  );
}
