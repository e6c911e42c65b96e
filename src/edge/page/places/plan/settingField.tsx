import { useId, useState } from 'preact/hooks';
import { FieldTrouble } from '../../parts/trouble.tsx';
import { troubleSentence } from '../../store/plan/correct.ts';
import { keptSetting, type SettingKind, saySetting, shownSetting } from '../../store/plan/settings.ts';

interface SettingFieldProps {
  settings: Readonly<Record<string, string>>;
  name: string;
  kind: SettingKind;
  label: string;
  hint?: string;
  /** What counts while the field is blank. */
  usual: string;
}

/** One setting of the plan in a field; blank stands for the usual, which is shown in its place. */
export function SettingField({ settings, name, kind, label, hint = '', usual }: SettingFieldProps) {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [trouble, setTrouble] = useState('');
  const commit = async (typed: string) => {
    const kept = keptSetting(kind, typed);
    const refused = kept.ok ? await saySetting(name, kept.value) : { value: kept.trouble };
    const first = Object.values(refused ?? {})[0];
    setTrouble(first === undefined ? '' : troubleSentence(first));
    if (first === undefined) setDraft(null);
  };
  return (
    <div class="edit">
      <label for={id}>
        {label}
        {hint !== '' && <span class="hint">{hint}</span>}
      </label>
      <input
        id={id}
        value={draft ?? shownSetting(kind, settings[name] ?? '')}
        placeholder={usual}
        autocomplete="off"
        aria-invalid={trouble === '' ? undefined : 'true'}
        aria-describedby={trouble === '' ? undefined : `${id}-trouble`}
        onInput={(event) => setDraft(event.currentTarget.value)}
        onChange={(event) => void commit(event.currentTarget.value)}
      />
      <FieldTrouble field={id}>{trouble}</FieldTrouble>
    </div>
  );
}
