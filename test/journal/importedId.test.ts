import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { importedId } from '../../src/journal/importedId.ts';

const SEED = 20261125;
const ROW = { cable: 'quill', claimed_size: '2 AWG' };
const TIME = Date.UTC(2026, 9, 3);

describe('importedId', () => {
  it('is a UUIDv7 whose first 48 bits are the time and whose next 12 are the place', () => {
    const id = importedId('club', 'cable', ROW, TIME, 5);
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)).toBe(TIME);
    expect(id.slice(15, 18)).toBe('005');
  });

  it('does not depend on column order, blanks or line ends, but on everything said', () => {
    const id = importedId('club', 'cable', ROW, TIME, 0);
    expect(importedId('club', 'cable', { claimed_size: ' 2 AWG', cable: 'quill\r\n', note: '' }, TIME, 0)).toBe(id);
    const others = [
      importedId('other', 'cable', ROW, TIME, 0),
      importedId('club', 'specimen', ROW, TIME, 0),
      importedId('club', 'cable', { ...ROW, claimed_size: '4 AWG' }, TIME, 0),
      importedId('club', 'cable', ROW, TIME + 1, 0),
      importedId('club', 'cable', ROW, TIME, 1),
    ];
    expect(new Set([id, ...others]).size).toBe(6);
  });

  it('keeps the order of rows of one time, beyond what 12 bits hold', () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.nat(100_000), (a, b) => {
        fc.pre(a !== b);
        const [first, second] = [Math.min(a, b), Math.max(a, b)];
        expect(importedId('t', 'k', { x: 'z' }, TIME, first) < importedId('t', 'k', { x: 'a' }, TIME, second)).toBe(
          true,
        );
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('takes times before 1970 as 1970', () => {
    expect(importedId('t', 'k', ROW, -5, 0)).toBe(importedId('t', 'k', ROW, 0, 0));
  });
});
