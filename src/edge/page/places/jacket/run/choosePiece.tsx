import type { AbusePiece } from '../../../../../findings/bench/piecesToAbuse.ts';
import type { Trial } from '../../../../../trial/trial.ts';
import { pieceWords } from '../../../store/bench/names.ts';
import { setUp } from '../../../store/jacket/running.ts';

/** A piece of one's own choice; blank goes back to the mixed order. */
export function ChoosePiece({ trial, all, inHand }: { trial: Trial; all: readonly AbusePiece[]; inHand: string }) {
  const state = ({ done, usedIn }: AbusePiece) => (done ? ', done' : usedIn.length > 0 ? ', used' : '');
  return (
    <details class="choose-piece">
      <summary>Another piece</summary>
      <p class="written">
        <label for="run-piece">Piece in hand</label>
        <select id="run-piece" value={inHand} onChange={(event) => setUp({ specimen: event.currentTarget.value })}>
          {inHand === '' && <option value="">choose one</option>}
          {all.map((piece) => (
            <option key={piece.specimen} value={piece.specimen}>
              {pieceWords(trial, piece.specimen)}
              {state(piece)}
            </option>
          ))}
        </select>
      </p>
      <p class="note">What was counted stays with the piece in hand.</p>
    </details>
  );
}
