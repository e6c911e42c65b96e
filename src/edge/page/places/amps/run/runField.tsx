import { useId } from 'preact/hooks';
import { ChoiceField } from '../../../parts/choiceField.tsx';
import type { AnswerName } from '../../../store/amps/runAnswers.ts';
import { answer, answers, answerTyped } from '../../../store/amps/running.ts';
import { withUnit } from '../../../store/amps/runTyped.ts';
import { typedNumber } from '../../../store/amps/typedNumber.ts';

interface RunFieldProps {
  name: AnswerName;
  label: string;
  unit: string;
  /** Said below; what is taken where the field is blank, for one that may be. */
  unknown?: string;
  /** `taken`: where the slider stands while the field is blank. */
  slider?: { least: number; most: number; step: number; taken?: number };
}

/** One answer about the run: typed, moved by a slider where that helps, or "I do not know". */
export function RunField({ name, label, unit, unknown, slider }: RunFieldProps) {
  const id = useId();
  const typed = answers.value[name];
  const value = typedNumber(withUnit(answers.value, name, typed)[name] ?? '');
  const wrong = typed.trim() !== '' && !Number.isFinite(value);
  return (
    <div class="edit run-field">
      <label for={id}>
        {label}
        {unit !== '' && <span class="unit">, {unit}</span>}
      </label>
      <div class="run-input">
        <input
          id={id}
          inputMode="decimal"
          autocomplete="off"
          value={typed}
          placeholder={unknown === undefined ? '' : 'I do not know'}
          aria-invalid={wrong ? 'true' : undefined}
          aria-describedby={unknown === undefined ? undefined : `${id}-unknown`}
          data-answer={name}
          onInput={(event) => answer({ [name]: event.currentTarget.value })}
          onChange={(event) => answerTyped(name, event.currentTarget.value)}
        />
        {unknown !== undefined && typed !== '' && (
          <button
            type="button"
            class="link"
            aria-label={`I do not know: ${label}`}
            onClick={() => answer({ [name]: '' })}
          >
            I do not know
          </button>
        )}
      </div>
      {slider !== undefined && (
        <input
          type="range"
          aria-label={`${label}, slider`}
          data-slider={name}
          min={slider.least}
          max={slider.most}
          step={slider.step}
          value={Number.isFinite(value) ? value : (slider.taken ?? slider.least)}
          onInput={(event) => answer({ [name]: event.currentTarget.value })}
        />
      )}
      {unknown !== undefined && (
        <p class="note" id={`${id}-unknown`}>
          {typed.trim() === '' ? `Not known: ${unknown} is taken.` : ''}
        </p>
      )}
    </div>
  );
}

interface RunChoiceProps {
  name: AnswerName;
  label: string;
  choices: readonly (readonly [value: string, shown: string])[];
}

/** One answer out of a list. */
export function RunChoice({ name, label, choices }: RunChoiceProps) {
  return (
    <ChoiceField
      look="run-field"
      label={label}
      value={answers.value[name]}
      data-answer={name}
      choices={choices}
      onChoose={(value) => answer({ [name]: value })}
    />
  );
}
