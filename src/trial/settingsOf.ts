import { cell } from './cells.ts';
import type { TypedRow } from './trial.ts';

/** Settings by name; blank values take a setting back. */
export function settingsOf(rows: readonly TypedRow[]): Record<string, string> {
  const filled = rows.map(({ row }) => [cell(row, 'setting'), cell(row, 'value')] as const);
  return Object.fromEntries(filled.filter(([, value]) => value !== ''));
}
