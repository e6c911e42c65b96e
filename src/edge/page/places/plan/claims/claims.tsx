import { useState } from 'preact/hooks';
import { cellDoubt } from '../../../../../findings/plan/cellDoubts.ts';
import type { Cable, Trial } from '../../../../../trial/trial.ts';
import { AsideList } from '../../../parts/asideList.tsx';
import { EditField } from '../../../parts/editField.tsx';
import { Name } from '../../../parts/name.tsx';
import { PutAside } from '../../../parts/putAside.tsx';
import { addCable, pastedText, sameAsAbove, unnamedCables } from '../../../store/plan/cables.ts';
import type { Row } from '../../../store/plan/correct.ts';
import { PlanSection } from '../planSection.tsx';
import { MAIN_COLUMNS, MORE_COLUMNS } from './claimColumns.ts';
import { PasteRows } from './pasteRows.tsx';

/** The cables with what their labels claim and what was paid, as a table to type in. */
export function Claims({ trial }: { trial: Trial }) {
  const [open, setOpen] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const unnamed = unnamedCables(trial).length;
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!/[\t\n]./.test(text.trim())) return;
    event.preventDefault();
    pastedText.value = text;
    setSaid('');
  };
  return (
    <PlanSection
      id="claims"
      class="claims-plan"
      title="Cables, and what their labels claim"
      state={`${trial.cables.length}${unnamed === 0 ? '' : `, ${unnamed} without a name`}`}
      next={trial.cables.length === 0 || unnamed > 0}
    >
      <p class="note">
        Type what the label says, word for word. A ditto mark (") takes the cell above; Enter and the arrows go up and
        down a column. What was typed stays on record; a correction is a new entry.
      </p>
      {trial.cables.length > 0 && (
        <table class="grid claims-grid" data-grid onPaste={paste}>
          <colgroup>
            <col class="turn-column" />
            {MAIN_COLUMNS.map(({ column }) => (
              <col key={column} class={column} />
            ))}
            <col class="act-column" />
          </colgroup>
          <thead>
            <tr>
              <td />
              {MAIN_COLUMNS.map(({ column, label }) => (
                <th key={column} scope="col">
                  {label}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {trial.cables.map((cable, i) => (
              <CableRows
                key={cable.cable}
                cable={cable}
                above={trial.cables[i - 1] ?? null}
                open={open === cable.cable}
                onTurn={() => setOpen(open === cable.cable ? null : cable.cable)}
                onSaid={setSaid}
              />
            ))}
          </tbody>
        </table>
      )}
      <AsideList trial={trial} kind="cable" nameOf={cableName} />
      <div class="buttons">
        <button type="button" class="button" onClick={() => void addCable(trial)}>
          Add a cable
        </button>
      </div>
      <PasteRows trial={trial} said={said} onSaid={setSaid} />
    </PlanSection>
  );
}

const cableName = ({ maker = '', model = '', cable = '' }: Row) =>
  [maker, model].filter((words) => words !== '').join(' ') || cable;

interface CableRowsProps {
  cable: Cable;
  above: Cable | null;
  open: boolean;
  onTurn: () => void;
  onSaid: (sentence: string) => void;
}

/** Said on a folded row: a cell in it has a mark. */
const doubted = ({ row }: Cable) =>
  MAIN_COLUMNS.some(({ column }) => cellDoubt(row, column) !== '') ? 'something in it cannot be read' : '';

function CableRows({ cable, above, open, onTurn, onSaid }: CableRowsProps) {
  const sheet = `more-${cable.entry}`;
  const fill = async () => {
    const filled = above === null ? 0 : await sameAsAbove(cable.row, above.row);
    onSaid(filled === 0 ? 'Nothing was blank that the row above says.' : `${filled} blanks filled from the row above.`);
  };
  return (
    <>
      <tr class={open ? 'open' : ''}>
        <td class="turn-cell">
          <button
            type="button"
            class="turn"
            aria-expanded={open}
            aria-controls={open ? sheet : undefined}
            aria-label={`More of ${cable.name}`}
            onClick={onTurn}
          />
          <span class="whose" aria-hidden="true">
            <Name>{cable.name}</Name>
            <span class="note" dir="auto">
              {[cable.label.size, cable.label.metal, doubted(cable)].filter((text) => text !== '').join(', ')}
            </span>
          </span>
        </td>
        {MAIN_COLUMNS.map((each) => (
          <td key={each.column} data-label={each.label}>
            <EditField
              kind="cable"
              row={cable.row}
              above={above?.row ?? null}
              of={cable.name}
              inTable
              {...each}
              example={above === null && each.example !== undefined ? each.example : undefined}
            />
          </td>
        ))}
        <td class="act">
          {above !== null && (
            <button
              type="button"
              class="link"
              aria-label={`Blanks of ${cable.name} as above`}
              onClick={() => void fill()}
            >
              as above
            </button>
          )}
        </td>
      </tr>
      {open && (
        <tr class="sheet-row">
          <td colSpan={MAIN_COLUMNS.length + 2} id={sheet} class="sheet-cell">
            <div class="three">
              {MORE_COLUMNS.map(({ name, columns }) => (
                <div key={name}>
                  <h3>{name}</h3>
                  {columns.map((each) => (
                    <EditField key={each.column} kind="cable" row={cable.row} {...each} />
                  ))}
                </div>
              ))}
            </div>
            <PutAside
              about="cable"
              which={cable.cable}
              name={cable.name}
              along="Its pieces and everything read on them go with it."
            />
          </td>
        </tr>
      )}
    </>
  );
}
