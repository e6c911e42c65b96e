import { useId } from 'preact/hooks';
import { saySetting } from '../../store/plan/settings.ts';

interface SettingChoiceProps {
  settings: Readonly<Record<string, string>>;
  name: string;
  label: string;
  /** `[value, words]`; the first with a blank value is the default. */
  choices: readonly (readonly [string, string])[];
}

/** One setting of the plan out of a closed list. */
export function SettingChoice({ settings, name, label, choices }: SettingChoiceProps) {
  const id = useId();
  const now = settings[name] ?? '';
  return (
    <div class="edit">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={choices.some(([value]) => value === now) ? now : ''}
        onChange={(event) => void saySetting(name, event.currentTarget.value)}
      >
        {choices.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
