import type { Entry } from '../journal/entry.ts';
import { lastMoment, readMoment } from '../journal/moment.ts';
import { type CellReader, cell } from './cells.ts';
import type { Retag } from './trial.ts';

/** A moment out of a cell; null when it is blank, `undefined` (with a remark) when it cannot be read. */
function momentIn(row: Entry['body'], name: string, cells: CellReader): number | null | undefined {
  const typed = cell(row, name);
  if (typed === '') return null;
  const outcome = readMoment(typed);
  if (outcome.ok) return outcome.value;
  cells.remark(row, name, outcome.found, outcome.expected);
  return undefined;
}

/** Last moment of the span. A repair puts right what was, not what will be: it ends when it was said, unless it says otherwise. */
function endOf(row: Entry['body'], cells: CellReader): number | undefined {
  for (const name of ['until', 'at']) {
    const moment = momentIn(row, name, cells);
    if (moment !== null) return moment === undefined ? undefined : lastMoment(cell(row, name), moment);
  }
  return Number.POSITIVE_INFINITY;
}

/**
 * A repair out of its row; null (with a remark) when its kind or its span cannot be read, because a repair of the wrong
 * span would do harm.
 */
export function makeRetag(entry: Entry, cells: CellReader): Retag | null {
  const row = entry.body;
  const kind = cell(row, 'kind').toLowerCase();
  if (kind !== 'swap' && kind !== 'tag') {
    cells.remark(row, 'kind', kind === '' ? 'blank' : `"${kind}"`, 'swap or tag');
    return null;
  }
  const from = momentIn(row, 'from', cells);
  const until = endOf(row, cells);
  if (from === undefined || until === undefined) return null;
  return {
    entry: entry.id,
    row,
    retag: cell(row, 'retag'),
    kind,
    specimen: cell(row, 'specimen'),
    becomes: cell(row, 'becomes'),
    from: from ?? Number.NEGATIVE_INFINITY,
    until,
    why: cell(row, 'why'),
  };
}
