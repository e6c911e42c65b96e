import { textHash } from '../../journal/textHash.ts';

/** A file's hash as the Frictionless standard writes it (data-resource, `hash`): the name of the way, a colon, hexadecimal digits. */
export const tableHash = (text: string): string => `sha256:${textHash(text)}`;
