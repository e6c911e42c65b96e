import type { Findings, Measured } from '../../../../findings/schema.ts';
import type { Jacket, JacketCable } from '../../../../findings/shapes/jacket.ts';
import { percentParts } from '../../../../report/figures.ts';
import { type Ringed, shareRings } from '../../../../report/jacket/shareRings.ts';
import { traceReach, wallTrace } from '../../../../report/jacket/wallTrace.ts';
import { metalKind } from '../../../../report/metalKind.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { FigureOf } from '../../parts/figure.tsx';
import { Name } from '../../parts/name.tsx';
import { Picture } from '../../parts/picture.tsx';
import { phone } from '../../store/media.ts';

/** px; on a phone face and trace stand side by side. */
const SIZE = { desk: 196, phone: 158 };
/** Room round the largest face, px. */
const ROOM = 8;

interface Face {
  cable: JacketCable;
  ringed: Ringed | null;
}

/** Every cut face at one scale, what its shares are, and its wall round the clock. */
export function CutFaces({ findings, jacket }: { findings: Findings; jacket: Jacket }) {
  const faces = jacket.cables
    .filter((c) => c.role !== 'control')
    .map((cable): Face => ({ cable, ringed: ringedOf(cable, findings) }))
    .filter(({ cable, ringed }) => ringed !== null || cable.round.length > 0);
  if (faces.length === 0) return null;
  const size = phone.value ? SIZE.phone : SIZE.desk;
  const widest = Math.max(1, ...faces.map(({ ringed }) => ringed?.outerDiameter ?? 0));
  const scale = Math.floor(((size - ROOM) / widest) * 10) / 10;
  const most = traceReach(faces.map(({ cable }) => cable));
  return (
    <section class="jacket-faces" aria-labelledby="jacket-faces">
      <h2 id="jacket-faces">Where the cut face goes, and the wall round it</h2>
      <ul>
        {faces.map(({ cable, ringed }) => (
          <li key={cable.cable}>
            <h3>
              <Name>{cable.name || cable.cable}</Name>
            </h3>
            <div class="face">
              {ringed !== null && (
                <Picture svg={shareRings(ringed, { scalePxPerMm: scale, size, theme: variablesTheme })} />
              )}
              <Shares cable={cable} />
            </div>
            <div class="trace">
              <Picture svg={wallTrace(cable, { size, theme: variablesTheme, most })} />
              {cable.round.length === 0 && <p class="note">The wall was not read round the face.</p>}
              {cable.wall_doubt !== '' && <p>{noBreak(cable.wall_doubt)}</p>}
              {cable.wall_doubt === '' &&
                cable.round.length > 0 &&
                cable.round.every((r) => r.angle_degrees === null) && (
                  <p class="note">The readings note no place on the clock, so they make no trace.</p>
                )}
            </div>
          </li>
        ))}
      </ul>
      <p class="note">
        {phone.value ? 'Left' : 'Above'}, all at one scale: the metal as one disc, the air between strands as bare
        ground, the jacket around them. {phone.value ? 'Right' : 'Below'}, the wall by the hour: the further a dot
        stands from the middle, the thicker; rings are whole millimetres, the dashed one is the mean, and the figure is
        the least reading.
      </p>
    </section>
  );
}

function ringedOf(cable: JacketCable, findings: Findings): Ringed | null {
  const found = findings.cables.find((c) => c.cable === cable.cable);
  const outer = found?.outer_diameter?.value ?? null;
  if (found === undefined || outer === null || !(outer > 0)) return null;
  return {
    shares: cable.shares,
    name: cable.name || cable.cable,
    outerDiameter: outer,
    jacketColour: found.jacket_colour,
    metal: metalKind(found.metal_found),
    copperShare: found.copper_share?.value ?? null,
  };
}

function Shares({ cable: { shares, shares_doubt, wall_doubt } }: { cable: JacketCable }) {
  if (shares === null)
    return (
      <p class="note">
        {noBreak(
          shares_doubt ||
            (wall_doubt === ''
              ? 'Its shares take metal area, outer diameter and wall.'
              : 'Its shares are held back with its wall.'),
        )}
      </p>
    );
  const parts: [string, Measured][] = [
    ['metal', shares.metal],
    ['air', shares.air],
    ['jacket', shares.jacket],
  ];
  return (
    <dl class="shares">
      {parts.map(([what, share]) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>
            <FigureOf text={percentParts({ ...share, condition: undefined })} unit />
          </dd>
        </div>
      ))}
    </dl>
  );
}
