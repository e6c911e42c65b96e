import { createHash, randomBytes } from 'node:crypto';

/** 256 bits: nobody guesses that. */
const TOKEN_BYTES = 32;

/** A new token for a device: random, in letters that a header may hold. */
export function newToken(): string {
  return randomBytes(TOKEN_BYTES).toString('base64url');
}

/** What is kept of a token: its SHA-256 in hexadecimal. A token is random through and through, so no salt is needed. */
export function tokenHash(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}
