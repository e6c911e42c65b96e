import { wholeText } from '../../../../units/wholeText.ts';
import { RESTING_DRAWS, rest, stopResting } from '../../store/standing/standing.ts';
import type { Stood } from './order.tsx';

/** What the bars hold and from how many draws; progress and a way to stop while more are drawn. Always one line. */
export function Resting({ stood }: { stood: Stood }) {
  const { stage, drawn, order } = stood;
  const surely = order.draws >= RESTING_DRAWS ? '±0.3' : '±0.6';
  return (
    <div class="standing-resting note">
      <p>
        Chance of each place in 100 at exactly these weights: doubt about the measurements alone, from{' '}
        {wholeText(order.draws)} joint draws, to {surely} in 100.
      </p>
      {stage === 'drawing' && (
        <p class="working" role="status">
          <progress max={RESTING_DRAWS} value={drawn} aria-label="Drawing at rest" />
          {wholeText(drawn)} of {wholeText(RESTING_DRAWS)}.
          <button type="button" class="link" onClick={stopResting}>
            Stop
          </button>
        </p>
      )}
      {stage === 'stopped' && (
        <p class="working">
          Stopped; what stands here is from fewer draws.
          <button type="button" class="link" onClick={() => void rest()}>
            Go on
          </button>
        </p>
      )}
    </div>
  );
}
