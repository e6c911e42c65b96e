/** Puts aside what was entered by mistake, with a reason, and takes it up again. Nothing vanishes either way. */
import type { WithdrawnKind } from '../../../journal/kinds/withdrawal.ts';
import { freshName } from './bench/freshName.ts';
import { say } from './journal/journal.ts';

/** What an act is about. */
export interface Thing {
  about: WithdrawnKind;
  /** Its name; empty for the trial. */
  which: string;
}

type Done = 'put aside' | 'taken up again';

/** The row of an act; `by` where it is told who did it. */
export const actRow = ({ about, which }: Thing, act: Done, why: string, by = ''): Record<string, string> => ({
  withdrawal: freshName('w'),
  act,
  about,
  which,
  why,
  at: new Date().toISOString(),
  ...(by === '' ? {} : { by }),
});

/** @throws when this browser refuses to keep it */
export async function putAside(thing: Thing, why: string, by = ''): Promise<void> {
  await say('withdrawal', actRow(thing, 'put aside', why, by));
}

/** @throws when this browser refuses to keep it */
export async function takeUpAgain(thing: Thing, why: string): Promise<void> {
  await say('withdrawal', actRow(thing, 'taken up again', why));
}
