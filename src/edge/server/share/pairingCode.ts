import type { DeviceRole } from '../../store/devices.ts';

/** Letters and digits that nobody mistakes for one another when read aloud or off a screen: no 0 O, 1 I L, 2 Z, 5 S, 8 B. */
export const CODE_LETTERS = '34679ACDEFGHJKMNPQRTUVWXY';
export const CODE_LENGTH = 6;
/** How long a code may be used, ms. */
export const CODE_LIFE_MS = 10 * 60_000;
/** After so many wrong tries the code is void and another one takes its place. */
export const MOST_WRONG_TRIES = 5;

/** A code that lets one device in. */
export interface PairingCode {
  code: string;
  role: DeviceRole;
  /** ms since 1970 */
  until: number;
  wrongTries: number;
}

/** A whole number from 0 to below `under`, each as likely as the others and not to be foreseen. */
export type RandomBelow = (under: number) => number;

export function newCode(role: DeviceRole, now: number, randomBelow: RandomBelow): PairingCode {
  const letters = Array.from({ length: CODE_LENGTH }, () => CODE_LETTERS[randomBelow(CODE_LETTERS.length)]);
  return { code: letters.join(''), role, until: now + CODE_LIFE_MS, wrongTries: 0 };
}

export type CodeTry =
  | { outcome: 'right'; role: DeviceRole; left: null }
  /** There is no code, or its time is over. */
  | { outcome: 'none'; left: null }
  | { outcome: 'wrong'; left: PairingCode }
  /** Wrong once too often: `left` is a new code. */
  | { outcome: 'renewed'; left: PairingCode };

/** Tries a code as typed: capital or small, with spaces or hyphens. `left` is what is open afterwards. */
export function tryCode(open: PairingCode | null, typed: string, now: number, randomBelow: RandomBelow): CodeTry {
  if (open === null || now >= open.until) return { outcome: 'none', left: null };
  if (typed.toUpperCase().replace(/[\s-]/g, '') === open.code) return { outcome: 'right', role: open.role, left: null };
  const wrongTries = open.wrongTries + 1;
  if (wrongTries < MOST_WRONG_TRIES) return { outcome: 'wrong', left: { ...open, wrongTries } };
  return { outcome: 'renewed', left: newCode(open.role, now, randomBelow) };
}
