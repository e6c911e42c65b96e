import { DamagedShelf, isDamage } from '../sqlite/damage.ts';
import { DamagedData, type Store, USUAL_ADVICE } from '../store.ts';
import { lastGoodBackup } from './list.ts';

/** An error of the shelf in a file, with the last good backup named when the shelf is damaged and there is one. */
export async function withLastBackup(error: unknown, list: string, path?: string): Promise<unknown> {
  if (error instanceof DamagedData && path !== undefined) {
    const named = await adviceFrom(list, path);
    return named === null ? error : new DamagedData(error.found, named, { cause: error });
  }
  if (!(error instanceof DamagedShelf)) return error;
  const advice = await adviceFrom(list, error.path);
  return advice === null ? error : new DamagedShelf(error.path, error.found, advice, { cause: error });
}

/** What to do about damage: the last good backup by its name. Null when no good one is known. */
async function adviceFrom(list: string, path: string): Promise<string | null> {
  const backup = await lastGoodBackup(list, path);
  if (backup === null) return null;
  const day = backup.takenAt.slice(0, 16).replace('T', ' ');
  return (
    `The last good backup is of ${day} UTC with ${backup.entries} entries; put it back with: cupel restore "${backup.file}" ` +
    '(whatever can still be read is taken over, and the damaged file is kept).'
  );
}

const WITHOUT_BACKUP =
  'Stop Cupel; with cupel restore, without a file, it makes a new shelf of everything that can still be read.';

/**
 * The same store, whose every refusal about damage names the last good backup. Backups are looked through only then, once,
 * because that takes a while.
 */
export function tellingDamage(store: Store, path: string, list: string): Store {
  let asked: Promise<string> | null = null;
  const advice = () => {
    asked ??= adviceFrom(list, path).then(
      (named) => (named === null ? WITHOUT_BACKUP : `Stop Cupel. ${named}`),
      () => USUAL_ADVICE,
    );
    return asked;
  };
  const told = async (error: unknown) => {
    if (error instanceof DamagedData) return new DamagedData(error.found, await advice(), { cause: error });
    if (!isDamage(error)) return error;
    const found = `The disk damaged the shelf in ${path}, and a part of it cannot be read.`;
    return new DamagedData(found, await advice(), { cause: error });
  };
  const methods = Object.entries(store).map(([name, method]) => [
    name,
    async (...args: unknown[]) => {
      try {
        return await (method as (...args: unknown[]) => unknown)(...args);
      } catch (error) {
        throw await told(error);
      }
    },
  ]);
  const telling = Object.fromEntries(methods) as Store;
  return {
    ...telling,
    async readable(trial, seq, limit) {
      const read = await telling.readable(trial, seq, limit);
      return read.damaged.length === 0 ? read : { ...read, advice: await advice() };
    },
  };
}
