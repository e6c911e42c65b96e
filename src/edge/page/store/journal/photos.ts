/** Photos: hashed and kept here first, then handed to the bench computer under that hash. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { blobsToSend, writeBlob } from './database.ts';
import { ownDatabase } from './journal.ts';
import { sendBlob } from './wire.ts';

/** Largest photo that the bench computer takes, bytes. */
const LARGEST = 32 * 1024 * 1024;

/**
 * Keeps a photo in this browser and answers its name, the SHA-256 of its bytes.
 *
 * @throws with a sentence for the person when it is too large, or this browser keeps nothing
 */
export async function keepPhoto(trial: string, file: File): Promise<string> {
  if (file.size > LARGEST)
    throw new Error(`Found a photo of ${Math.round(file.size / 1e6)} MB; expected at most 32 MB.`);
  const own = await ownDatabase();
  if (own === null) throw new Error('This browser keeps nothing, so it cannot hold a photo. Write a note instead.');
  const bytes = new Uint8Array(await file.arrayBuffer());
  // Not `crypto.subtle`: a page that came over plain http from another computer has none.
  const name = bytesToHex(sha256(bytes));
  await writeBlob(own, { trial, name, bytes, sent: false });
  return name;
}

/** Hands over every photo that waits; false when the bench computer could not be reached. */
export async function photosFor(trial: string): Promise<boolean> {
  const own = await ownDatabase();
  if (own === null) return true;
  for (const blob of await blobsToSend(own, trial)) {
    const sent = await sendBlob(trial, blob.name, blob.bytes);
    if (!sent.ok) return false;
    await writeBlob(own, { ...blob, sent: true });
  }
  return true;
}
