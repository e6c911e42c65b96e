import '../styles/steps.css';
import { noBreak } from '../../../report/words/noBreak.ts';
import { Minds } from './mind.tsx';

/** What to do one after the other, each caution beside the step that it concerns. */
export function StepList({ steps }: { steps: readonly { text: string; cautions: readonly string[] }[] }) {
  return (
    <ol class="steps">
      {steps.map(({ text, cautions }) => (
        <li key={text}>
          <p>{noBreak(text)}</p>
          <Minds texts={cautions} />
        </li>
      ))}
    </ol>
  );
}
