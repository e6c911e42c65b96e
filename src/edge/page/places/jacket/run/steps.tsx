import type { Protocol } from '../../../../../methods/jacket/protocols/protocol.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import { StepList } from '../../../parts/stepList.tsx';

/** What to do, each caution beside the step that it concerns, and where to stop. */
export function Steps({ protocol }: { protocol: Protocol }) {
  return (
    <>
      <StepList steps={protocol.steps} />
      <p>
        <b>Stop rule.</b> {noBreak(protocol.stop)}
      </p>
    </>
  );
}
