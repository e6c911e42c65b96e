import { useState } from 'preact/hooks';
import type { Entry } from '../../../../journal/entry.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { wholeText } from '../../../../units/wholeText.ts';
import { Photos } from '../../parts/photos.tsx';
import { held } from '../../store/journal/journal.ts';
import { addressOf } from '../../store/routeOf.ts';
import { whenWords } from '../../store/whenWords.ts';
import { StrikeReading } from './strikeReading.tsx';
import { whatWasSaid } from './whatWasSaid.ts';

/** Entries that are shown at first, and how many more at each asking. */
const SHOWN = 100;

/** The journal, the latest first: who, when, on which device, what, why. */
export function JournalView({ trial, entries }: { trial: Trial; entries: readonly Entry[] }) {
  const [shown, setShown] = useState(SHOWN);
  const latest = entries.slice(-shown).reverse();
  const waits = new Set(held.value?.outbox.unacknowledged);
  return (
    <section class="journal">
      <h2>The journal</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">What</th>
            <th scope="col">Who</th>
            <th scope="col">Device</th>
            <th scope="col">
              <span class="hidden">Look back</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {latest.map((entry) => (
            <Line key={entry.id} trial={trial} entry={entry} waits={waits.has(entry.id)} />
          ))}
        </tbody>
      </table>
      {shown < entries.length && (
        <button type="button" class="button" onClick={() => setShown(shown + SHOWN)}>
          Show {Math.min(SHOWN, entries.length - shown)} more of {wholeText(entries.length)}
        </button>
      )}
    </section>
  );
}

function Line({ trial, entry, waits }: { trial: Trial; entry: Entry; waits: boolean }) {
  const { what, detail, why } = whatWasSaid(entry, trial);
  // A photo shows the jacket, so there is none while the trial goes by codes.
  const photo = trial.blinding.blind
    ? undefined
    : trial.notes.find((note) => note.entry === entry.id && note.photo !== '');
  const counted =
    entry.kind === 'reading'
      ? trial.readings.find((r) => r.reading === entry.body.reading && r.standing === 'counted')
      : undefined;
  return (
    <tr>
      <td class="when">
        {whenWords(entry.at)}
        {waits && <span class="note"> waits here</span>}
      </td>
      <td class="said">
        <b>{what}</b> <bdi dir="auto">{detail}</bdi>
        {why !== '' && (
          <span class="why">
            “<bdi dir="auto">{why}</bdi>”
          </span>
        )}
        {counted !== undefined && (
          <>
            {' '}
            <StrikeReading trial={trial} reading={counted} />
          </>
        )}
        {photo !== undefined && <Photos trial={trial.trial} notes={[photo]} />}
      </td>
      <td>
        <bdi dir="auto">{entry.by || entry.body.by || ''}</bdi>
      </td>
      <td>
        <bdi dir="auto">{entry.device}</bdi>
      </td>
      <td>
        <a href={addressOf({ place: 'history', trial: trial.trial, at: entry.id })}>
          Look back
          <span class="hidden">
            {' '}
            to {whenWords(entry.at)}, {what}
          </span>
        </a>
      </td>
    </tr>
  );
}
