import type { CableFindings } from '../../../../findings/schema.ts';
import { plainText } from '../../../../report/figures.ts';
import { residualSpan } from '../../../../report/sheetStrips.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { pieceSign, quantityWords } from '../../../../trial/plainWords.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { ResidualStrip } from '../../parts/pictures.tsx';
import { folded } from '../../store/journal/journal.ts';
import { typedReading } from './typedReading.ts';

/** The readings of one cable, how far each stands from what the others foretell, and all of them as typed. */
export function ReadingsAndFit({ cable, readings }: { cable: CableFindings; readings: readonly Reading[] }) {
  const span = residualSpan(cable.residuals.map((row) => row.residual));
  return (
    <section>
      <h3>Readings, and how far each stands from the rest</h3>
      {cable.residuals.length === 0 ? (
        <p class="note">Nothing has been measured on this piece yet.</p>
      ) : (
        <table class="small">
          <thead>
            <tr>
              <th scope="col">Quantity</th>
              <th scope="col" class="number">
                n
              </th>
              <th scope="col" class="number">
                mean
              </th>
              <th scope="col" class="strip">
                marks at ± 2 u
              </th>
            </tr>
          </thead>
          <tbody>
            {cable.residuals.map((row) => (
              <tr key={`${row.quantity} ${row.specimen} ${noBreak(row.text)}`}>
                <th scope="row">{noBreak(row.text)}</th>
                <td class="number">{row.n}</td>
                <td class="number">{noBreak(plainText(row.mean, row.unit))}</td>
                <td class="strip">
                  <ResidualStrip residual={row.residual} span={span} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {cable.consistency !== null && <p class="note">{noBreak(cable.consistency.sentence)}</p>}
      {cable.consistency?.recheck != null && (
        <p>
          <b>Take again: {quantityWords(cable.consistency.recheck)}.</b>
        </p>
      )}
      <AsTyped readings={readings.filter((reading) => reading.cable === cable.cable)} />
    </section>
  );
}

function AsTyped({ readings }: { readings: readonly Reading[] }) {
  if (readings.length === 0) return null;
  const trial = folded.value;
  // By codes, readings bear the signs of their pieces already.
  const signOf = (specimen: string) => (trial === null ? specimen : pieceSign(trial, specimen));
  return (
    <details>
      <summary>{readings.length === 1 ? 'The one reading' : `The ${readings.length} readings`} as typed</summary>
      <ul class="typed">
        {readings
          .map((each) => typedReading(each, signOf))
          .map((reading) => (
            <li key={reading.reading}>
              <span>{reading.what}</span>
              <span>{reading.aside === '' ? <b>{noBreak(reading.typed)}</b> : <s>{noBreak(reading.typed)}</s>}</span>
              <span class="note">
                {noBreak(reading.circumstances)} {reading.aside}
              </span>
            </li>
          ))}
      </ul>
    </details>
  );
}
