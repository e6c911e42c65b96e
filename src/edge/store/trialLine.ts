import type { Entry } from '../../journal/entry.ts';
import { withdrawalsIn } from '../../trial/makeWithdrawal.ts';
import { SetAside } from '../../trial/setAside.ts';
import type { TrialLine } from './store.ts';

/** The kinds of entry that a line of the shelf is made of. */
export const LINE_KINDS = ['trial', 'cable', 'withdrawal'] as const;

/** A trial's line on the shelf from its entries of those kinds, in the order of their ids, and its count of all. */
export function trialLine(trial: string, described: readonly Entry[], entries: number): TrialLine {
  const last = described.findLast((entry) => entry.kind === 'trial')?.body ?? {};
  const acts = new SetAside(withdrawalsIn(described));
  const cables = new Set(
    described.filter((entry) => entry.kind === 'cable').map((entry) => (entry.body.cable ?? entry.id).trim()),
  );
  const putAway = acts.act('trial', trial);
  return {
    trial,
    title: last.title || trial,
    place: last.place ?? '',
    cables: [...cables].filter((cable) => acts.act('cable', cable) === null).length,
    entries,
    openedOn: last.opened_on || null,
    ...(putAway === null ? {} : { putAway: putAway.why }),
  };
}

/** Puts the trial opened last first; those without a date after the others, by name. */
export function byOpening(a: TrialLine, b: TrialLine): number {
  return compare(b.openedOn ?? '', a.openedOn ?? '') || compare(a.trial, b.trial);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
