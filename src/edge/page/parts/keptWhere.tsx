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
      <span>{wordsFor(waits, refused, now.outbox.journal.length, now.link)}</span>
      {unsafeToClose(now.link, now.keeps) && <b> Do not close this page.</b>}
    </p>
  );
}

function wordsFor(waits: number, refused: number, all: number, link: 'asking' | 'joined' | 'away'): string {
  const here = touch.value ? 'on this phone' : 'in this browser';
  if (waits > 0) return waits === 1 ? `1 waits ${here}` : `${waits.toLocaleString('en')} wait ${here}`;
  if (refused > 0)
    return refused === 1 ? `1 was not taken and is ${here}` : `${refused} were not taken and are ${here}`;
  if (link === 'away') return 'The bench computer is out of reach';
  if (link === 'asking') return `${all.toLocaleString('en')} entries ${here}`;
  if (all === 1) return 'The one entry is on the bench computer';
  return `All ${all.toLocaleString('en')}${phone.value ? '' : ' entries'} are on the bench computer`;
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
