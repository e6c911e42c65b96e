import { useState } from 'preact/hooks';
import type { Trial } from '../../../../trial/trial.ts';
import { Reason } from '../../parts/reason.tsx';
import { pieceWords, quantityHead, valueWords } from '../../store/bench/names.ts';
import { repair } from '../../store/bench/putRight.ts';
import { DialogForm } from './dialogForm.tsx';

/** So many of the latest readings are offered as the first that was wrong. */
const OFFERED = 60;

/** A mix-up of pieces, put right in one act: two were swapped, or a tag was wrong, from some reading on. */
export function MixUpDialog({ trial }: { trial: Trial }) {
  const [kind, setKind] = useState<'swap' | 'tag'>('swap');
  const [specimen, setSpecimen] = useState('');
  const [becomes, setBecomes] = useState('');
  const [fromReading, setFromReading] = useState('');
  const [why, setWhy] = useState('');
  const mend = async () => {
    if (specimen === '' || becomes === '') return 'Choose both pieces.';
    if (specimen === becomes) return 'Found the same piece twice; expected two pieces.';
    if (why.trim() === '') return 'Found no reason; say how you know, in a few words.';
    await repair({ kind, specimen, becomes, fromReading, why: why.trim() });
    return null;
  };
  const concerned = trial.readings
    .filter((each) => [specimen, becomes].includes(each.specimen))
    .reverse()
    .slice(0, OFFERED);
  return (
    <DialogForm title="Pieces were mixed up" act="Put it right" onAct={mend}>
      <fieldset class="choice-list">
        <legend>What happened</legend>
        <label>
          <input type="radio" name="kind" checked={kind === 'swap'} onChange={() => setKind('swap')} />
          <span>These two were swapped</span>
        </label>
        <label>
          <input type="radio" name="kind" checked={kind === 'tag'} onChange={() => setKind('tag')} />
          <span>This tag was wrong: what was read on the first belongs to the second</span>
        </label>
      </fieldset>
      <Piece
        id="mix-first"
        label={kind === 'swap' ? 'One piece' : 'As it was recorded'}
        {...{ trial }}
        value={specimen}
        onChoose={setSpecimen}
      />
      <Piece
        id="mix-second"
        label={kind === 'swap' ? 'The other piece' : 'What it really was'}
        {...{ trial }}
        value={becomes}
        onChoose={setBecomes}
      />
      <p class="written">
        <label for="mix-from">From which reading on</label>
        <select id="mix-from" value={fromReading} onChange={(event) => setFromReading(event.currentTarget.value)}>
          <option value="">from the beginning</option>
          {concerned.map((each) => (
            <option key={each.reading} value={each.reading}>
              {`${(each.row.at ?? '').slice(11, 16)} ${valueWords(each.row.value ?? '', each.row.unit ?? '')}, ${pieceWords(trial, each.specimen)}, ${quantityHead(each.quantity).toLowerCase()}`}
            </option>
          ))}
        </select>
      </p>
      <Reason id="mix-why" label="How you know" why={why} onWhy={setWhy} />
    </DialogForm>
  );
}

interface PieceProps {
  id: string;
  label: string;
  trial: Trial;
  value: string;
  onChoose: (specimen: string) => void;
}

function Piece({ id, label, trial, value, onChoose }: PieceProps) {
  return (
    <p class="written">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChoose(event.currentTarget.value)}>
        <option value="">choose a piece</option>
        {trial.specimens.map((piece) => (
          <option key={piece.specimen} value={piece.specimen}>
            {pieceWords(trial, piece.specimen)}
          </option>
        ))}
      </select>
    </p>
  );
}
