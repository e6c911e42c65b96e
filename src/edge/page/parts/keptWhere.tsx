import { wholeText } from '../../../units/wholeText.ts';
import { NO_ANSWER } from '../store/api.ts';
import { held } from '../store/journal/journal.ts';
import { phone, touch } from '../store/media.ts';

/** Where the entries of the open trial are: never says that one is on the bench computer before the bench computer has. */
export function KeptWhere() {
  const now = held.value;
  if (now === null) return null;
  const refused = Object.keys(now.outbox.refused).length;
  const waits = now.outbox.unacknowledged.length - refused;
  const state = waits + refused > 0 || now.link === 'away' ? 'waits' : 'there';
  return (
    <p class="kept-where" role="status" data-state={state} title={now.sentence}>
      <Sign state={state} />
      <span>{wordsFor(waits, refused, now.outbox.journal.length, now.link, now.sentence)}</span>
      {now.link === 'away' && answered(now.sentence) && <span class="reason">{now.sentence}</span>}
      {unsafeToClose(now.link, now.keeps) && <b> Do not close this page.</b>}
    </p>
  );
}

/** Whether the bench computer said something, were it only a refusal. */
const answered = (sentence: string) => sentence !== '' && sentence !== NO_ANSWER;

function wordsFor(
  waits: number,
  refused: number,
  all: number,
  link: 'asking' | 'joined' | 'away',
  sentence: string,
): string {
  const here = touch.value ? 'on this phone' : 'in this browser';
  if (waits > 0) return waits === 1 ? `1 waits ${here}` : `${wholeText(waits)} wait ${here}`;
  if (refused > 0)
    return refused === 1 ? `1 was not taken and is ${here}` : `${refused} were not taken and are ${here}`;
  if (link === 'away') return answered(sentence) ? 'The bench computer refused:' : 'The bench computer is out of reach';
  if (link === 'asking') return `${wholeText(all)} entries ${here}`;
  if (all === 1) return 'The one entry is on the bench computer';
  return `All ${wholeText(all)}${phone.value ? '' : ' entries'} are on the bench computer`;
}

/** Without a network, a page that came over plain http cannot be loaded again; and some browsers keep nothing at all. */
function unsafeToClose(link: 'asking' | 'joined' | 'away', keeps: boolean): boolean {
  return !keeps || (link === 'away' && !isSecureContext);
}

/** A disc inside its ring: closed when all is there, broken while something waits. */
function Sign({ state }: { state: 'waits' | 'there' }) {
  return (
    <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      <circle
        cx="8"
        cy="8"
        r="6.5"
        fill="none"
        stroke="var(--ink)"
        stroke-width="1.5"
        stroke-dasharray={state === 'waits' ? '2.6 2.5' : undefined}
      />
      <circle cx="8" cy="8" r={state === 'waits' ? 2 : 4} fill="var(--ink)" />
    </svg>
  );
}
