import type { Trial } from '../../../../trial/trial.ts';
import { actsLeft, afterThis } from '../../store/bench/inHand.ts';
import { quantityHead, signOf } from '../../store/bench/names.ts';
import { addressOf } from '../../store/routeOf.ts';

/** What comes after the reading in hand. */
export function NextAct({ trial }: { trial: Trial }) {
  const next = afterThis.value;
  if (next === null && actsLeft.value.length === 0) {
    return (
      <p class="next-act">
        All that the plan asks for is read.{' '}
        <a href={addressOf({ place: 'inside', trial: trial.trial, cable: null })}>See what is inside</a>
      </p>
    );
  }
  return (
    <p class="next-act">
      {next === null
        ? 'Next: what was passed over before.'
        : `Next: ${signOf(trial, next.item.specimen)}, ${quantityHead(next.item.quantity).toLowerCase()}, reading ${next.repeat} of ${next.item.wanted}`}
    </p>
  );
}
