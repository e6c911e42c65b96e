import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../src/journal/entryCheck.ts';
import { idTime } from '../../src/journal/idTime.ts';
import { type IdState, NO_ID_YET, newId, RANDOM_BYTES, seenId } from '../../src/journal/newId.ts';

const SEED = 20261125;
const NOON = Date.UTC(2026, 9, 3, 12);
const bytes = (fill: number) => new Uint8Array(RANDOM_BYTES).fill(fill);
const isId = (id: string) =>
  checkEntry({ id, trial: 't', kind: 'k', at: '2026-10-03T12:00:00Z', by: '', device: '', body: {} }).ok;

/** Ids made one after the other at the given times. */
function made(times: readonly number[], from: IdState = NO_ID_YET): string[] {
  let state = from;
  return times.map((now, i) => {
    const next = newId(state, now, bytes(i * 37));
    state = next.state;
    return next.id;
  });
}

describe('newId', () => {
  it('is a UUIDv7 of its time, as RFC 9562 §5.7 lays it out', () => {
    const { id } = newId(NO_ID_YET, NOON, bytes(0xff));
    expect(id).toBe(
      `${NOON.toString(16)
        .padStart(12, '0')
        .replace(/^(.{8})/, '$1-')}-70ff-bfff-ffffffffffff`,
    );
    expect(idTime(id)).toBe(NOON);
    expect(isId(id)).toBe(true);
  });

  it('counts on within a millisecond and while the clock stands back', () => {
    const ids = made([NOON, NOON, NOON - 3_600_000, NOON + 1]);
    expect([...ids].sort()).toEqual(ids);
    expect(ids.map(idTime)).toEqual([NOON, NOON, NOON, NOON + 1]);
  });

  it('moves on by a millisecond when the count is full', () => {
    const { id, state } = newId({ time: NOON, counter: 0xfff }, NOON, bytes(0));
    expect(idTime(id)).toBe(NOON + 1);
    expect(state.time).toBe(NOON + 1);
  });

  it('comes after whatever was seen, own or of another device', () => {
    const [ahead] = made([NOON + 7_200_000]) as [string];
    const { id } = newId(seenId(NO_ID_YET, ahead), NOON, bytes(0));
    expect(id > ahead).toBe(true);
    const [behind] = made([NOON - 7_200_000]) as [string];
    const state = { time: NOON, counter: 5 };
    expect(seenId(state, behind)).toBe(state);
  });

  it('refuses what no id can be made of', () => {
    expect(() => newId(NO_ID_YET, NOON, new Uint8Array(RANDOM_BYTES - 1))).toThrow(RangeError);
    expect(() => newId(NO_ID_YET, Number.NaN, bytes(0))).toThrow(RangeError);
    expect(() => newId({ time: 2 ** 48 - 1, counter: 0xfff }, NOON, bytes(0))).toThrow(RangeError);
  });
});

describe('newId, for all clocks', () => {
  it('rises strictly and stays an id', () => {
    const clock = fc.array(fc.oneof(fc.integer({ min: -10, max: 10 }), fc.integer({ min: 0, max: 2 ** 47 })), {
      maxLength: 50,
    });
    fc.assert(
      fc.property(
        clock,
        fc.array(fc.uint8Array({ minLength: 9, maxLength: 9 }), { minLength: 1 }),
        (times, chances) => {
          let state = NO_ID_YET;
          let last = '';
          times.forEach((now, i) => {
            const next = newId(state, now, chances[i % chances.length]!);
            expect(isId(next.id), next.id).toBe(true);
            expect(next.id > last, `${next.id} after ${last} at ${now}`).toBe(true);
            expect(seenId(NO_ID_YET, next.id)).toEqual(next.state);
            [state, last] = [next.state, next.id];
          });
        },
      ),
      { seed: SEED, numRuns: 300 },
    );
  });
});
