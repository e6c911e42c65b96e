import { nextId } from '../journal/device.ts';

/** Characters of an id that name a reading: 40 random bits, so that two devices never take the same name. */
const NAME_LENGTH = 10;

/** A short name that no other device gives. */
export const freshName = (letter: string): string => `${letter}-${nextId().replaceAll('-', '').slice(-NAME_LENGTH)}`;
