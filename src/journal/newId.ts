/**
 * Ids of entries: UUIDv7 (RFC 9562 §5.7) that rise strictly on one device, even when its clock steps back, and that sort
 * after everything the device has seen, so a correction always comes after what it corrects.
 */
import { idTime } from './idTime.ts';

/** What the next id must come after. Plain data; a device that starts anew takes it from its journal, see {@link seenId}. */
export interface IdState {
  /** Milliseconds since 1970 of the last id. */
  time: number;
  /** Its 12 bits below the millisecond (RFC 9562 §6.2, method 1: a counter). */
  counter: number;
}

export const NO_ID_YET: IdState = Object.freeze({ time: -1, counter: 0 });

/** Random bytes that one id takes: 8 for its last 62 bits, 1 for where the counter starts. */
export const RANDOM_BYTES = 9;
const LAST_COUNT = 0xfff;
/** Largest time that the 48 bits hold, ms. */
const LAST_MILLISECOND = 2 ** 48 - 1;

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, '0');

function next(state: IdState, now: number, start: number): IdState {
  const time = Math.min(LAST_MILLISECOND, Math.max(0, Math.floor(now)));
  if (time > state.time) return { time, counter: start };
  if (state.counter < LAST_COUNT) return { time: state.time, counter: state.counter + 1 };
  if (state.time === LAST_MILLISECOND) throw new RangeError('no later id is possible');
  return { time: state.time + 1, counter: start };
}

/**
 * The next id, and what the one after it must come after.
 *
 * A clock that stands still or steps back keeps the last id's time and counts on; a full counter moves on by a millisecond.
 *
 * @param now milliseconds since 1970 by the device's clock, however wrong
 * @param random {@link RANDOM_BYTES} bytes from a good source: other devices make ids in the same millisecond
 * @throws RangeError when there are too few random bytes, `now` is no number, or no later id is possible (the year 10889)
 */
export function newId(state: IdState, now: number, random: Uint8Array): { id: string; state: IdState } {
  if (random.length < RANDOM_BYTES) throw new RangeError(`an id takes ${RANDOM_BYTES} random bytes`);
  if (!Number.isFinite(now)) throw new RangeError(`now must be a number of milliseconds, not ${now}`);
  // The counter starts in the lower eighth, so that it seldom runs over.
  const made = next(state, now, random[8]!);
  const clock = hex(made.time, 12);
  const rest = [(random[0]! & 0x3f) | 0x80, ...random.subarray(1, 8)].map((byte) => hex(byte, 2)).join('');
  const id = `${clock.slice(0, 8)}-${clock.slice(8)}-7${hex(made.counter, 3)}-${rest.slice(0, 4)}-${rest.slice(4)}`;
  return { id, state: made };
}

/** The state once an id was seen, one's own or another device's: the next id comes after it. */
export function seenId(state: IdState, id: string): IdState {
  const time = idTime(id);
  const counter = Number.parseInt(id.slice(15, 18), 16);
  const later = time > state.time || (time === state.time && counter > state.counter);
  return later ? { time, counter } : state;
}
