import { Fragment } from 'preact';
import type { CableFindings, Findings } from '../../../../findings/schema.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { chartOf } from '../../parts/chartOf.ts';
import { IntervalAxis, IntervalRow } from '../../parts/intervals.tsx';
import { Name } from '../../parts/name.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { units } from '../../store/units.ts';
import { CableSheet } from './cableSheet.tsx';
import { columnsFor } from './columns.tsx';
import { turnCable } from './openCables.ts';

interface CablesProps {
  findings: Findings;
  cables: readonly CableFindings[];
  readings: readonly Reading[];
  open: ReadonlySet<string>;
}

/** Width of the chart before it has been measured, px. */
const FIRST_CHART = 266;

/** The cables as one table, with the intervals drawn on one axis; each row opens to the cable's sheet. */
export function CableTable({ findings, cables, readings, open }: CablesProps) {
  const [chartHead, width] = useWidth<HTMLDivElement>(FIRST_CHART);
  const { area, rest } = columnsFor(cables, units.value);
  const chart = chartOf(cables, width, units.value);
  const columns = 3 + rest.length;
  return (
    <table class="cables">
      <caption class="hidden">What was found in each cable</caption>
      <colgroup>
        <col class="cable" />
        <col class={area.id} />
        <col class="chart" />
        {rest.map((column) => (
          <col key={column.id} class={column.id} />
        ))}
      </colgroup>
      <thead>
        <tr>
          <th scope="col">Cable</th>
          <th scope="col" class="number">
            {area.head}
            <br />
            {area.unit}
          </th>
          <th scope="col" class="chart">
            <span class="hidden">Interval against the limit</span>
            <div ref={chartHead}>
              <IntervalAxis chart={chart} />
            </div>
          </th>
          {rest.map((column) => (
            <th key={column.id} scope="col" class={column.number ? 'number' : ''}>
              {column.head}
              <br />
              {column.unit}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {cables.map((cable, index) => (
          <Fragment key={cable.cable}>
            <tr class={open.has(cable.cable) ? 'open' : ''}>
              <th scope="row">
                <Turn cable={cable} index={index} open={open.has(cable.cable)} />
              </th>
              <td class="number key">{area.cells[index]}</td>
              <td class="chart">
                <IntervalRow chart={chart} cable={cable} />
              </td>
              {rest.map((column) => (
                <td key={column.id} class={column.number ? 'number' : ''}>
                  {column.cells[index]}
                </td>
              ))}
            </tr>
            {open.has(cable.cable) && (
              <tr class="sheet-row" id={sheetId(index)}>
                <td colSpan={columns}>
                  <CableSheet findings={findings} cable={cable} readings={readings} />
                </td>
              </tr>
            )}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}

/** The id of the sheet of the cable at this place; not made of its name, which may hold anything. */
export const sheetId = (index: number) => `sheet-${index}`;

/** The name of a cable as the handle that opens and closes its sheet. */
export function Turn({ cable, index, open }: { cable: CableFindings; index: number; open: boolean }) {
  return (
    <button
      type="button"
      class="turn"
      aria-expanded={open}
      aria-controls={open ? sheetId(index) : undefined}
      onClick={() => turnCable(cable.cable)}
    >
      <Name>{cable.name || cable.cable}</Name>
    </button>
  );
}
