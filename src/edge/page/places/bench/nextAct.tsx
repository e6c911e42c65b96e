import type { Trial } from '../../../../trial/trial.ts';
import { afterThis } from '../../store/bench/inHand.ts';
import { quantityHead, signOf } from '../../store/bench/names.ts';

/** What comes after the reading in hand. */
export function NextAct({ trial }: { trial: Trial }) {
  const next = afterThis.value;
  return (
    <p class="next-act">
      {next === null
        ? 'Next: nothing that the plan asks for.'
        : `Next: ${signOf(trial, next.item.specimen)}, ${quantityHead(next.item.quantity).toLowerCase()}, reading ${next.repeat} of ${next.item.wanted}`}
    </p>
  );
}
