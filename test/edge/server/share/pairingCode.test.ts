import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CODE_LENGTH,
  CODE_LETTERS,
  CODE_LIFE_MS,
  newCode,
  type PairingCode,
  tryCode,
} from '../../../../src/edge/server/share/pairingCode.ts';

const first = () => 0;
const open: PairingCode = { code: 'K7M3QX', role: 'recorder', until: 1000, wrongTries: 0 };

describe('a code', () => {
  it('is six letters and digits of those that nobody mistakes', () => {
    let next = 0;
    const { code } = newCode('reader', 0, (under) => next++ % under);
    expect(code).toBe(CODE_LETTERS.slice(0, CODE_LENGTH));
    for (const mistaken of '0O1IL2Z5S8B') expect(CODE_LETTERS).not.toContain(mistaken);
    expect(new Set(CODE_LETTERS).size).toBe(CODE_LETTERS.length);
  });

  it('is open for ten minutes', () => {
    expect(CODE_LIFE_MS).toBe(600_000);
    expect(newCode('reader', 5, first).until).toBe(600_005);
  });
});

describe('trying a code', () => {
  it.each(['K7M3QX', 'k7m3qx', ' k7m 3qx ', 'K7M-3QX'])('"%s" is right, once', (typed) => {
    expect(tryCode(open, typed, 0, first)).toEqual({ outcome: 'right', role: 'recorder', left: null });
  });

  it('is over at its last moment, and when there is none', () => {
    expect(tryCode(open, open.code, 999, first).outcome).toBe('right');
    expect(tryCode(open, open.code, 1000, first)).toEqual({ outcome: 'none', left: null });
    expect(tryCode(null, open.code, 0, first)).toEqual({ outcome: 'none', left: null });
  });

  it('ends with the fifth wrong try: then even the right one is wrong', () => {
    let left: PairingCode | null = open;
    const outcomes = [1, 2, 3, 4, 5].map(() => {
      const tried = tryCode(left, 'AAAAAA', 0, first);
      left = tried.left;
      return tried.outcome;
    });
    expect(outcomes).toEqual(['wrong', 'wrong', 'wrong', 'wrong', 'renewed']);
    expect(left).toEqual({ code: '333333', role: 'recorder', until: CODE_LIFE_MS, wrongTries: 0 });
    expect(tryCode(left, open.code, 0, first).outcome).toBe('wrong');
  });

  it('never lets in who does not know it, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        fc.pre(typed.toUpperCase().replace(/[\s-]/g, '') !== open.code);
        expect(tryCode(open, typed, 0, first).outcome).toBe('wrong');
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
