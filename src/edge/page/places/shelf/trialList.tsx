import type { TrialLine } from '../../../store/store.ts';
import { Name } from '../../parts/name.tsx';
import { addressOf } from '../../store/routeOf.ts';
import { loadShelf, shelf } from '../../store/shelf.ts';

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
          </tr>
        </thead>
        <tbody>{[...now.trials].sort(latestFirst).map(Line)}</tbody>
      </table>
    </>
  );
}

function Line(line: TrialLine) {
  const href = addressOf({ place: 'inside', trial: line.trial, cable: null });
  return (
    <tr key={line.trial}>
      <th scope="row">
        <a href={href}>
          <Name>{line.title || line.trial}</Name>
        </a>
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
    </tr>
  );
}

/** `2026-11-25`, or with the time of day on this clock where it was said: `2026-11-25 10:58`. */
function openedText(openedOn: string | null): string {
  if (openedOn === null) return '';
  const moment = openedOn.length > DAY ? new Date(openedOn) : null;
  if (moment === null || Number.isNaN(moment.getTime())) return openedOn.slice(0, DAY);
  const two = (n: number) => String(n).padStart(2, '0');
  const day = `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
  return `${day}\u00a0${two(moment.getHours())}:${two(moment.getMinutes())}`;
}

/** Letters of a day, `2026-11-25`. */
const DAY = 10;

const latestFirst = (a: TrialLine, b: TrialLine) => (b.openedOn ?? '').localeCompare(a.openedOn ?? '');
