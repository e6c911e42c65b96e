import '../../styles/standing.css';
import '../../styles/standingWeights.css';
import '../../styles/standingBelow.css';
import '../../styles/standingDoor.css';
import { useEffect } from 'preact/hooks';
import type { Findings } from '../../../../findings/schema.ts';
import { AssayFrame, useAssay } from '../../parts/assayFrame.tsx';
import { NothingToSay } from '../../parts/nothingToSay.tsx';
import { Trouble } from '../../parts/trouble.tsx';
import { leaveStanding, standing, standOn } from '../../store/standing/standing.ts';
import { NoOrderYet } from './noOrderYet.tsx';
import { Order } from './order.tsx';

/** Who comes first for whom, how sure that is, and what the money buys. */
export function StandingPlace({ trial, opened }: { trial: string; opened: string | null }) {
  const now = useAssay(trial);
  useEffect(() => leaveStanding, [trial]);
  const entries = now?.entries ?? [];
  useEffect(() => {
    if (entries.length > 0) standOn(trial, entries);
  }, [trial, entries]);
  const findings = now?.findings ?? null;
  return (
    <AssayFrame trial={trial} now={now} place="standing" name="Standing">
      {now?.stage === 'failed' ? (
        <NothingToSay trial={trial} sentence={now.sentence} />
      ) : (
        <Standings trial={trial} findings={findings} open={opened} />
      )}
    </AssayFrame>
  );
}

function Standings({ trial, findings, open }: { trial: string; findings: Findings | null; open: string | null }) {
  const stood = standing.value?.trial === trial ? standing.value : null;
  if (stood?.stage === 'failed')
    return (
      <>
        <h1>No order could be made.</h1>
        <Trouble>{stood.sentence}</Trouble>
      </>
    );
  if (stood?.stage === 'empty') return <NoOrderYet trial={trial} />;
  if (stood?.order == null || stood.decide === null)
    return (
      <>
        <h1>Reading the trial.</h1>
        <p class="working" role="status">
          <progress aria-label="Drawing the first order" />
          Drawing the first order.
        </p>
      </>
    );
  return (
    <Order
      trial={trial}
      stood={{ ...stood, order: stood.order, decide: stood.decide }}
      findings={findings}
      open={open}
    />
  );
}
