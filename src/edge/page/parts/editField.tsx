import { useId, useState } from 'preact/hooks';
import { isDitto } from '../../../findings/pasted/pastedColumns.ts';
import { cellDoubt } from '../../../findings/plan/cellDoubts.ts';
import type { EntryKind } from '../../../journal/entry.ts';
import { cellChanges, cellText, takenApart } from '../store/plan/cellText.ts';
import { correctRow, latestRow, type Row, troubleSentence } from '../store/plan/correct.ts';
import { stepInColumn } from './stepInColumn.ts';
import { FieldTrouble } from './trouble.tsx';

interface EditFieldProps {
  kind: EntryKind;
  /** The row as it stands; the field shows and corrects one cell of it. */
  row: Row;
  column: string;
  label: string;
  /** What it is of, said with the label where a whole column has the same: the cable's name. */
  of?: string;
  /** True in a table, whose head shows the label. */
  inTable?: boolean;
  hint?: string;
  example?: string;
  /** A closed list, `[value, shown]`; the field is then a choice. */
  choices?: readonly (readonly [string, string])[];
  /** Words that are offered but need not be taken. */
  words?: readonly string[];
  /** Row above, whose cell a ditto mark stands for. */
  above?: Row | null;
}

/**
 * One cell of a row on record. Typing changes nothing but the field; leaving it, or Enter, says the corrected row. What cannot
 * be taken stays in the field, with what was found and what was expected under it.
 */
export function EditField(props: EditFieldProps) {
  const { kind, row, column, label, of = '', inTable = false, hint = '', choices, above = null } = props;
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [refused, setRefused] = useState('');
  /** How a text was understood that went into several cells. */
  const [told, setTold] = useState('');
  // What is kept though nothing can be made of it has its mark for as long as it stands.
  const trouble = refused || (kind === 'cable' && draft === null ? cellDoubt(row, column) : '');
  const shown = draft ?? cellText(kind, row, column);
  const commit = async (typed: string) => {
    const meant = () => (above !== null && isDitto(typed) ? cellText(kind, latestRow(kind, above), column) : typed);
    const troubles = await correctRow(kind, row, (now) => cellChanges(kind, now, column, meant()));
    const first = troubles === null ? undefined : (troubles[column] ?? Object.values(troubles)[0]);
    setRefused(first === undefined ? '' : troubleSentence(first));
    if (first !== undefined) return;
    setDraft(null);
    setTold(takenApart(kind, column, typed));
  };
  const common = {
    id,
    'data-column': column,
    'aria-label': inTable ? (of === '' ? label : `${label}, ${of}`) : undefined,
    'aria-invalid': trouble === '' ? undefined : ('true' as const),
    'aria-describedby': trouble === '' ? undefined : `${id}-trouble`,
  };
  return (
    <div class={inTable ? 'edit in-table' : 'edit'}>
      {!inTable && (
        <label for={id}>
          {label}
          {hint !== '' && <span class="hint">{hint}</span>}
        </label>
      )}
      {choices === undefined ? (
        <input
          {...common}
          value={shown}
          placeholder={props.example}
          list={props.words === undefined ? undefined : `${id}-words`}
          autocomplete="off"
          spellcheck={false}
          dir="auto"
          onInput={(event) => setDraft(event.currentTarget.value)}
          onChange={(event) => void commit(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape' && draft !== null) {
              setDraft(null);
              setRefused('');
            } else stepInColumn(event);
          }}
        />
      ) : (
        <select {...common} value={shown} onChange={(event) => void commit(event.currentTarget.value)}>
          {choices.some(([value]) => value === shown) ? null : <option value={shown}>{shown}</option>}
          {choices.map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      )}
      {props.words !== undefined && (
        <datalist id={`${id}-words`}>
          {props.words.map((word) => (
            <option key={word} value={word} />
          ))}
        </datalist>
      )}
      {trouble === '' && told !== '' && (
        <p class="note" role="status">
          {told}
        </p>
      )}
      <FieldTrouble field={id}>{trouble}</FieldTrouble>
    </div>
  );
}
