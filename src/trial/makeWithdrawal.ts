import type { Entry } from '../journal/entry.ts';
import { WITHDRAWAL_TABLE, WITHDRAWN_KINDS, type WithdrawnKind } from '../journal/kinds/withdrawal.ts';
import { CellReader, cell, nameOrNull } from './cells.ts';
import { inTimeOrder } from './inTimeOrder.ts';
import { latestRows } from './latestRows.ts';
import type { Remark, Withdrawal } from './trial.ts';

/** An act of putting aside, or of taking up again, out of its row; null (with a remark) when it is about nothing known. */
function makeWithdrawal(entry: Entry, cells: CellReader): Withdrawal | null {
  const row = entry.body;
  const typed = cell(row, 'about').toLowerCase();
  const about = WITHDRAWN_KINDS.find((kind) => kind === typed) as WithdrawnKind | undefined;
  if (about === undefined) {
    cells.remark(row, 'about', typed === '' ? 'blank' : `"${typed}"`, `one of ${WITHDRAWN_KINDS.join(', ')}`);
    return null;
  }
  return {
    entry: entry.id,
    row,
    withdrawal: cell(row, 'withdrawal'),
    again: cell(row, 'act').toLowerCase() === 'taken up again',
    about,
    which: about === 'trial' ? entry.trial : cell(row, 'which'),
    triedWith: about === 'fitting' ? nameOrNull(row, 'tried_with') : null,
    why: cell(row, 'why'),
    at: nameOrNull(row, 'at'),
    by: cell(row, 'by'),
  };
}

/**
 * The acts that hold in a journal, in the order in which they were said.
 *
 * @param openedOn day on which the trial began, for acts without a moment of their own
 */
export function withdrawalsOf(rows: readonly Entry[], openedOn: string, remarks: Remark[]): Withdrawal[] {
  const cells = new CellReader(WITHDRAWAL_TABLE, remarks);
  return inTimeOrder(rows, openedOn)
    .map((entry) => makeWithdrawal(entry, cells))
    .filter((act) => act !== null);
}

/** The same out of entries of any kinds, in the order of their ids: for whoever has no fold. */
export function withdrawalsIn(entries: readonly Entry[]): Withdrawal[] {
  const { trial, withdrawal } = latestRows(entries);
  return withdrawalsOf(withdrawal, cell(trial[0]?.body ?? {}, 'opened_on'), []);
}
