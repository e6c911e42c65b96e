import { useState } from 'preact/hooks';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import type { Reading, Trial } from '../../../../trial/trial.ts';
import { Reason } from '../../parts/reason.tsx';
import { dialogAbout } from '../../store/bench/dialogs.ts';
import { pieceWords, quantityHead, valueWords } from '../../store/bench/names.ts';
import { strikeOut } from '../../store/bench/putRight.ts';
import { asked } from '../../store/bench/questions.ts';
import { lastKept } from '../../store/bench/sitting.ts';
import { DialogForm } from './dialogForm.tsx';

/** Reasons that come up again and again; anything else is written. */
const REASONS = ['digits swapped', 'scale was not at zero', 'clip or jaw slipped', 'wrong piece', 'wrong unit'];
/** So many of the latest readings are offered. */
const OFFERED = 5;

/** Strikes a reading out: which one, and why. */
export function StrikeDialog({ trial, act }: { trial: Trial; act: BenchAct }) {
  const offered = readingsToStrike(trial, act);
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
      <fieldset class="choice-list">
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
            </span>
          </label>
        ))}
      </fieldset>
      <Reason id="strike-why" label="The reason in your words" why={why} onWhy={setWhy} usual={REASONS} />
    </DialogForm>
  );
}

/** The reading in question first, then the latest of the piece in hand, then the latest of all. */
function readingsToStrike(trial: Trial, { item }: BenchAct): Reading[] {
  const counted = trial.readings.filter((reading) => reading.standing === 'counted').reverse();
  const first = dialogAbout.value || (asked.value?.about.reading ?? lastKept.value?.reading);
  const rank = (reading: Reading) =>
    reading.reading === first ? 0 : reading.specimen === item.specimen && reading.quantity === item.quantity ? 1 : 2;
  return counted.sort((a, b) => rank(a) - rank(b)).slice(0, OFFERED);
}
