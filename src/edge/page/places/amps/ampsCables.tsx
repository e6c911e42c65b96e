import { Fragment } from 'preact';
import type { Findings } from '../../../../findings/schema.ts';
import type { Current, CurrentCable } from '../../../../findings/shapes/current.ts';
import { Name } from '../../parts/name.tsx';
import { openInAmps } from '../../store/amps/openInAmps.ts';
import { narrow } from '../../store/media.ts';
import { NOTHING } from '../bend/bendColumns.tsx';
import { ampsColumns } from './ampsColumns.tsx';
import { AmpsSheet } from './ampsSheet.tsx';

interface CablesProps {
  trial: string;
  findings: Findings;
  current: Current;
  open: string | null;
}

/** The cables with their figures under current; each opens to what they lean on. */
export function AmpsCables({ trial, findings, current, open }: CablesProps) {
  const cables = current.cables.filter((c) => c.role !== 'control');
  if (cables.length === 0) return null;
  const columns = ampsColumns(cables, findings);
  const sheet = (cable: CurrentCable) => <AmpsSheet key={cable.cable} cable={cable} findings={findings} />;
  const turn = (cable: CurrentCable, place: number) => (
    <button
      type="button"
      class="turn"
      aria-expanded={open === cable.cable}
      aria-controls={open === cable.cable ? `amps-${place}` : undefined}
      onClick={() =>
        openInAmps(trial, open === cable.cable ? { what: 'nothing' } : { what: 'cable', cable: cable.cable })
      }
    >
      <Name>{cable.name || cable.cable}</Name>
    </button>
  );
  return (
    <>
      <h2 class="hidden">Cable by cable</h2>
      {narrow.value ? (
        <ul class="blocks amping">
          {cables.map((cable, place) => (
            <li key={cable.cable} class={open === cable.cable ? 'open amps-open' : ''}>
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
              {open === cable.cable && <div id={`amps-${place}`}>{sheet(cable)}</div>}
            </li>
          ))}
        </ul>
      ) : (
        <table class="cables amping">
          <caption class="hidden">Ohms, heat and carrying current</caption>
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
                <tr class={open === cable.cable ? 'open amps-open' : ''}>
                  <th scope="row">{turn(cable, place)}</th>
                  {columns.map(({ id, cell }) => (
                    <td key={id} class="number">
                      {cell(cable) ?? NOTHING}
                    </td>
                  ))}
                </tr>
                {open === cable.cable && (
                  <tr class="sheet-row" id={`amps-${place}`}>
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
