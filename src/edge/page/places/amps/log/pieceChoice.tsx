import type { Trial } from '../../../../../trial/trial.ts';
import { ChoiceField } from '../../../parts/choiceField.tsx';
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
    <ChoiceField
      id={id}
      label="Piece under current"
      value={value}
      choices={[
        ['', 'choose one'],
        ...trial.specimens.map(
          ({ specimen }) => [specimen, `${pieceWords(trial, specimen)}: ${pieceDetail(trial, specimen)}`] as const,
        ),
      ]}
      onChoose={onChoose}
    />
  );
}
