/** Whether this device shows names on Plan while the trial goes by codes: to the one who cuts, as an act on record. */
import { say } from '../journal/journal.ts';
import { sessionSignal } from '../sessionSignal.ts';

const isList = (kept: unknown): kept is string[] => Array.isArray(kept) && kept.every((one) => typeof one === 'string');

/** Trials, each with when it was blinded: another blinding hides the names again. */
const shown = sessionSignal<string[]>('cupel.names-shown', [], isList);

const keyOf = (trial: string, since: string | null) => `${trial} ${since ?? ''}`;

export const namesShown = (trial: string, since: string | null): boolean => shown.value.includes(keyOf(trial, since));

/** Shows the names on this device for as long as this tab is open, and says in the journal that it was done. */
export async function showNames(trial: string, since: string | null): Promise<void> {
  await say('blinding', { act: 'show', at: new Date().toISOString() });
  shown.value = [...shown.value, keyOf(trial, since)];
}

/** Hides them on this device again. */
export function hideNames(trial: string, since: string | null): void {
  shown.value = shown.value.filter((one) => one !== keyOf(trial, since));
}
