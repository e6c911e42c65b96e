import { Fragment } from 'preact';
import type { Findings } from '../../../../findings/schema.ts';
import type { OrderedCable } from '../../../../findings/standing/orderBy.ts';
import { placeStrip } from '../../../../report/bend/placeStrip.ts';
import { bandPlaces, ordinal } from '../../../../report/publish/pictures/placeChart.ts';
import { placeBars } from '../../../../report/standing/placeBars.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { Name } from '../../parts/name.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { PAPER_WIDTH, phone, printing } from '../../store/media.ts';
import { openInStanding } from '../../store/standing/openInStanding.ts';
import type { Stood } from './order.tsx';
import { smallFaces } from './smallFaces.ts';
import { StandingSheet } from './standingSheet.tsx';

interface PlaceTableProps {
  trial: string;
  stood: Stood;
  findings: Findings | null;
  open: string | null;
}

/** Room for the bands and the least for a face and a name whose longest word stays whole, and how broad one place may be, px. */
const BANDS = 116;
const NAMES = 232;
const CELL = { least: 34, most: 74 };
const FIRST_WIDTH = 920;
/** Narrower than this a table with a column for each place has no room. */
const LEAST_TABLE = 560;

interface Band {
  first: number;
  cables: OrderedCable[];
}

/** Cables that no clean cut parts, in the order. */
function bandsIn(cables: readonly OrderedCable[]): Band[] {
  const bands: Band[] = [];
  cables.forEach((cable, at) => {
    const last = bands.at(-1);
    if (last !== undefined && last.cables[0]!.band === cable.band) last.cables.push(cable);
    else bands.push({ first: at + 1, cables: [cable] });
  });
  return bands;
}

const parted = (count: number) => (count === 1 ? 'stands alone' : 'cannot be parted');

/** The chance of each place, cable by cable, ties as bands. */
export function PlaceTable(props: PlaceTableProps) {
  const [place, measured] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const width = printing.value ? PAPER_WIDTH : measured;
  const bands = bandsIn(props.stood.order.cables);
  const fits = (width - BANDS - NAMES) / props.stood.order.cables.length >= CELL.least;
  return (
    <div ref={place}>
      {phone.value || width < LEAST_TABLE || !fits ? (
        <PlaceBlocks {...props} bands={bands} width={width} />
      ) : (
        <Wide {...props} bands={bands} width={width} />
      )}
    </div>
  );
}

interface Laid extends PlaceTableProps {
  bands: readonly Band[];
  width: number;
}

function turn({ trial, open }: PlaceTableProps, { cable, name }: OrderedCable) {
  const here = open === cable;
  return (
    <button type="button" class="turn" aria-expanded={here} onClick={() => openInStanding(trial, here ? null : cable)}>
      <Name>{name || cable}</Name>
    </button>
  );
}

function Wide(props: Laid) {
  const { stood, findings, bands, width, open } = props;
  const n = stood.order.cables.length;
  const cell = Math.min(CELL.most, Math.floor((width - BANDS - NAMES) / n));
  const faces = smallFaces(findings);
  return (
    <table class="places-table">
      <caption class="hidden">Chance of each place in 100</caption>
      <colgroup>
        <col style={{ inlineSize: `${BANDS}px` }} />
        <col />
        {stood.order.cables.map(({ cable }) => (
          <col key={cable} style={{ inlineSize: `${cell}px` }} />
        ))}
      </colgroup>
      <thead>
        <tr>
          <th scope="col">Band</th>
          <th scope="col">Cable</th>
          {stood.order.cables.map(({ cable }, at) => (
            <th key={cable} scope="col" class="place">
              {ordinal(at + 1)}
            </th>
          ))}
        </tr>
      </thead>
      {bands.map(({ first, cables }) => (
        <tbody key={first}>
          {cables.map((cable, at) => (
            <Fragment key={cable.cable}>
              <tr class={open === cable.cable ? 'open' : ''}>
                {at === 0 && (
                  <th
                    scope="rowgroup"
                    class="band"
                    rowSpan={cables.length + cables.filter((c) => c.cable === open).length}
                  >
                    <span class="bracket">
                      <b>{bandPlaces(first, cables.length)}</b>
                      <span class="note">{parted(cables.length)}</span>
                    </span>
                  </th>
                )}
                <th scope="row" class="who">
                  <span>
                    <Picture svg={faces.get(cable.cable) ?? ''} class="face" silent />
                    {turn(props, cable)}
                  </span>
                </th>
                <td colSpan={n}>
                  <Picture svg={placeBars(cable.place_probability, { width: cell * n, theme: variablesTheme })} />
                </td>
              </tr>
              {open === cable.cable && (
                <tr class="sheet-row">
                  <td colSpan={n + 1}>
                    <StandingSheet stood={stood} cable={cable.cable} />
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      ))}
    </table>
  );
}

function PlaceBlocks(props: Laid) {
  const { stood, findings, bands, width, open } = props;
  const faces = smallFaces(findings);
  return (
    <div class="place-blocks">
      {bands.map(({ first, cables }) => (
        <section key={first} class="place-band">
          <h3>
            {bandPlaces(first, cables.length)} <span class="note">{parted(cables.length)}</span>
          </h3>
          <ul>
            {cables.map((cable) => (
              <li key={cable.cable} class={open === cable.cable ? 'open' : ''}>
                <span class="who">
                  <Picture svg={faces.get(cable.cable) ?? ''} class="face" silent />
                  {turn(props, cable)}
                </span>
                <Picture svg={placeStrip(cable.place_probability, { width: width - 16, theme: variablesTheme })} />
                {open === cable.cable && <StandingSheet stood={stood} cable={cable.cable} />}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}
