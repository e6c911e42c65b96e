import { useState } from 'preact/hooks';
import { sentenceOf } from '../../store/sentenceOf.ts';
import { tried } from '../../store/standing/standing.ts';
import { backToKept, keepTried } from '../../store/standing/trying.ts';
import type { Stood } from './order.tsx';

/** What is tried out stays on this page until it is kept in the trial. */
export function KeepOrGoBack({ stood }: { stood: Stood }) {
  const [trouble, setTrouble] = useState('');
  const { wish, scales } = tried.value;
  const changed = wish !== null || Object.keys(scales).length > 0;
  const keep = async () => {
    try {
      await keepTried();
      setTrouble('');
    } catch (error) {
      setTrouble(sentenceOf(error));
    }
  };
  return (
    <div class="keep-weights">
      <p class="note" role="status">
        {changed
          ? 'Tried out on this page only; nothing is on record yet.'
          : stood.decide.weights_from === 'even'
            ? 'Move a weight to try it out; the trial changes only when you keep it.'
            : 'These weights are kept in the trial.'}
      </p>
      {changed && (
        <p class="buttons">
          <button type="button" class="button main" onClick={() => void keep()}>
            Keep these weights in the trial
          </button>
          <button type="button" class="button" onClick={backToKept}>
            Back to the trial’s
          </button>
        </p>
      )}
      {trouble !== '' && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
}
