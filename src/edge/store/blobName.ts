import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** The name of a blob: the SHA-256 of its bytes in hexadecimal (FIPS 180-4), so the same photo is kept once. */
export function blobName(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}
