import { type ComponentChildren, Fragment } from 'preact';
import { narrow } from '../store/media.ts';
import { Name } from './name.tsx';
import { NOT_MEASURED } from './notMeasured.tsx';

/** One column of the table, or one line of a block. */
export interface CableColumn<C> {
  id: string;
  head: string;
  unit: string;
  /** True where the cells are words, which stand on the left and break. */
  words?: boolean;
  /** null where it was not found. */
  cell: (cable: C) => ComponentChildren | null;
}

interface OpeningCablesProps<C> {
  /** The subject, in one word: it names the sheets to the reader of the screen, and the table to the styles. */
  subject: string;
  caption: string;
  cables: readonly C[];
  columns: readonly CableColumn<C>[];
  /** The cable whose sheet is open. */
  open: string | null;
  onOpen: (cable: string | null) => void;
  sheet: (cable: C) => ComponentChildren;
}

/** Class of the row or block whose sheet is open. */
export const OPEN_SHEET = 'sheet-open';

/** The cables with their figures under one subject: a table, or blocks where it has no room. Each opens to what it leans on. */
export function OpeningCables<C extends { cable: string; name: string }>(props: OpeningCablesProps<C>) {
  if (props.cables.length === 0) return null;
  return (
    <>
      <h2 class="hidden">Cable by cable</h2>
      {narrow.value ? <Blocks {...props} /> : <Table {...props} />}
    </>
  );
}

function Blocks<C extends { cable: string; name: string }>(props: OpeningCablesProps<C>) {
  const { subject, cables, columns, open, sheet } = props;
  return (
    <ul class={`blocks opening ${subject}-cables`}>
      {cables.map((cable, place) => (
        <li key={cable.cable} class={openClass(open === cable.cable)}>
          <Turn {...props} cable={cable} id={`${subject}-${place}`} />
          <dl class="figures">
            {columns
              .map((column) => ({ ...column, shown: column.cell(cable) }))
              .filter(({ shown }) => shown !== null)
              .map(({ id, head, unit, shown }) => (
                <div key={id}>
                  <dt>
                    {head} {unit}
                  </dt>
                  <dd>{shown}</dd>
                </div>
              ))}
          </dl>
          {open === cable.cable && <div id={`${subject}-${place}`}>{sheet(cable)}</div>}
        </li>
      ))}
    </ul>
  );
}

function Table<C extends { cable: string; name: string }>(props: OpeningCablesProps<C>) {
  const { subject, caption, cables, columns, open, sheet } = props;
  return (
    <table class={`cables opening ${subject}-cables`}>
      <caption class="hidden">{caption}</caption>
      <colgroup>
        <col class={`${subject}-cable`} />
        {columns.map(({ id }) => (
          <col key={id} class={`${subject}-${id}`} />
        ))}
      </colgroup>
      <thead>
        <tr>
          <th scope="col">Cable</th>
          {columns.map(({ id, head, unit, words }) => (
            <th key={id} scope="col" class={words ? '' : 'number'}>
              {head}
              {unit !== '' && <br />}
              {unit}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {cables.map((cable, place) => (
          <Fragment key={cable.cable}>
            <tr class={openClass(open === cable.cable)}>
              <th scope="row">
                <Turn {...props} cable={cable} id={`${subject}-${place}`} />
              </th>
              {columns.map(({ id, words, cell }) => (
                <td key={id} class={words ? 'words' : 'number'}>
                  {cell(cable) ?? NOT_MEASURED}
                </td>
              ))}
            </tr>
            {open === cable.cable && (
              <tr class="sheet-row" id={`${subject}-${place}`}>
                <td colSpan={columns.length + 1}>{sheet(cable)}</td>
              </tr>
            )}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}

const openClass = (open: boolean) => (open ? `open ${OPEN_SHEET}` : '');

interface TurnProps {
  cable: { cable: string; name: string };
  /** Of the sheet. */
  id: string;
  open: string | null;
  onOpen: (cable: string | null) => void;
}

function Turn({ cable: { cable, name }, id, open, onOpen }: TurnProps) {
  const isOpen = open === cable;
  return (
    <button
      type="button"
      class="turn"
      aria-expanded={isOpen}
      aria-controls={isOpen ? id : undefined}
      onClick={() => onOpen(isOpen ? null : cable)}
    >
      <Name>{name || cable}</Name>
    </button>
  );
}
