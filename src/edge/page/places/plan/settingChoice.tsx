import { ChoiceField } from '../../parts/choiceField.tsx';
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
  const now = settings[name] ?? '';
  return (
    <ChoiceField
      label={label}
      value={choices.some(([value]) => value === now) ? now : ''}
      choices={choices}
      onChoose={(value) => void saySetting(name, value)}
    />
  );
}
