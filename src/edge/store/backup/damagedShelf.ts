import { DamagedShelf } from '../sqlite/damage.ts';
import { lastGoodBackup } from './list.ts';

/** An error of opening a shelf, with the last good backup named when the shelf is damaged and there is one. */
export async function withLastBackup(error: unknown, list: string): Promise<unknown> {
  if (!(error instanceof DamagedShelf)) return error;
  const backup = await lastGoodBackup(list, error.path);
  if (backup === null) return error;
  const day = backup.takenAt.slice(0, 16).replace('T', ' ');
  const advice =
    `The last good backup is of ${day} UTC with ${backup.entries} entries; put it back with: cupel restore "${backup.file}" ` +
    '(the damaged file is kept).';
  return new DamagedShelf(error.path, error.found, advice, { cause: error });
}
