import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { refused, trouble, typed, write } from '../../store/bench/field.ts';
import { unitWords } from '../../store/bench/names.ts';
import { again } from '../../store/bench/questions.ts';
import { chooseTypedUnit, unit, unitChoices, unitTyped } from '../../store/bench/typedUnit.ts';
import { touch } from '../../store/media.ts';
import { fitWhole } from './fitWhole.ts';
import { FIELD } from './keys.ts';

/** The large field. On a phone the page's own keypad writes into it; a tool that types does so everywhere. */
export function ValueField({ act }: { act: BenchAct }) {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    // At once and not with the next picture: a tool that types is faster than that.
    const follow = effect(() => {
      const [text, again] = [typed.value, refused.value];
      const now = field.current;
      if (now === null) return;
      if (now.value !== text) now.value = text;
      fitWhole(now);
      if (again > 0) now.select();
    });
    field.current?.focus({ preventScroll: true });
    return follow;
  }, []);
  const trouble_ = trouble.value;
  return (
    <div class={trouble_ === '' ? 'value' : 'value wrong'}>
      <label for={FIELD}>{repeatWords(act)}</label>
      <div class="typed-value">
        <input
          id={FIELD}
          ref={field}
          type="text"
          inputMode={touch.value ? 'none' : 'decimal'}
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          enterkeyhint="done"
          aria-invalid={trouble_ !== ''}
          aria-describedby={trouble_ === '' ? undefined : 'bench-trouble'}
          onInput={(event) => write(event.currentTarget.value)}
        />
        <UnitChoice />
      </div>
      {trouble_ !== '' && (
        <p id="bench-trouble" class="trouble">
          {trouble_}
        </p>
      )}
    </div>
  );
}

/** The unit beside the figure: the one chosen, or the one that was typed behind the number and counts before it. */
function UnitChoice() {
  const choices = unitChoices.value;
  if (unitTyped.value !== '') return <span class="unit">{unitTyped.value}</span>;
  if (choices.length === 0) return null;
  const now = unit.value;
  const listed = choices.some((each) => unitWords(each) === unitWords(now)) ? choices : [now, ...choices];
  return (
    <select
      class="unit"
      aria-label="Unit of what is typed"
      value={listed.find((each) => unitWords(each) === unitWords(now))}
      onChange={(event) => chooseTypedUnit(event.currentTarget.value)}
    >
      {listed.map((each) => (
        <option key={each} value={each}>
          {unitWords(each)}
        </option>
      ))}
    </select>
  );
}

function repeatWords({ item, repeat }: BenchAct): string {
  const replaced = again.value;
  if (replaced !== null && replaced.specimen === item.specimen && replaced.quantity === item.quantity)
    return `In place of ${replaced.shown}`;
  if (repeat <= item.wanted) return item.wanted === 1 ? 'The one reading' : `Reading ${repeat} of ${item.wanted}`;
  return item.wanted === 0 ? `Reading ${repeat}` : `Reading ${repeat}, ${item.wanted} were wanted`;
}
