import { useId, useState } from 'preact/hooks';
import type { Trial } from '../../../../../trial/trial.ts';
import { numberWordFirst } from '../../../../../units/numberWords.ts';
import {
  addPasted,
  fillUnnamed,
  type PastedReady,
  pasted,
  pastedText,
  unnamedCables,
} from '../../../store/plan/cables.ts';

interface PasteRowsProps {
  trial: Trial;
  said: string;
  onSaid: (sentence: string) => void;
}

/** Rows out of a spreadsheet: how they were understood, what was refused, and the button that adds them. */
export function PasteRows({ trial, said, onSaid }: PasteRowsProps) {
  const id = useId();
  const ready = pasted.value;
  const [open, setOpen] = useState(false);
  const add = async () => {
    const { added, left } = await addPasted();
    const there = added === 1 ? 'One row is in the table' : `${numberWordFirst(added)} rows are in the table`;
    onSaid(left === 0 ? `${there}.` : `${there}; ${left === 1 ? 'one stays' : `${left} stay`} here to be put right.`);
  };
  return (
    <details class="paste" open={open || ready !== null} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Paste rows from a spreadsheet</summary>
      <label for={id}>
        Rows, with their headings or without
        <span class="hint">
          Columns are told by headings such as maker, size, metal, length, price; pasting into the table does the same.
        </span>
      </label>
      <textarea
        id={id}
        rows={4}
        value={pastedText.value}
        spellcheck={false}
        dir="auto"
        onInput={(event) => {
          pastedText.value = event.currentTarget.value;
        }}
      />
      {ready !== null && <Ready ready={ready} trial={trial} onAdd={add} />}
      <p role="status">{said}</p>
    </details>
  );
}

function Ready({ ready, trial, onAdd }: { ready: PastedReady; trial: Trial; onAdd: () => Promise<void> }) {
  const { rows, refused, columns, filling, said } = ready;
  const id = useId();
  const unnamed = unnamedCables(trial).length;
  const known = columns.filter((column) => column !== null);
  return (
    <div class="pasted" role="status">
      {known.length > 0 && (
        <p class="note">
          Columns understood: {columns.map((column) => column?.replaceAll('_', ' ') ?? '(passed over)').join(', ')}.
        </p>
      )}
      {said.map((how) => (
        <p key={how} class="note" dir="auto">
          {how}
        </p>
      ))}
      {refused.length > 0 && (
        <ul class="refused">
          {refused.map(({ line, column, found, expected, advice = '' }) => (
            <li key={`${line} ${column} ${found}`}>
              <b>
                Row {line}
                {column !== '' && `, ${column.replaceAll('_', ' ')}`}.
              </b>{' '}
              <span dir="auto">
                Found {found}; expected {expected}. {advice}
              </span>
            </li>
          ))}
        </ul>
      )}
      {unnamed > 0 && rows.length > 0 && (
        <div class="tick">
          <input
            type="checkbox"
            id={id}
            checked={fillUnnamed.value}
            onChange={(event) => {
              fillUnnamed.value = event.currentTarget.checked;
            }}
          />
          <label for={id}>Fill the {unnamed === 1 ? 'cable' : `${unnamed} cables`} that nobody has named yet</label>
        </div>
      )}
      <div class="buttons">
        <button type="button" class="button main" disabled={rows.length === 0} onClick={() => void onAdd()}>
          {buttonWords(rows.length, filling)}
        </button>
        <button
          type="button"
          class="button"
          onClick={() => {
            pastedText.value = '';
          }}
        >
          Let it go
        </button>
      </div>
    </div>
  );
}

function buttonWords(rows: number, filling: number): string {
  if (rows === 0) return 'No row can be added';
  const all = rows === 1 ? 'row' : 'rows';
  return filling === rows ? `Fill in ${rows} ${all}` : `Add ${rows} ${all}`;
}
