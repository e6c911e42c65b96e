import { useState } from 'preact/hooks';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Reason } from '../../parts/reason.tsx';
import { dialogAbout } from '../../store/bench/dialogs.ts';
import { pieceWords, quantityHead, STRIKE_REASONS, valueWords } from '../../store/bench/names.ts';
import { strikeOut } from '../../store/bench/putRight.ts';
import { asked } from '../../store/bench/questions.ts';
import { readingsToStrike } from '../../store/bench/readingsToStrike.ts';
import { lastKept } from '../../store/bench/sitting.ts';
import { whichReading } from '../../store/bench/whichReading.ts';
import { DialogForm } from './dialogForm.tsx';

/** Strikes a reading out: which one, and why. */
export function StrikeDialog({ trial, act }: { trial: Trial; act: BenchAct }) {
  const first = dialogAbout.value || (asked.value?.about.reading ?? lastKept.value?.reading ?? '');
  const offered = readingsToStrike(trial, first, [act.item.specimen]);
  const [reading, setReading] = useState(offered[0]?.reading ?? '');
  const [why, setWhy] = useState('');
  const strike = async () => {
    if (reading === '') return 'There is no reading to strike out yet.';
    if (why.trim() === '') return 'Found no reason; say why it does not count, in a few words.';
    await strikeOut(reading, why.trim());
    return null;
  };
  return (
    <DialogForm title="Strike out a reading" act="Strike out" onAct={strike}>
      <p class="note">It stays on record, struck through, with this reason and your name. It no longer counts.</p>
      <fieldset class="choice-list long">
        <legend>Which reading</legend>
        {offered.map((each) => (
          <label key={each.reading}>
            <input
              type="radio"
              name="reading"
              checked={each.reading === reading}
              onChange={() => setReading(each.reading)}
            />
            <span>
              <b>{valueWords(each.row.value ?? '', each.row.unit ?? '')}</b> {pieceWords(trial, each.specimen)},{' '}
              {quantityHead(each.quantity).toLowerCase()}
              {each.position !== '' && `, ${each.position}`}
              <span class="note which">{whichReading(trial, each)}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <Reason id="strike-why" label="The reason in your words" why={why} onWhy={setWhy} usual={STRIKE_REASONS} />
    </DialogForm>
  );
}
