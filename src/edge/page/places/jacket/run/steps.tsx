import { cautionsByStep } from '../../../../../methods/jacket/protocols/cautionsByStep.ts';
import type { Protocol } from '../../../../../methods/jacket/protocols/protocol.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import { Minds } from '../../../parts/mind.tsx';

/** What to do, each caution beside the step that it concerns, and where to stop. */
export function Steps({ protocol }: { protocol: Protocol }) {
  return (
    <>
      <ol class="steps">
        {cautionsByStep(protocol).map(({ step, cautions }) => (
          <li key={step}>
            <p>{noBreak(step)}</p>
            <Minds texts={cautions} />
          </li>
        ))}
      </ol>
      <p>
        <b>Stop rule.</b> {noBreak(protocol.stop)}
      </p>
    </>
  );
}
