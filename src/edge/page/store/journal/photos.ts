/** Photos and logs: hashed and kept here first, then handed to the bench computer under that hash. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { blobKind, isPhoto, KINDS_TAKEN, PHOTOS_TAKEN } from '../../../store/blobKind.ts';
import { blobsToSend, type Database, writeBlob } from './database.ts';
import { ownDatabase } from './journal.ts';
import { thumbnailOf } from './thumbnail.ts';
import { hasBlob, sendBlob } from './wire.ts';

/** Largest file that the bench computer takes, bytes. */
const LARGEST = 32 * 1024 * 1024;

/** A photo that is kept, by name; `thumbnail` is empty where no small version could be made. */
export interface KeptPhoto {
  photo: string;
  thumbnail: string;
}

/**
 * Keeps a photo and a small version of it in this browser, and answers their names: the SHA-256 of the bytes of each.
 *
 * @throws with a sentence for the person when it is too large or no picture, or this browser keeps nothing
 */
export async function keepPhoto(trial: string, file: File): Promise<KeptPhoto> {
  const { own, bytes } = await roomFor(file);
  if (!isPhoto(bytes)) throw new Error(`Found "${file.name}", which is no picture; expected ${PHOTOS_TAKEN}.`);
  const small = await thumbnailOf(file);
  return {
    thumbnail: small === null ? '' : await keep(own, trial, small),
    photo: await keep(own, trial, bytes),
  };
}

/**
 * Keeps a file of readings beside its rows in this browser, and answers its name: the SHA-256 of its bytes.
 *
 * @throws with a sentence for the person when it is too large or of no kind that is kept, or this browser keeps nothing
 */
export async function keepLog(trial: string, file: File): Promise<string> {
  const { own, bytes } = await roomFor(file);
  if (blobKind(bytes) === null) throw new Error(`Found a file of another kind; expected ${KINDS_TAKEN}.`);
  return keep(own, trial, bytes);
}

/** The bytes of a file and where to keep them; what the bench computer would refuse later is refused here. */
async function roomFor(file: File) {
  if (file.size > LARGEST)
    throw new Error(`Found a file of ${Math.round(file.size / 1e6)} MB; expected at most 32 MB.`);
  const own = await ownDatabase();
  if (own === null) throw new Error('This browser keeps nothing, so it cannot hold a file. Write a note instead.');
  return { own, bytes: new Uint8Array(await file.arrayBuffer()) };
}

async function keep(own: Database, trial: string, bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  // Not `crypto.subtle`: a page that came over plain http from another computer has none.
  const name = bytesToHex(sha256(bytes));
  await writeBlob(own, { trial, name, bytes, sent: '' });
  return name;
}

/**
 * Hands over every photo that the store of this name is not known to have: small ones first, so that lists are soon complete.
 * Answers what stood in the way; null when nothing did.
 */
export async function photosFor(trial: string, store: string): Promise<string | null> {
  const own = await ownDatabase();
  if (own === null) return null;
  const waiting = await blobsToSend(own, trial, store);
  waiting.sort((a, b) => a.bytes.length - b.bytes.length);
  for (const blob of waiting) {
    // Another store had it, and this one may: after a restore most are there.
    const there = wasSent(blob.sent) && (await hasBlob(trial, blob.name));
    const sent = there ? null : await sendBlob(trial, blob.name, blob.bytes);
    if (sent?.ok === false) return sent.sentence;
    await writeBlob(own, { ...blob, sent: store });
  }
  return null;
}

/** Earlier versions of this page noted only whether it was sent. */
const wasSent = (sent: string | boolean): boolean => sent !== '' && sent !== false;
