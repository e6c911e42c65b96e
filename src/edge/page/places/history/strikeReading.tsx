import { useState } from 'preact/hooks';
import type { Reading, Trial } from '../../../../trial/trial.ts';
import { FormDialog } from '../../parts/formDialog.tsx';
import { Reason } from '../../parts/reason.tsx';
import { STRIKE_REASONS } from '../../store/bench/names.ts';
import { strikeOut } from '../../store/bench/putRight.ts';
import { readsOnly } from '../../store/devices.ts';
import { readingWords } from './whatWasSaid.ts';

/** Strikes one reading out where it is looked up: a link that asks for the reason. */
export function StrikeReading({ trial, reading }: { trial: Trial; reading: Reading }) {
  const [asking, setAsking] = useState(false);
  const [why, setWhy] = useState('');
  const words = readingWords(trial, reading.reading);
  if (readsOnly.value) return null;
  const strike = async () => {
    if (why.trim() === '') return 'Found no reason; say why it does not count, in a few words.';
    await strikeOut(reading.reading, why.trim());
    return null;
  };
  return (
    <>
      <button type="button" class="link" aria-label={`Strike out: ${words}`} onClick={() => setAsking(true)}>
        strike out
      </button>
      {asking && (
        <FormDialog
          title="Strike out this reading"
          act="Strike out"
          onAct={strike}
          onClose={() => {
            setAsking(false);
            setWhy('');
          }}
        >
          <p>
            <b>
              <bdi dir="auto">{words}</bdi>
            </b>
          </p>
          <p class="note">It stays on record, struck through, with this reason and your name. It no longer counts.</p>
          <Reason id="strike-why" label="The reason in your words" why={why} onWhy={setWhy} usual={STRIKE_REASONS} />
        </FormDialog>
      )}
    </>
  );
}
