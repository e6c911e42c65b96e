import { useComputed } from '@preact/signals';
import { Component } from 'preact';
import { useMemo } from 'preact/hooks';
import { shelfKey } from '../../../../findings/across/shelfCables.ts';
import type { ShelfCable } from '../../../../findings/shapes/shelf.ts';
import { ChoiceField } from '../../parts/choiceField.tsx';
import { Name } from '../../parts/name.tsx';
import { choose, chosenKeys } from '../../store/across/chosenCables.ts';
import { asked, found, type Order, order, orderBy } from '../../store/across/findCables.ts';
import { narrow } from '../../store/media.ts';
import { addressOf } from '../../store/routeOf.ts';
import { units } from '../../store/units.ts';
import { type ListColumn, listColumns } from './listColumns.tsx';
import { useWindow } from './useWindow.ts';

/** Height of a row, px: of the table, and of a block where the table has no room. Fixed, so that only rows in sight are drawn. */
const ROW = 56;
const BLOCK = 132;

/** The cables that are looked for. However many there are, only those near what is in sight stand in the page. */
export function CableList() {
  const taken = useComputed(() => new Set(chosenKeys.value));
  const rows = found.value;
  if (rows.length === 0) return <p class="none-found">No cable is like that. Ask for less, or for another word.</p>;
  return narrow.value ? <Blocks chosen={taken.value} /> : <Table chosen={taken.value} />;
}

function Table({ chosen }: { chosen: ReadonlySet<string> }) {
  const rows = found.value;
  const { frame, onScroll, first, end } = useWindow(rows.length, ROW, asked.value);
  const columns = useMemo(() => listColumns(units.value), [units.value]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached without a pointer
    <section class="window" aria-label="Cables of all trials" tabIndex={0} ref={frame} onScroll={onScroll}>
      <table class="found" aria-rowcount={rows.length + 1}>
        <thead>
          <tr aria-rowindex={1}>
            <th scope="col">
              <span class="hidden">Chosen</span>
            </th>
            <Head id="name" head="Cable" unit="and its trial" words order={order.value} />
            {columns.map((column) => (
              <Head key={column.id} {...column} order={order.value} />
            ))}
          </tr>
        </thead>
        <tbody style={{ blockSize: `${rows.length * ROW}px` }}>
          {rows.slice(first, end).map(({ line }, place) => (
            <TableRow
              key={shelfKey(line)}
              line={line}
              place={first + place}
              chosen={chosen.has(shelfKey(line))}
              columns={columns}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Rows stand at their places by themselves: none of the others is laid out anew when one comes or goes. */
const placedAt = (place: number, rowHeight: number) => ({ transform: `translateY(${place * rowHeight}px)` });

interface RowProps {
  line: ShelfCable;
  /** Its number among all cables, from 0. */
  place: number;
  chosen: boolean;
  columns: readonly ListColumn[];
}

/** One row; while the list scrolls, those that stay are left as they are. */
class TableRow extends Component<RowProps> {
  override shouldComponentUpdate(next: RowProps): boolean {
    const { line, place, chosen, columns } = this.props;
    return line !== next.line || place !== next.place || chosen !== next.chosen || columns !== next.columns;
  }

  override render({ line, place, chosen, columns }: RowProps) {
    return (
      <tr aria-rowindex={place + 2} class={chosen ? 'chosen' : ''} style={placedAt(place, ROW)}>
        <td>
          <Choose line={line} chosen={chosen} />
        </td>
        <th scope="row">
          <CableAndTrial line={line} />
        </th>
        {columns.map(({ id, words, cell }) => (
          <td key={id} class={words ? 'words' : 'number'}>
            {cell(line)}
          </td>
        ))}
      </tr>
    );
  }
}

function Head({
  id,
  head,
  unit,
  words,
  order: now,
}: Pick<ListColumn, 'id' | 'head' | 'unit' | 'words'> & { order: Order }) {
  const by = now.by === id;
  return (
    <th
      scope="col"
      class={words ? '' : 'number'}
      aria-sort={by ? (now.falling ? 'descending' : 'ascending') : undefined}
    >
      <button type="button" onClick={() => orderBy(id)}>
        {head}
        <span class="way" aria-hidden="true">
          {by ? (now.falling ? '↓' : '↑') : ''}
        </span>
        {unit !== '' && <small>{unit}</small>}
      </button>
    </th>
  );
}

function Choose({ line, chosen }: { line: ShelfCable; chosen: boolean }) {
  const key = shelfKey(line);
  return (
    <input
      type="checkbox"
      checked={chosen}
      aria-label={`Choose ${line.name || line.cable} of ${line.title || line.trial}`}
      onChange={(event) => choose(key, event.currentTarget.checked)}
    />
  );
}

function CableAndTrial({ line }: { line: ShelfCable }) {
  const { trial, cable, name, title, state, lot, shared_name: shared, role, supplied } = line;
  const said = [
    role === 'compared' ? '' : role === 'control' ? 'control piece' : 'reference',
    state === 'blind' ? 'blind: by its code' : '',
    lot === '' ? '' : `lot ${lot}`,
    shared === '' ? '' : `known as ${shared}`,
    supplied === true ? 'supplied' : '',
    title || trial,
  ]
    .filter((words) => words !== '')
    .join(', ');
  return (
    <>
      <a class="one-line" href={addressOf({ place: 'inside', trial, cable })} title={name || cable}>
        <Name>{name || cable}</Name>
      </a>
      <span class="note one-line" title={said}>
        <bdi dir="auto">{said}</bdi>
      </span>
    </>
  );
}

/** The same where a table has no room: a block of fixed height for each. */
function Blocks({ chosen }: { chosen: ReadonlySet<string> }) {
  const rows = found.value;
  const { frame, onScroll, first, end } = useWindow(rows.length, BLOCK, asked.value);
  const columns = listColumns(units.value);
  const shown = columns.filter(({ inBlock }) => inBlock);
  return (
    <>
      <ChoiceField
        id="find-order"
        look="order"
        label="In the order of"
        value={order.value.by}
        choices={[['name', 'Cable'], ...columns.map(({ id, head }) => [id, head] as const)]}
        onChoose={(by) => {
          order.value = { by, falling: by !== 'name' && by !== 'price' };
        }}
      />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached without a pointer */}
      <section class="window" aria-label="Cables of all trials" tabIndex={0} ref={frame} onScroll={onScroll}>
        <ul style={{ blockSize: `${rows.length * BLOCK}px` }}>
          {rows.slice(first, end).map(({ line }, place) => (
            <li
              key={shelfKey(line)}
              class={chosen.has(shelfKey(line)) ? 'found-block chosen' : 'found-block'}
              style={placedAt(first + place, BLOCK)}
              aria-setsize={rows.length}
              aria-posinset={first + place + 1}
            >
              <Choose line={line} chosen={chosen.has(shelfKey(line))} />
              <div>
                <CableAndTrial line={line} />
                <p>
                  <bdi dir="auto">{line.label.size}</bdi>
                  {shown.map(({ id, cell, inBlockCell = cell }) => (
                    <span key={id} class={id}>
                      {inBlockCell(line)}
                    </span>
                  ))}
                </p>
              </div>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
