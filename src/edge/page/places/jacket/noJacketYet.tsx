import { WaysToBegin } from '../../parts/waysToBegin.tsx';
import { jacketRoute } from '../../store/jacket/openInJacket.ts';
import { addressOf } from '../../store/routeOf.ts';
import { OutcomesOnRecord } from './outcomesOnRecord.tsx';

/** What to do where nothing about jackets is on record. */
export function NoJacketYet({ trial }: { trial: string }) {
  return (
    <WaysToBegin
      sentence="Nothing about jackets has been recorded yet."
      ways={[
        {
          title: 'Read the wall',
          text: 'Six readings round a cut face, the first where the wall is thinnest, and the diameter over the jacket. They give the wall, how even it is, and how much of the face is metal, air and jacket.',
          links: [['To the bench', addressOf({ place: 'bench', trial, slate: false })]],
        },
        {
          title: 'See what it lasts',
          text: 'A needle, sandpaper, an edge, the cold: three pieces of each cable are the least that say anything. Each test comes with what to build, its steps and a counter.',
          links: [['Run a test', addressOf(jacketRoute(trial, { what: 'run' }))]],
        },
        {
          title: 'No pieces yet?',
          text: 'The plan says how many pieces to cut for abuse and how long, and puts them into the cut list.',
          links: [['To the plan', addressOf({ place: 'plan', trial, sheet: null })]],
        },
      ]}
    >
      <OutcomesOnRecord trial={trial} />
    </WaysToBegin>
  );
}
