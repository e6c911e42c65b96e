import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** A file's hash as the Frictionless standard writes it (data-resource, `hash`): the name of the way, a colon, hexadecimal digits. */
export const tableHash = (text: string): string => `sha256:${bytesToHex(sha256(utf8ToBytes(text)))}`;
