import { useMemo, useState } from 'preact/hooks';
import type { Entry } from '../../../../journal/entry.ts';
import { type LifeEvent, type ReadingLife, readingLives } from '../../../../trial/lives.ts';
import { STANDING_WORDS } from '../../../../trial/standing.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { wholeText } from '../../../../units/wholeText.ts';
import { pieceWords, quantityHead } from '../../store/bench/names.ts';
import { whenWords } from '../../store/whenWords.ts';
import { StrikeReading } from './strikeReading.tsx';
import { readingWords } from './whatWasSaid.ts';

/** Readings shown at first, and how many more at each asking. */
const SHOWN = 50;

/** Every reading's life: who read it, and what became of it. Those that something happened to come first. */
export function ReadingLives({ trial, entries }: { trial: Trial; entries: readonly Entry[] }) {
  const [open, setOpen] = useState(false);
  const [shown, setShown] = useState(SHOWN);
  const lives = useMemo(
    () => (open ? inOrder([...readingLives(entries, trial).values()]) : []),
    [open, entries, trial],
  );
  return (
    <details class="lives" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>Every reading’s life</h2>
      </summary>
      <ul>
        {lives.slice(0, shown).map((life) => (
          <Life key={life.reading} trial={trial} life={life} />
        ))}
      </ul>
      {shown < lives.length && (
        <button type="button" class="button" onClick={() => setShown(shown + SHOWN)}>
          Show {Math.min(SHOWN, lives.length - shown)} more of {wholeText(lives.length)}
        </button>
      )}
    </details>
  );
}

const inOrder = (lives: ReadingLife[]) => [
  ...lives.filter((life) => life.events.length > 1).reverse(),
  ...lives.filter((life) => life.events.length <= 1).reverse(),
];

function Life({ trial, life }: { trial: Trial; life: ReadingLife }) {
  const { now } = life;
  const head =
    now === null
      ? 'A reading that cannot be read'
      : `${pieceWords(trial, now.specimen)}, ${quantityHead(now.quantity).toLowerCase()}`;
  return (
    <li>
      <b>
        <bdi dir="auto">{head}</bdi>
      </b>{' '}
      <span class="note">{now === null ? 'cannot be read' : STANDING_WORDS[now.standing]}</span>{' '}
      {now?.standing === 'counted' && <StrikeReading trial={trial} reading={now} />}
      <ol>
        {life.events.map((event) => (
          <li key={`${event.entry} ${event.what}`}>
            <span class="when">{whenWords(event.at)}</span>{' '}
            <span>
              <bdi dir="auto">{eventWords(trial, event)}</bdi>
              {event.why !== '' && (
                <span class="why">
                  “<bdi dir="auto">{event.why}</bdi>”
                </span>
              )}
              <span class="note">
                {' '}
                <bdi dir="auto">{[event.by, event.device].filter((words) => words !== '').join(', ')}</bdi>
              </span>
            </span>
          </li>
        ))}
      </ol>
    </li>
  );
}

function eventWords(trial: Trial, event: LifeEvent): string {
  if (event.what === 'said') return `read as ${event.with}`;
  if (event.what === 'said again') return `written anew as ${event.with}`;
  if (event.what === 'replaced') return `replaced by ${readingWords(trial, event.with)}`;
  if (event.what === 'put aside') return 'put aside with its piece or cable';
  if (event.what === 'taken up again') return 'taken up again with it';
  return event.what === 'struck' ? 'struck out' : 'moved with its piece when a mix-up was put right';
}
