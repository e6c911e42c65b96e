import { lastMoment, readMoment } from './moment.ts';
import type { CellProblem } from './rowCheck.ts';

type Row = Readonly<Record<string, string>>;

/** A repair that would change nothing, or whose span ends before it begins. */
export function retagProblem(row: Row): CellProblem | null {
  const cell = (name: string) => (row[name] ?? '').trim();
  if (cell('becomes') !== '' && cell('becomes') === cell('specimen'))
    return { column: 'becomes', found: `"${cell('becomes')}", the same piece`, expected: 'another piece' };
  const from = readMoment(cell('from'));
  const until = readMoment(cell('until'));
  if (from.ok && until.ok && lastMoment(cell('until'), until.value) < from.value)
    return { column: 'until', found: `"${cell('until')}", before from`, expected: 'a moment after from' };
  return null;
}
