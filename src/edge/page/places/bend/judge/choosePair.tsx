import { useState } from 'preact/hooks';
import type { Trial } from '../../../../../trial/trial.ts';
import { signOf } from '../../../store/bench/names.ts';
import type { JudgedPiece } from '../../../store/bend/judgedPieces.ts';
import { choosePair, type PairInHand, takeNextPair } from '../../../store/bend/judging.ts';

interface ChooseProps {
  trial: Trial;
  pieces: readonly JudgedPiece[];
  /** The pair in hand, which the lists begin with. */
  now: PairInHand | null;
}

/** A pair of one's own choice, and back to the next in order. */
export function ChoosePair({ trial, pieces, now }: ChooseProps) {
  const known = (specimen: string | undefined) => pieces.some(({ piece }) => piece.specimen === specimen);
  const [left, setLeft] = useState(known(now?.left) ? now!.left : pieces[0]!.piece.specimen);
  const [right, setRight] = useState(known(now?.right) ? now!.right : pieces[1]!.piece.specimen);
  const side = (id: string, words: string, value: string, set: (specimen: string) => void) => (
    <p class="written">
      <label for={id}>{words}</label>
      <select id={id} value={value} onChange={(event) => set(event.currentTarget.value)}>
        {pieces.map(({ piece }) => (
          <option key={piece.specimen} value={piece.specimen}>
            {signOf(trial, piece.specimen)}
          </option>
        ))}
      </select>
    </p>
  );
  return (
    <details class="judge-choose">
      <summary>Another pair</summary>
      <div class="two-fields">
        {side('judge-left', 'Left hand', left, setLeft)}
        {side('judge-right', 'Right hand', right, setRight)}
      </div>
      <div class="buttons">
        <button type="button" class="button" onClick={() => choosePair(left, right)}>
          Judge these two
        </button>
        <button type="button" class="link" onClick={takeNextPair}>
          The next in order
        </button>
      </div>
    </details>
  );
}
