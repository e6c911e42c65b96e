import { WaysToBegin } from '../../parts/waysToBegin.tsx';
import { bendRoute } from '../../store/bend/openInBend.ts';
import { addressOf } from '../../store/routeOf.ts';
import { JudgementsOnRecord } from './judgementsOnRecord.tsx';
import { PhotosWithoutSheet } from './photosOfPiece.tsx';

/** What to do where nothing about bending is on record. */
export function NoBendingYet({ trial }: { trial: string }) {
  return (
    <WaysToBegin
      sentence="Nothing about bending has been recorded yet."
      ways={[
        {
          title: 'Let a piece droop',
          text: 'Clamp it level over a sharp edge, measure what hangs free and how deep the tip hangs, then turn it over. With a rule that settles the stiffness to a few per cent.',
          links: [['To the bench', addressOf({ place: 'bench', trial, slate: false })]],
        },
        {
          title: 'Judge pairs by hand',
          text: 'Two pieces at a time, and one answer: which bends more easily, or neither. Three answers for each pair of cables are the least for an order.',
          links: [['Judge pairs', addressOf(bendRoute(trial, { what: 'judge' }))]],
        },
        {
          title: 'No piece to bend yet?',
          text: 'The plan says how long to cut one for each cable, and puts it into the cut list.',
          links: [['To the plan', addressOf({ place: 'plan', trial, sheet: null })]],
        },
      ]}
    >
      <PhotosWithoutSheet trial={trial} sheets={[]} />
      <JudgementsOnRecord trial={trial} />
    </WaysToBegin>
  );
}
