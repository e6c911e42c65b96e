/** What came of the last thing that somebody had made on Publish: one line in all, where it was asked for. */
import { effect, signal } from '@preact/signals';
import { held } from '../journal/journal.ts';
import { AWAY } from './files.ts';

const NOTHING = { by: '', sentence: '' };

/** `by`: the section that says it. */
export const lastSaid = signal<{ by: string; sentence: string }>(NOTHING);

export function forgetSaid(): void {
  lastSaid.value = NOTHING;
}

/** Once the bench computer is back, nobody is told any more that it is away. */
effect(() => {
  if (held.value?.link === 'joined' && lastSaid.peek().sentence === AWAY) forgetSaid();
});
