import type { CableFindings } from '../../../../findings/schema.ts';
import type { Droop, FlexCable } from '../../../../findings/shapes/flex.ts';
import { droopView } from '../../../../report/bend/bendViews.ts';
import { droopDrawing } from '../../../../report/bend/droopDrawing.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { Figure } from '../../parts/figure.tsx';
import { Mind } from '../../parts/mind.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { takenAt } from './takenAt.ts';

interface DroopProps {
  bent: FlexCable | null;
  found: CableFindings;
  readings: readonly Reading[];
  /** A piece as its tag has it. */
  signOf: (specimen: string) => string;
}

const FIRST_WIDTH = 400;
const WIDEST = 460;

/** Every droop of a cable to scale, with the shape that follows from it. */
export function DroopSection({ bent, found, readings, signOf }: DroopProps) {
  const [place, width] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const droops = bent?.droops ?? [];
  const caution = bent?.cautions.find((text) => text.includes('clamp'));
  return (
    <section>
      <h3>Droop</h3>
      <div ref={place} class="drawn">
        {droops.length === 0 && (
          <p class="note">
            No droop is on record. Clamp the piece level at the bench, and read what hangs free and how deep the tip
            hangs.
          </p>
        )}
        {droops.map((droop) => (
          <One
            key={`${droop.specimen} ${droop.set} ${droop.temperature_C}`}
            droop={droop}
            several={droops.length > 1}
            found={found}
            readings={readings}
            signOf={signOf}
            width={Math.min(width, WIDEST)}
          />
        ))}
      </div>
      {caution !== undefined && <Mind look="note">{caution}</Mind>}
    </section>
  );
}

interface OneProps {
  droop: Droop;
  several: boolean;
  found: CableFindings;
  readings: readonly Reading[];
  signOf: (specimen: string) => string;
  width: number;
}

function One({ droop, several, found, readings, signOf, width }: OneProps) {
  const view = droopView(droop, readings);
  const refused = droop.bending_stiffness === null;
  return (
    <div class="drawn-one">
      {several && (
        <p class="note">
          <bdi dir="auto">{signOf(droop.specimen)}</bdi>
          {droop.set === '' ? '' : `, ${droop.set}`}, {takenAt(droop.temperature_C, droop.temperature_range_C)}
        </p>
      )}
      {view.faces.length > 0 && droop.overhang_mm > 0 && (
        <Picture
          class="stretch"
          svg={droopDrawing(
            {
              ...view,
              name: found.name || found.cable,
              outerDiameter: found.outer_diameter?.value ?? null,
              jacketColour: found.jacket_colour,
            },
            { width, theme: variablesTheme },
          )}
        />
      )}
      <p class={refused ? 'refused' : ''}>
        {droop.bending_stiffness !== null && (
          <>
            <Figure of={{ ...droop.bending_stiffness, unit: 'N·m²' }} />
            {', '}
            {takenAt(droop.temperature_C, droop.temperature_range_C)}.{' '}
          </>
        )}
        {refused ? <b>{noBreak(droop.text)}</b> : noBreak(droop.text)}
      </p>
      {!refused && droop.better_overhang_mm !== null && isFar(droop) && (
        <p class="note">
          About {droop.better_overhang_mm} mm hanging free would be read best; {Math.round(droop.overhang_mm)} mm hung.
        </p>
      )}
      {!refused && droop.clamp_edge_share !== null && (
        <p class="note">
          {noBreak(
            `Beside other cables ${(100 * droop.clamp_edge_share).toFixed(0)} % more is allowed for where it leaves its clamp.`,
          )}
        </p>
      )}
      {droop.gap_mm !== null && (
        <p class="note">It comes to rest within a gap of {droop.gap_mm.toFixed(1)} mm, from above and from below.</p>
      )}
    </div>
  );
}

/** Overhangs within so much of the best are as good. By simulation, λ from 4 to 10. */
const AS_GOOD = 0.13;
const isFar = ({ overhang_mm: now, better_overhang_mm: best }: Droop) => Math.abs(Math.log(now / best!)) > AS_GOOD;
