import { useState } from 'preact/hooks';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { QUANTITY_NAMES } from '../../../../journal/quantities.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { takeUp } from '../../store/bench/inHand.ts';
import { pieceWords, quantityHead } from '../../store/bench/names.ts';
import { benchWork } from '../../store/bench/work.ts';
import { DialogForm } from './dialogForm.tsx';

/** Any quantity on any piece, wanted or not. */
export function ChooseDialog({ trial, act }: { trial: Trial; act: BenchAct }) {
  const [specimen, setSpecimen] = useState(act.item.specimen);
  const [quantity, setQuantity] = useState<string>(act.item.quantity);
  const leftOf = (name: string) =>
    benchWork.value?.items.filter((item) => item.specimen === name).reduce((sum, item) => sum + item.left, 0) ?? 0;
  const take = async () => {
    takeUp({ specimen, quantity });
    return null;
  };
  return (
    <DialogForm title="Take up another reading" act="Take it up" onAct={take}>
      <p class="written">
        <label for="choose-piece">Piece</label>
        <select id="choose-piece" value={specimen} onChange={(event) => setSpecimen(event.currentTarget.value)}>
          {trial.specimens.map((piece) => (
            <option key={piece.specimen} value={piece.specimen}>
              {pieceWords(trial, piece.specimen)}
              {leftOf(piece.specimen) > 0 ? `: ${leftOf(piece.specimen)} left` : ''}
            </option>
          ))}
        </select>
      </p>
      <p class="written">
        <label for="choose-quantity">Quantity</label>
        <select id="choose-quantity" value={quantity} onChange={(event) => setQuantity(event.currentTarget.value)}>
          {QUANTITY_NAMES.map((name) => (
            <option key={name} value={name}>
              {quantityHead(name)}
            </option>
          ))}
        </select>
      </p>
    </DialogForm>
  );
}
