import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blindCodes, initialsOf } from '../../../src/methods/decide/blindCodes.ts';

const PLAIN = { seed: 'club', names: [] as string[] };
const backwards = (code: string) => [...code].reverse().join('');

describe('initials of a name', () => {
  const cases: [string, string[]][] = [
    ['Nine Elms', ['NI', 'EL', 'NE', 'NN', 'LM']],
    ['Quill', ['QU', 'QL']],
    ['Éclair', ['EC', 'CL']],
    ['  ', []],
    ['A', []],
  ];
  it.each(cases)('%s', (name, wanted) => {
    expect(new Set(initialsOf(name))).toEqual(new Set(wanted));
  });
});

describe('blind codes', () => {
  it('are two consonants, each once, and no code is another read backwards', () => {
    const codes = blindCodes(30, PLAIN);
    for (const code of codes) expect(code).toMatch(/^[BCDFGHJKLMNPQRSTVWXZ]{2}$/);
    expect(new Set(codes).size).toBe(30);
    for (const code of codes) expect(codes, code).not.toContain(backwards(code));
  });

  it('spell no unit, in either order', () => {
    const codes = blindCodes(40, PLAIN);
    for (const speaking of ['KN', 'KV', 'FT', 'HP', 'LH', 'RH']) {
      expect(codes).not.toContain(speaking);
      expect(codes).not.toContain(backwards(speaking));
    }
  });

  it('leave out codes already on tags, and their reverse', () => {
    const [first, second] = blindCodes(2, PLAIN);
    const others = blindCodes(40, { ...PLAIN, taken: [first!.toLowerCase(), backwards(second!)] });
    expect(others).not.toContain(first);
    expect(others).not.toContain(second);
  });

  it('add a figure when the pairs run out, and refuse when everything has', () => {
    const codes = blindCodes(150, PLAIN);
    expect(new Set(codes).size).toBe(150);
    expect(codes.filter((code) => /^[A-Z]{2}\d$/.test(code)).length).toBeGreaterThan(50);
    expect(() => blindCodes(10_000, PLAIN)).toThrow(RangeError);
  });

  it('differ by seed and are the same for the same one', () => {
    expect(blindCodes(12, PLAIN)).toEqual(blindCodes(12, PLAIN));
    expect(blindCodes(12, PLAIN)).not.toEqual(blindCodes(12, { ...PLAIN, seed: 'other' }));
  });

  it('never spell a maker, whoever the makers are', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[A-Z][a-z]{1,6}( [A-Z][a-z]{1,6})?$/), { maxLength: 8 }),
        fc.string({ minLength: 1 }),
        fc.integer({ min: 1, max: 60 }),
        (names, seed, count) => {
          const codes = blindCodes(count, { names, seed });
          const initials = new Set(names.flatMap(initialsOf).flatMap((pair) => [pair, backwards(pair)]));
          expect(new Set(codes).size).toBe(count);
          for (const code of codes) expect(initials.has(code.slice(0, 2)), code).toBe(false);
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });
});
