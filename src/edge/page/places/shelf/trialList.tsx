import { useState } from 'preact/hooks';
import type { TrialLine } from '../../../store/store.ts';
import { Name } from '../../parts/name.tsx';
import { PutAsideDialog } from '../../parts/putAsideDialog.tsx';
import { readsOnly } from '../../store/devices.ts';
import { putTrialAway } from '../../store/putAway.ts';
import { addressOf } from '../../store/routeOf.ts';
import { loadShelf, shelf } from '../../store/shelf.ts';
import { whenWords } from '../../store/whenWords.ts';

/** All trials on the shelf, the latest first. */
export function TrialList() {
  const now = shelf.value;
  if (now.state === 'loading') return <p class="note">Asking the bench computer …</p>;
  if (now.state === 'failed') {
    return (
      <div class="trouble-sentence" role="alert">
        <p>{now.sentence}</p>
        <button type="button" class="link" onClick={() => void loadShelf()}>
          Ask again
        </button>
      </div>
    );
  }
  if (now.trials.length === 0) return null;
  const sorted = [...now.trials].sort(latestFirst);
  const away = sorted.filter(({ putAway }) => putAway !== undefined);
  return (
    <>
      {now.sentence !== '' && (
        <div class="trouble-sentence" role="alert">
          <p>
            {now.sentence} Below is the shelf as this browser saw it last; a trial that was opened here opens all the
            same.
          </p>
          <button type="button" class="link" onClick={() => void loadShelf()}>
            Ask again
          </button>
        </div>
      )}
      <Lines trials={sorted.filter(({ putAway }) => putAway === undefined)} />
      {away.length > 0 && (
        <details class="put-away">
          <summary>Put away: {away.length}</summary>
          <Lines trials={away} />
        </details>
      )}
    </>
  );
}

function Lines({ trials }: { trials: readonly TrialLine[] }) {
  if (trials.length === 0) return null;
  return (
    <table class="trials">
      <thead>
        <tr>
          <th scope="col">Trial</th>
          <th scope="col">Where</th>
          <th scope="col" class="number">
            Cables
          </th>
          <th scope="col" class="number">
            Entries
          </th>
          <th scope="col" class="number">
            Opened
          </th>
          <td />
        </tr>
      </thead>
      <tbody>
        {trials.map((line) => (
          <Line key={line.trial} line={line} />
        ))}
      </tbody>
    </table>
  );
}

function Line({ line }: { line: TrialLine }) {
  const href = addressOf({ place: 'inside', trial: line.trial, cable: null });
  return (
    <tr>
      <th scope="row">
        <a href={href}>
          <Name>{line.title || line.trial}</Name>
        </a>
        {line.putAway !== undefined && (
          <span class="note">
            “<bdi dir="auto">{line.putAway}</bdi>”
          </span>
        )}
      </th>
      <td class={line.place === '' ? 'empty' : ''}>
        <bdi dir="auto">{line.place}</bdi>
      </td>
      <td class="number" data-unit={line.cables === 1 ? 'cable' : 'cables'}>
        {line.cables}
      </td>
      <td class="number" data-unit={line.entries === 1 ? 'entry' : 'entries'}>
        {line.entries}
      </td>
      <td class="number">{openedText(line.openedOn)}</td>
      <td class="act">{!readsOnly.value && <PutAway line={line} />}</td>
    </tr>
  );
}

/** Why trials are usually put away. */
const USUAL = ['made twice', 'for trying out', 'given up'];

function PutAway({ line }: { line: TrialLine }) {
  const [asking, setAsking] = useState(false);
  const again = line.putAway !== undefined;
  const name = line.title || line.trial;
  return (
    <>
      <button
        type="button"
        class="link"
        aria-label={`${again ? 'Take up again' : 'Put away'}: ${name}`}
        onClick={() => setAsking(true)}
      >
        {again ? 'take up again' : 'put away'}
      </button>
      {asking && (
        <PutAsideDialog
          name={name}
          again={again}
          words="Put away"
          along={again ? '' : 'It stands folded at the foot of the shelf and can be opened as before.'}
          usual={USUAL}
          onAct={(why) => putTrialAway(line.trial, why, again)}
          onClose={() => setAsking(false)}
        />
      )}
    </>
  );
}

/** `2026-11-25`, or with the time of day on this clock where it was said: `2026-11-25 10:58`. */
function openedText(openedOn: string | null): string {
  if (openedOn === null) return '';
  if (openedOn.length <= DAY || Number.isNaN(Date.parse(openedOn))) return openedOn.slice(0, DAY);
  return whenWords(openedOn).replace(' ', '\u00a0');
}

/** Letters of a day, `2026-11-25`. */
const DAY = 10;

const latestFirst = (a: TrialLine, b: TrialLine) => (b.openedOn ?? '').localeCompare(a.openedOn ?? '');
