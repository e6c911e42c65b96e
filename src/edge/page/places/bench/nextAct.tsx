import type { Trial } from '../../../../trial/trial.ts';
import { actsLeft, afterThis } from '../../store/bench/inHand.ts';
import { LOOK_NAMES, takeLook } from '../../store/bench/looks.ts';
import { quantityHead, signOf, signOfCable } from '../../store/bench/names.ts';
import { benchWork } from '../../store/bench/work.ts';
import { bendRoute } from '../../store/bend/openInBend.ts';
import { addressOf } from '../../store/routeOf.ts';

/** What comes after the reading in hand. */
export function NextAct({ trial }: { trial: Trial }) {
  const next = afterThis.value;
  if (next === null && actsLeft.value.length === 0) {
    const looks = benchWork.value?.looks.find(({ left }) => left.length > 0);
    if (looks !== undefined)
      return (
        <p class="next-act">
          All readings are taken. Still to look at:{' '}
          <button type="button" class="link" onClick={() => takeLook(looks.look)}>
            {LOOK_NAMES[looks.look].toLowerCase()}, {looks.left.map((cable) => signOfCable(trial, cable)).join(', ')}
          </button>
        </p>
      );
    const steps = new Set(benchWork.value?.items.map((item) => item.step));
    const bent = steps.has('bend');
    const opened = !bent || steps.size > 1;
    return (
      <p class="next-act">
        All that the plan asks for is read.{' '}
        {opened && <a href={addressOf({ place: 'inside', trial: trial.trial, cable: null })}>See what is inside</a>}
        {opened && bent && ' · '}
        {bent && <a href={addressOf(bendRoute(trial.trial, { what: 'nothing' }))}>See how they bend</a>}
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
