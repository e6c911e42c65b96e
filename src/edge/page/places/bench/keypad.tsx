import type { ComponentChildren } from 'preact';
import { eraseLast, fractionKey, typeInto } from '../../store/bench/field.ts';
import { unitWords } from '../../store/bench/names.ts';
import { record } from '../../store/bench/record.ts';
import { nextUnit, unit, unitChoices } from '../../store/bench/typedUnit.ts';
import { Acts } from './acts.tsx';
import { DoneLine } from './doneLine.tsx';

/** The phone's keys. They take no focus, so that a tool or pedal that types still writes into the field. */
export function BenchKeypad() {
  return (
    <div class="keypad">
      <DoneLine />
      <Acts />
      <fieldset class="keys">
        <legend class="hidden">Keypad</legend>
        <Digits of="789" />
        <Key act={eraseLast} small>
          Erase
        </Key>
        <Digits of="456" />
        {unitChoices.value.length > 0 ? (
          <Key act={nextUnit} small>
            {unitWords(unit.value)}
            <span>change unit</span>
          </Key>
        ) : (
          <Key act={() => typeInto('-')}>−</Key>
        )}
        <Digits of="123" />
        <Key act={() => void record()} tall>
          Record
          <span>Enter</span>
        </Key>
        <Key act={() => typeInto('.')}>
          .<span>or comma</span>
        </Key>
        <Digits of="0" />
        <Key act={fractionKey} small>
          a b/c
          <span>fraction</span>
        </Key>
      </fieldset>
    </div>
  );
}

function Digits({ of }: { of: string }) {
  return [...of].map((digit) => (
    <Key key={digit} act={() => typeInto(digit)}>
      {digit}
    </Key>
  ));
}

interface KeyProps {
  act: () => void;
  small?: boolean;
  tall?: boolean;
  children: ComponentChildren;
}

function Key({ act, small = false, tall = false, children }: KeyProps) {
  return (
    <button
      type="button"
      class={tall ? 'tall' : small ? 'small' : ''}
      onMouseDown={(event) => event.preventDefault()}
      onClick={act}
    >
      {children}
    </button>
  );
}
