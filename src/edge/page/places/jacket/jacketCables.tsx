import { Fragment } from 'preact';
import type { Findings } from '../../../../findings/schema.ts';
import type { Jacket, JacketCable } from '../../../../findings/shapes/jacket.ts';
import { Name } from '../../parts/name.tsx';
import { openInJacket } from '../../store/jacket/openInJacket.ts';
import { narrow } from '../../store/media.ts';
import { NOTHING } from '../bend/bendColumns.tsx';
import { jacketColumns } from './jacketColumns.tsx';
import { JacketSheet } from './jacketSheet.tsx';

interface CablesProps {
  trial: string;
  findings: Findings;
  jacket: Jacket;
  open: string | null;
}

/** The jackets with their figures; each opens to what they lean on. */
export function JacketCables({ trial, findings, jacket, open }: CablesProps) {
  const cables = jacket.cables.filter((c) => c.role !== 'control');
  if (cables.length === 0) return null;
  const columns = jacketColumns(cables);
  const sheet = (cable: JacketCable) => (
    <JacketSheet key={cable.cable} cable={cable} jacket={jacket} findings={findings} />
  );
  const turn = (cable: JacketCable, place: number) => (
    <button
      type="button"
      class="turn"
      aria-expanded={open === cable.cable}
      aria-controls={open === cable.cable ? `jacket-${place}` : undefined}
      onClick={() =>
        openInJacket(trial, open === cable.cable ? { what: 'nothing' } : { what: 'cable', cable: cable.cable })
      }
    >
      <Name>{cable.name || cable.cable}</Name>
    </button>
  );
  return (
    <>
      <h2 class="hidden">Cable by cable</h2>
      {narrow.value ? (
        <ul class="blocks jacketed">
          {cables.map((cable, place) => (
            <li key={cable.cable} class={open === cable.cable ? 'open jacket-open' : ''}>
              {turn(cable, place)}
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
              {open === cable.cable && <div id={`jacket-${place}`}>{sheet(cable)}</div>}
            </li>
          ))}
        </ul>
      ) : (
        <table class="cables jacketed">
          <caption class="hidden">Walls, and what the jackets are</caption>
          <thead>
            <tr>
              <th scope="col">Cable</th>
              {columns.map(({ id, head, unit }) => (
                <th key={id} scope="col" class="number">
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
                <tr class={open === cable.cable ? 'open jacket-open' : ''}>
                  <th scope="row">{turn(cable, place)}</th>
                  {columns.map(({ id, cell }) => (
                    <td key={id} class="number">
                      {cell(cable) ?? NOTHING}
                    </td>
                  ))}
                </tr>
                {open === cable.cable && (
                  <tr class="sheet-row" id={`jacket-${place}`}>
                    <td colSpan={columns.length + 1}>{sheet(cable)}</td>
                  </tr>
                )}
              </Fragment>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
