import { effect } from '@preact/signals';
import { emptyOutbox, waiting } from '../../../../journal/sync/outbox.ts';
import { type Held, held } from '../journal/journal.ts';

/** How long entries that are on their way are waited for, ms: many, after the store was put back. Ours. */
const PATIENCE = 15_000;

/**
 * Waits while entries are on their way to the bench computer, as just after the page was opened: then nothing is wrong.
 *
 * @returns empty once the bench computer has all of them, else a sentence that says why it does not
 */
export function untilSent(patience = PATIENCE): Promise<string> {
  return new Promise((settle) => {
    let stop = () => {};
    const end = (sentence: string) => {
      clearTimeout(timer);
      // The first look happens before there is anything to stop.
      queueMicrotask(() => stop());
      settle(sentence);
    };
    const timer = setTimeout(() => end(reasonIn(held.peek()) || STILL_GOING), patience);
    stop = effect(() => {
      const now = held.value;
      if (unsentIn(now) === 0) end('');
      else if (reasonIn(now) !== '') end(reasonIn(now));
    });
  });
}

const STILL_GOING =
  'Entries are still on their way to the bench computer. Seal once the line at the top says that all are there.';

const unsentIn = (now: Held | null): number => waiting(now?.outbox ?? emptyOutbox('')).length;

/** What holds entries back; empty while they are only on their way. */
function reasonIn(now: Held | null): string {
  if (now === null) return '';
  const unsent = unsentIn(now);
  const refused = Object.keys(now.outbox.refused).length;
  if (now.link === 'away')
    return `${unsent === 1 ? 'One entry waits' : `${unsent} entries wait`} here, and the bench computer cannot be reached now; seal when it has ${unsent === 1 ? 'it' : 'them'}.`;
  if (refused === 0 || refused < unsent) return '';
  return refused === 1
    ? 'The bench computer would not take an entry, which stands at the top of this page. Take it off, then seal.'
    : `The bench computer would not take ${refused} entries, which stand at the top of this page. Take them off, then seal.`;
}
