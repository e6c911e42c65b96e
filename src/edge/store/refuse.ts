import type { Entry } from '../../journal/entry.ts';
import { LARGEST_BLOB, StoreRefusal } from './store.ts';

/** Throws when an entry names another trial than the one it is appended to. */
export function refuseStrangers(trial: string, entries: readonly Entry[]): void {
  const stranger = entries.find((entry) => entry.trial !== trial);
  if (stranger !== undefined)
    throw new StoreRefusal(
      `Entry ${stranger.id} belongs to trial "${stranger.trial}", not to "${trial}"; nothing was kept.`,
    );
}

/** Throws when a blob is larger than a store takes. */
export function refuseLargeBlob(bytes: Uint8Array): void {
  if (bytes.byteLength > LARGEST_BLOB)
    throw new StoreRefusal(
      `The file has ${Math.ceil(bytes.byteLength / 1e6)} MB and at most ${Math.floor(LARGEST_BLOB / 1e6)} MB are taken; make the picture smaller.`,
    );
}
