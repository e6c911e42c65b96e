import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** SHA-256 of a text in UTF-8, 64 hexadecimal digits. */
export const textHash = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** Hexadecimal digits of a seed: 128 bits. */
const SEED_DIGITS = 32;

/** What draws start from where they follow from a text. */
export const seedFromText = (text: string): string => seedFromHash(textHash(text));

/** The same where the text was hashed before. */
export const seedFromHash = (hash: string): string => hash.slice(0, SEED_DIGITS);
