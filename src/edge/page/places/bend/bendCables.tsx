import { Fragment } from 'preact';
import type { Findings } from '../../../../findings/schema.ts';
import type { Flex } from '../../../../findings/shapes/flex.ts';
import type { BendMethod } from '../../../../report/bend/bendMethods.ts';
import { Name } from '../../parts/name.tsx';
import type { Assay } from '../../store/assay.ts';
import { openInBend } from '../../store/bend/openInBend.ts';
import { narrow } from '../../store/media.ts';
import { type BentCable, bendColumns, NOTHING } from './bendColumns.tsx';
import { BendSheet } from './bendSheet.tsx';

interface CablesProps {
  now: Assay;
  findings: Findings;
  flex: Flex;
  methods: readonly BendMethod[];
  open: string | null;
}

/** The cables with their figures; each opens to its curves. */
export function BendCables({ now, findings, flex, methods, open }: CablesProps) {
  const cables = findings.cables.flatMap(({ cable, name }): BentCable[] => {
    const bent = flex.cables.find((c) => c.cable === cable) ?? null;
    const judged = flex.judged?.cables.some((c) => c.cable === cable) ?? false;
    return bent || judged ? [{ cable, name: name || cable, bent }] : [];
  });
  const columns = bendColumns(flex, methods);
  const sheet = (cable: BentCable) => (
    <BendSheet now={now} findings={findings} flex={flex} cable={cable} key={cable.cable} />
  );
  const turn = (cable: BentCable, place: number) => (
    <button
      type="button"
      class="turn"
      aria-expanded={open === cable.cable}
      aria-controls={open === cable.cable ? `bend-${place}` : undefined}
      onClick={() =>
        openInBend(now.trial, open === cable.cable ? { what: 'nothing' } : { what: 'cable', cable: cable.cable })
      }
    >
      <Name>{cable.name}</Name>
    </button>
  );
  return (
    <>
      <h2 class="hidden">Cable by cable</h2>
      {narrow.value ? (
        <ul class="blocks bending">
          {cables.map((cable, place) => (
            <li key={cable.cable} class={open === cable.cable ? 'open bend-open' : ''}>
              {turn(cable, place)}
              <dl class="figures">
                {columns
                  .map((column) => ({ ...column, shown: column.cell(cable) }))
                  .filter(({ shown }) => shown !== NOTHING)
                  .map(({ id, head, unit, shown }) => (
                    <div key={id}>
                      <dt>
                        {head} {unit}
                      </dt>
                      <dd>{shown}</dd>
                    </div>
                  ))}
              </dl>
              {open === cable.cable && <div id={`bend-${place}`}>{sheet(cable)}</div>}
            </li>
          ))}
        </ul>
      ) : (
        <table class="cables bending">
          <caption class="hidden">How each cable bends</caption>
          <colgroup>
            <col class="cable" />
            {columns.map(({ id }) => (
              <col key={id} class={id} />
            ))}
          </colgroup>
          <thead>
            <tr>
              <th scope="col">Cable</th>
              {columns.map(({ id, head, unit, number }) => (
                <th key={id} scope="col" class={number ? 'number' : ''}>
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
                <tr class={open === cable.cable ? 'open bend-open' : ''}>
                  <th scope="row">{turn(cable, place)}</th>
                  {columns.map(({ id, number, cell }) => (
                    <td key={id} class={number ? 'number' : 'words'}>
                      {cell(cable)}
                    </td>
                  ))}
                </tr>
                {open === cable.cable && (
                  <tr class="sheet-row" id={`bend-${place}`}>
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
