import type { Reading } from '../../../../trial/trial.ts';
import { say } from '../journal/journal.ts';
import { freshName } from './freshName.ts';
import { renamed } from './sitting.ts';

/**
 * Says a reading once more in place of itself: as it was typed and when it was read, but for the cells given. What stood there
 * before stays on record.
 *
 * @param instead the reading that it replaces, when that is another one: a correction that is taken back
 */
export async function sayAnew(
  was: Reading,
  cells: Readonly<Record<string, string>>,
  why: string,
  instead = was.reading,
): Promise<string> {
  const reading = freshName('r');
  await say('reading', { ...was.row, ...cells, reading, replaces: instead, why });
  renamed(was.reading, reading);
  if (instead !== was.reading) renamed(instead, reading);
  return reading;
}
