import type { CableFindings, Claim } from '../../../../findings/schema.ts';
import { chanceText } from '../../../../report/words/chanceWords.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { capital } from '../../../../units/capital.ts';
import { defaultDisplayUnits } from '../../../../units/display.ts';
import { Figure } from '../../parts/figure.tsx';
import { OutcomeWord } from '../../parts/outcomeWord.tsx';

/** What the label can mean, and what was found under each meaning. Meanings that are not the label's own are folded. */
export function LabelReadings({ cable }: { cable: CableFindings }) {
  const own = cable.claims.filter((claim) => claim.of_label);
  const other = cable.claims.filter((claim) => !claim.of_label);
  const notes = [...new Set(own.map((claim) => claim.note).filter((note) => note !== ''))];
  return (
    <section>
      <h3>
        What “<bdi dir="auto">{noBreak(cable.label.size || 'no size')}</bdi>
        {cable.label.metal !== '' && cable.label.metal !== cable.label.size && (
          <>
            , <bdi dir="auto">{noBreak(cable.label.metal)}</bdi>
          </>
        )}
        ” can mean
      </h3>
      {own.length > 0 ? (
        <ClaimTable claims={own} copperShare={cable.copper_share?.value ?? null} />
      ) : (
        <p class="note">The label makes no claim that could be held against a figure.</p>
      )}
      <p class="note">
        {cable.label.read_as !== '' && <>Read as: {noBreak(cable.label.read_as)}. </>}
        {cable.nearest_size_met !== null && (
          <>The nearest size that this piece does meet is {noBreak(cable.nearest_size_met)}. </>
        )}
        {noBreak(notes.join(' '))}
      </p>
      {other.length > 0 && (
        <details>
          <summary>
            {other.length === 1 ? 'One other meaning' : `${other.length} other meanings`}, not the label’s own
          </summary>
          <ClaimTable claims={other} copperShare={cable.copper_share?.value ?? null} />
          <p class="note">
            {[...new Set(other.map((claim) => claim.note).filter((note) => note !== ''))].map(noBreak).join(' ')}
          </p>
        </details>
      )}
      <details>
        <summary>Where the limits come from</summary>
        <ul class="note sources">
          {cable.claims.map((claim) => (
            <li key={claim.reading}>
              {capital(claim.reading)}: {noBreak(claim.source)}
              {claim.probability_met !== null &&
                `; chance that the piece meets it ${noBreak(chanceText(claim.probability_met))}`}
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}

function ClaimTable({ claims, copperShare }: { claims: readonly Claim[]; copperShare: number | null }) {
  return (
    <table class="small claims">
      <thead>
        <tr>
          <th scope="col">Meaning</th>
          <th scope="col" class="number">
            asks for
          </th>
          <th scope="col" class="number">
            found
          </th>
          <th scope="col">Outcome</th>
        </tr>
      </thead>
      <tbody>
        {claims.map((claim) => (
          <tr key={claim.reading}>
            <th scope="row">{capital(claim.reading)}</th>
            <td class="number">{noBreak(claim.asks)}</td>
            <td class="number">
              {claim.found === null ? '–' : <Figure of={claim.found} units={defaultDisplayUnits} unit={false} />}
            </td>
            <td>
              <OutcomeWord claim={claim} copperShare={copperShare} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
