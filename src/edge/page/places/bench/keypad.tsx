import type { ComponentChildren } from 'preact';
import { clearField, eraseLast, nextUnit, typed, typeInto, unit, unitChoices } from '../../store/bench/field.ts';
import { unitWords } from '../../store/bench/names.ts';
import { record } from '../../store/bench/record.ts';
import { Acts } from './acts.tsx';

/** The phone's keys. They take no focus, so that a tool or pedal that types still writes into the field. */
export function BenchKeypad() {
  return (
    <div class="keypad">
      <Acts />
      <fieldset class="keys">
        <legend class="hidden">Keypad</legend>
        <Digits of="789" />
        <Key name="Erase" act={typed.value === '' ? clearField : eraseLast} small>
          Erase
        </Key>
        <Digits of="456" />
        {unitChoices.value.length > 0 ? (
          <Key name={`Unit ${unitWords(unit.value)}, change`} act={nextUnit} small>
            {unitWords(unit.value)}
            <span>change unit</span>
          </Key>
        ) : (
          <Key name="Minus" act={() => typeInto('-')}>
            −
          </Key>
        )}
        <Digits of="123" />
        <Key name="Record" act={() => void record()} tall>
          Record
          <span>Enter</span>
        </Key>
        <Key name="Point" act={() => typeInto('.')}>
          .<span>or comma</span>
        </Key>
        <Digits of="0" />
        <Key name="Fraction" act={() => typeInto(partOfFraction(typed.value))} small>
          a b/c
          <span>fraction</span>
        </Key>
      </fieldset>
    </div>
  );
}

/** `1` then the key gives `1 `, for `1 3`; the next press gives the stroke: `1 3/`. */
function partOfFraction(text: string): string {
  if (text === '' || text.includes('/')) return '';
  return /\s\d+$/.test(text) ? '/' : /\s$/.test(text) ? '' : ' ';
}

function Digits({ of }: { of: string }) {
  return [...of].map((digit) => (
    <Key key={digit} name={digit} act={() => typeInto(digit)}>
      {digit}
    </Key>
  ));
}

interface KeyProps {
  name: string;
  act: () => void;
  small?: boolean;
  tall?: boolean;
  children: ComponentChildren;
}

function Key({ name, act, small = false, tall = false, children }: KeyProps) {
  return (
    <button
      type="button"
      class={tall ? 'tall' : small ? 'small' : ''}
      aria-label={name}
      onMouseDown={(event) => event.preventDefault()}
      onClick={act}
    >
      {children}
    </button>
  );
}
