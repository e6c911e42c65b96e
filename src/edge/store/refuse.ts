import type { Entry } from '../../journal/entry.ts';
import { blobKind, KINDS_TAKEN } from './blobKind.ts';
import { blobName } from './blobName.ts';
import { BlobRefusal, DamagedData, LARGEST_BLOB, StoreRefusal } from './store.ts';

/** Throws when an entry names another trial than the one it is appended to. */
export function refuseStrangers(trial: string, entries: readonly Entry[]): void {
  const stranger = entries.find((entry) => entry.trial !== trial);
  if (stranger !== undefined)
    throw new StoreRefusal(
      `Entry ${stranger.id} belongs to trial "${stranger.trial}", not to "${trial}"; nothing was kept.`,
    );
}

/** Throws when a blob is larger than a store takes, or of a kind that none takes. */
export function refuseUnfitBlob(bytes: Uint8Array): void {
  if (bytes.byteLength > LARGEST_BLOB)
    throw new BlobRefusal(
      `The file has ${Math.ceil(bytes.byteLength / 1e6)} MB and at most ${Math.floor(LARGEST_BLOB / 1e6)} MB are taken; make the picture smaller.`,
    );
  if (bytes.byteLength === 0) throw new BlobRefusal('The file is empty; nothing was kept.');
  if (blobKind(bytes) === null)
    throw new BlobRefusal(
      `What is in the file is none of the kinds that are kept: ${KINDS_TAKEN}; save it as one of these and add it again.`,
    );
}

/** The bytes of a blob as they were read. Throws when they are no longer those that its name was made of. */
export function refuseAlteredBlob(name: string, bytes: Uint8Array): Uint8Array {
  if (blobName(bytes) === name) return bytes;
  throw new DamagedData(`The photo or log ${name} is not what was kept: the disk damaged it.`);
}

/** Throws when a device would be let in a second time. */
export function knownDevice(): StoreRefusal {
  return new StoreRefusal('A device with this id or this token was added before; add it with new ones.');
}
