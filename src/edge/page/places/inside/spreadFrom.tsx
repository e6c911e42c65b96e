import type { CableFindings } from '../../../../findings/schema.ts';
import { figureParts } from '../../parts/figure.tsx';
import { ShareBar } from '../../parts/pictures.tsx';

/** What the ± of the area is made of, how wrong a tool would have to be, and the one reading that would help most. */
export function SpreadFrom({ cable }: { cable: CableFindings }) {
  const area = cable.conductor_area;
  return (
    <section>
      <h3>
        {area === null
          ? 'What the ± would be made of'
          : `What the ± ${figureParts(area).plusMinus} ${figureParts(area).unit} is made of`}
      </h3>
      {cable.spread_from.length === 0 && <p class="note">No area yet, so there is no ± to take apart.</p>}
      {cable.spread_from.length > 0 && (
        <table class="small shares">
          <thead class="hidden">
            <tr>
              <th scope="col">Source</th>
              <th scope="col">Share</th>
              <th scope="col">Length</th>
            </tr>
          </thead>
          <tbody>
            {cable.spread_from.map((part) => (
              <tr key={part.input}>
                <th scope="row">{part.label}</th>
                <td class="number">{part.share < 0.005 ? '< 1' : Math.round(100 * part.share)} %</td>
                <td class="bar">
                  <ShareBar share={part.share} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {cable.tool_errors.length > 0 && (
        <>
          <h4>How wrong would a tool have to be?</h4>
          <ul class="plain">
            {cable.tool_errors.map((error) => (
              <li key={`${error.claim} ${error.input}`}>{error.text}</li>
            ))}
          </ul>
        </>
      )}
      {cable.next_reading !== null && (
        <p class="next">
          <b>One more measurement.</b> {cable.next_reading.text}
        </p>
      )}
    </section>
  );
}
