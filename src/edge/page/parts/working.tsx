import { wholeText } from '../../../units/wholeText.ts';
import { type Assay, goOn, stopComputing } from '../store/assay.ts';
import { Trouble } from './trouble.tsx';

/** How far the computing is, and the way to stop it; once done, what the figures were held against. Always one line. */
export function Working({ now }: { now: Assay }) {
  if (now.stage === 'done') return <p class="held note">{heldSentence(now)}</p>;
  if (now.stage === 'failed') {
    return <Trouble>{now.sentence}</Trouble>;
  }
  if (now.stage === 'stopped') {
    return (
      <p class="working">
        {now.findings === null
          ? 'Stopped before anything was found.'
          : 'Stopped. The figures below are the closed form, not yet held against random draws.'}
        <button type="button" class="link" onClick={() => void goOn()}>
          Go on
        </button>
      </p>
    );
  }
  return (
    <p class="working" role="status">
      <progress aria-label={WORDS[now.stage]} />
      {WORDS[now.stage]}
      {now.drawn > 0 && ` ${wholeText(now.drawn)} so far.`}
      {now.stage !== 'fetching' && (
        <button type="button" class="link" onClick={stopComputing}>
          Stop
        </button>
      )}
    </p>
  );
}

function heldSentence({ entries, findings }: Assay): string {
  const draws = findings?.engine.draws ?? 0;
  const from = `From ${wholeText(entries.length)} entries`;
  return draws > 0 ? `${from}, held against ${wholeText(draws)} random draws.` : `${from}.`;
}

const WORDS = {
  fetching: 'Fetching the entries.',
  computing: 'Computing.',
  drawing: 'Holding the figures against random draws.',
};
