import type { CableFindings } from '../../../../findings/schema.ts';
import type { FigureText } from '../../../../report/figures.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { figureParts } from '../../parts/figure.tsx';
import { contradicts } from '../../parts/noArea.ts';
import { ShareBar } from '../../parts/pictures.tsx';

/** What the ± of the area is made of, how wrong a tool would have to be, and the one reading that would help most. */
export function SpreadFrom({ cable }: { cable: CableFindings }) {
  const area = cable.conductor_area;
  const large = cable.spread_from.filter((part) => part.share >= SMALL);
  const rest = cable.spread_from.filter((part) => part.share < SMALL);
  const small = rest.length > 1 ? rest : [];
  return (
    <section>
      <h3>{area === null ? 'What the ± would be made of' : whatIsMade(figureParts(area))}</h3>
      {cable.spread_from.length === 0 && (
        <p class="note">
          {contradicts(cable) ? 'The readings contradict each other' : 'No area yet'}, so there is no ± to take apart.
        </p>
      )}
      <Shares parts={rest.length > 1 ? large : cable.spread_from} />
      {small.length > 0 && (
        <details>
          <summary>
            {small.length} smaller ones, together {percent(small.reduce((sum, part) => sum + part.share, 0))}
          </summary>
          <Shares parts={small} />
        </details>
      )}
      {cable.tool_errors.length > 0 && (
        <>
          <h4>How wrong would a tool have to be?</h4>
          <ul class="plain">
            {cable.tool_errors.map((error) => (
              <li key={`${error.claim} ${error.input}`}>{noBreak(error.text)}</li>
            ))}
          </ul>
        </>
      )}
      {cable.next_reading !== null && (
        <p class="next">
          <b>One more measurement.</b> {noBreak(cable.next_reading.text)}
        </p>
      )}
    </section>
  );
}

/** `What the ± 0.4 mm² is made of`; a figure told by both ends has a width instead of a ±. */
function whatIsMade({ value, plusMinus, unit }: FigureText): string {
  if (plusMinus === '') return `What the width of ${value}\u00a0${unit} is made of`;
  return `What the ±\u00a0${plusMinus}\u00a0${unit} is made of`;
}

/** Shares below this are folded away, so that the ones that matter can be seen. */
const SMALL = 0.03;

function Shares({ parts }: { parts: CableFindings['spread_from'] }) {
  if (parts.length === 0) return null;
  return (
    <table class="small shares">
      <thead class="hidden">
        <tr>
          <th scope="col">Source</th>
          <th scope="col">Share</th>
          <th scope="col">Length</th>
        </tr>
      </thead>
      <tbody>
        {parts.map((part) => (
          <tr key={part.input}>
            <th scope="row">{noBreak(part.label)}</th>
            <td class="number">{percent(part.share)}</td>
            <td class="bar">
              <ShareBar share={part.share} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const percent = (share: number) => `${share < 0.005 ? '< 1' : Math.round(100 * share)}\u00a0%`;
