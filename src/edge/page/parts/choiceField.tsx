import { useId } from 'preact/hooks';

interface ChoiceFieldProps {
  label: string;
  value: string;
  choices: readonly (readonly [value: string, shown: string])[];
  onChoose: (value: string) => void;
  /** Where the field has a name of its own. */
  id?: string;
  /** A class beside that of every field. */
  look?: string;
  /** The answer that it gives, for who looks it up. */
  'data-answer'?: string;
}

/** One out of a list, below its label. */
export function ChoiceField({ label, value, choices, onChoose, id, look, 'data-answer': answer }: ChoiceFieldProps) {
  const own = useId();
  const field = id ?? own;
  return (
    <div class={look === undefined ? 'edit' : `edit ${look}`}>
      <label for={field}>{label}</label>
      <select id={field} value={value} data-answer={answer} onChange={(event) => onChoose(event.currentTarget.value)}>
        {choices.map(([choice, shown]) => (
          <option key={choice} value={choice}>
            {shown}
          </option>
        ))}
      </select>
    </div>
  );
}
