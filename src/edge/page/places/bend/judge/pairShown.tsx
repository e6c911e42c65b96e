import type { Trial } from '../../../../../trial/trial.ts';
import { pieceNamed, signOf } from '../../../store/bench/names.ts';
import { blindedHow, type PairInHand } from '../../../store/bend/judging.ts';

/** Signs longer than this are set smaller. */
const SHORT = 3;

/** The two pieces by their codes, as large as the screen allows; names only where everybody may know them. */
export function PairShown({ trial, pair }: { trial: Trial; pair: PairInHand }) {
  const named = !trial.blinding.blind && blindedHow.value === 'open';
  return (
    <>
      <h1 class="judge-question">{pair.again ? 'Once more: which bends more easily?' : 'Which bends more easily?'}</h1>
      <div class="judge-pair">
        <Held trial={trial} specimen={pair.left} hand="left hand" named={named} />
        <Held trial={trial} specimen={pair.right} hand="right hand" named={named} />
      </div>
    </>
  );
}

function Held({ trial, specimen, hand, named }: { trial: Trial; specimen: string; hand: string; named: boolean }) {
  const sign = signOf(trial, specimen);
  const cable = pieceNamed(trial, specimen)?.cable;
  const name = trial.cables.find((each) => each.cable === cable)?.name ?? '';
  return (
    <p class="held">
      <bdi class={sign.length > SHORT ? 'sign long' : 'sign'} dir="auto">
        {sign}
      </bdi>
      <span class="hand">{hand}</span>
      {named && name !== sign && (
        <bdi class="whose" dir="auto">
          {name}
        </bdi>
      )}
    </p>
  );
}
