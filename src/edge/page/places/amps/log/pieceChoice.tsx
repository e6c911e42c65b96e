import type { Trial } from '../../../../../trial/trial.ts';
import { pieceDetail, pieceWords } from '../../../store/bench/names.ts';

interface PieceChoiceProps {
  trial: Trial;
  id: string;
  value: string;
  onChoose: (specimen: string) => void;
}

/** Which piece was under current. While names are hidden, pieces go by their codes. */
export function PieceChoice({ trial, id, value, onChoose }: PieceChoiceProps) {
  return (
    <div class="edit">
      <label for={id}>Piece under current</label>
      <select id={id} value={value} onChange={(event) => onChoose(event.currentTarget.value)}>
        <option value="">choose one</option>
        {trial.specimens.map(({ specimen }) => (
          <option key={specimen} value={specimen}>
            {pieceWords(trial, specimen)}: {pieceDetail(trial, specimen)}
          </option>
        ))}
      </select>
    </div>
  );
}
