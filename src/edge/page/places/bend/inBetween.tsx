import type { CableFindings } from '../../../../findings/schema.ts';
import type { FlexCable } from '../../../../findings/shapes/flex.ts';
import { boundsStrip } from '../../../../report/bend/boundsStrip.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Figure } from '../../parts/figure.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { takenAt } from './takenAt.ts';

const FIRST_WIDTH = 320;
const WIDEST = 380;

/** Why it bends as it does: the place between sliding and stuck strands, and what cold, coiling and letting go show. */
export function InBetween({ bent, found }: { bent: FlexCable | null; found: CableFindings }) {
  const [place, width] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const bounds = bent?.bounds ?? null;
  return (
    <section>
      <h3>Between sliding and stuck strands</h3>
      <div ref={place}>
        {bounds === null ? (
          <p class="note">
            {missing(found)} With strands, their diameter and the bundle’s, the two ends are known that its stiffness
            must lie between.
          </p>
        ) : (
          <>
            <Picture
              class="stretch"
              svg={boundsStrip(bounds, bent?.bending_stiffness ?? null, {
                width: Math.min(width, WIDEST),
                theme: variablesTheme,
              })}
            />
            <p>{bounds.text}</p>
          </>
        )}
      </div>
      {bent !== null && <Further bent={bent} />}
      {bent?.cautions
        .filter((text) => !text.includes('clamp') && !text.includes('scale'))
        .map((text) => (
          <p key={text} class="note">
            {noBreak(text)}
          </p>
        ))}
    </section>
  );
}

function missing(found: CableFindings): string {
  const lacks = [
    ...(found.strand_count ? [] : ['the strand count']),
    ...(found.strand_diameter ? [] : ['a strand’s diameter']),
    ...(found.bundle_diameter ? [] : ['the bundle’s diameter']),
  ];
  return lacks.length === 0 ? 'Not worked out.' : `Not known yet: ${lacks.join(', ')}.`;
}

function Further({ bent }: { bent: FlexCable }) {
  const { weight_per_metre: weight, bending_length: length, coil_ratio: coil, spring_back: spring } = bent;
  const cold = bent.cold_stiffening;
  return (
    <dl class="figures">
      {weight && (
        <div>
          <dt>Weight</dt>
          <dd>
            <Figure of={weight} />
          </dd>
        </div>
      )}
      {length && (
        <div>
          <dt>Bending length</dt>
          <dd>
            <Figure of={length} />
          </dd>
        </div>
      )}
      {cold && (
        <div>
          <dt>In the cold</dt>
          <dd>{noBreak(cold.text)}</dd>
        </div>
      )}
      {coil && (
        <div>
          <dt>Tightest coil, radius to the middle of the cable</dt>
          <dd>
            <Figure of={coil} /> times its diameter, {takenAt(bent.coil_temperature_C)}
          </dd>
        </div>
      )}
      {spring && (
        <div>
          <dt>Springs back</dt>
          <dd>
            <Figure of={spring} percent />, {takenAt(bent.spring_back_temperature_C)}
          </dd>
        </div>
      )}
    </dl>
  );
}
