import { useId } from 'preact/hooks';

interface SwitchProps<T extends string> {
  /** What is chosen, for those who hear the page. */
  legend: string;
  choices: readonly (readonly [value: T, shown: string, spoken: string])[];
  value: T;
  onChoose: (value: T) => void;
}

/** A choice of one among a few, from native radio buttons. */
export function Switch<T extends string>({ legend, choices, value, onChoose }: SwitchProps<T>) {
  const name = useId();
  return (
    <fieldset class="switch">
      <legend class="hidden">{legend}</legend>
      {choices.map(([choice, shown, spoken]) => (
        <label key={choice}>
          <input
            type="radio"
            name={name}
            value={choice}
            checked={choice === value}
            aria-label={spoken}
            onChange={() => onChoose(choice)}
          />
          <span aria-hidden="true">{shown}</span>
        </label>
      ))}
    </fieldset>
  );
}
