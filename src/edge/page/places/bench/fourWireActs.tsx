import { FOUR_WIRE_CURRENTS, fourWirePair, isFourWire } from '../../../../findings/bench/fourWireSet.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { cautionsFor } from '../../../../methods/current/cautions.ts';
import { takeUp } from '../../store/bench/inHand.ts';
import { folded } from '../../store/journal/journal.ts';

/** Volts and amps one after the other, at several currents and both ways round; and the way there from a meter's ohms. */
export function FourWireActs({ act }: { act: BenchAct }) {
  const trial = folded.value;
  const { specimen, quantity } = act.item;
  if (trial === null) return null;
  if (quantity === 'resistance')
    return (
      <p class="four-wire-way">
        No meter at hand that reads milliohms?{' '}
        <button type="button" class="link" onClick={() => takeUp({ specimen, quantity: 'test_voltage' })}>
          Measure by volts and amps
        </button>
      </p>
    );
  if (!isFourWire(quantity)) return null;
  const { current, reversed } = fourWirePair(trial, specimen, quantity);
  const which = current > FOUR_WIRE_CURRENTS ? 'A further current' : `Current ${current} of ${FOUR_WIRE_CURRENTS}`;
  return (
    <div class="four-wire-acts">
      <p>
        <b>
          {which}, {reversed ? 'turned round' : 'as clamped'}.
        </b>{' '}
        {quantity === 'test_voltage'
          ? 'The volts between the inner contacts first, then the amps at once.'
          : 'The amps that flowed just then.'}{' '}
        {reversed
          ? 'Same current, its two clamps changed over; figures may be typed without a minus sign.'
          : 'The next pair is the same current turned round.'}
      </p>
      <p class="note">{cautionsFor('four-wire')[current === 1 && !reversed ? 0 : 1]}</p>
    </div>
  );
}
