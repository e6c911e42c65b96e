import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellNumber, cellQuantity, plainDecimal } from '../../src/journal/cellQuantity.ts';
import { readTypedNumber } from '../../src/units/typedNumber.ts';
import { readTypedQuantity } from '../../src/units/typedQuantity.ts';

const SEED = 20261125;
const decimal = fc
  .tuple(fc.nat(999_999), fc.option(fc.stringMatching(/^\d{1,6}$/), { nil: null }))
  .map(([whole, part]) => (part === null ? String(whole) : `${whole}.${part}`));

describe('plainDecimal', () => {
  it.each(['', '.5', '5.', '1.2.3', '-1', '1e3', '1,5', ' 1', '½', '1234567890123456'])(
    'leaves "%s" to the full reader',
    (text) => {
      expect(plainDecimal(text)).toBeNull();
    },
  );

  it('reads what it takes exactly as the full reader does', () => {
    fc.assert(
      fc.property(decimal, (text) => {
        expect({ ok: true, value: plainDecimal(text) }).toEqual(readTypedNumber(text));
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });
});

describe('plainDecimal, to the last bit', () => {
  it('gives what JavaScript itself reads, for all numbers of up to 15 characters', () => {
    const digits = fc.stringMatching(/^\d{1,14}$/);
    fc.assert(
      fc.property(digits, fc.nat(13), (text, place) => {
        const typed = place > 0 && place < text.length ? `${text.slice(0, place)}.${text.slice(place)}` : text;
        expect(Object.is(plainDecimal(typed)!.value, Number(typed)), typed).toBe(true);
      }),
      { seed: SEED, numRuns: 3000 },
    );
  });
});

describe('cellQuantity', () => {
  it('reads the same with and without the short way', () => {
    const units = [
      ['mass', 'oz'],
      ['mass', 'g'],
      ['length', 'in'],
      ['resistance', 'mohm'],
      ['temperature', 'F'],
      ['temperature', 'C'],
    ] as const;
    fc.assert(
      fc.property(decimal, fc.constantFrom(...units), (text, [dimension, unit]) => {
        const outcome = cellQuantity(text, dimension, unit);
        const wanted = readTypedQuantity(text, dimension, unit);
        if (!outcome.ok || !wanted.ok) throw new Error(`${text} ${unit} was not read`);
        expect([outcome.value.value, outcome.value.step]).toEqual([wanted.value.value, wanted.value.step]);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('lets a unit in the cell outweigh the unit column', () => {
    expect(cellQuantity('5 in', 'length', 'mm')).toMatchObject({ value: { value: 0.127 } });
  });

  it('takes the default where no unit is named, and refuses without one', () => {
    expect(cellQuantity('20', 'temperature', '', 'C')).toMatchObject({ value: { value: 293.15 } });
    expect(cellQuantity('20', 'mass', '')).toMatchObject({ ok: false });
  });

  it('remembers units without end', () => {
    for (let i = 0; i < 1200; i++) expect(cellQuantity('1', 'mass', `unit${i}`).ok).toBe(false);
    expect(cellQuantity('1', 'mass', 'kg')).toEqual({ ok: true, value: { value: 1, step: 1 } });
  });
});

describe('cellNumber', () => {
  it('reads bare numbers', () => {
    expect(cellNumber('0.01')).toEqual({ ok: true, value: { value: 0.01, step: 0.01 } });
    expect(cellNumber('-3')).toMatchObject({ value: { value: -3 } });
    expect(cellNumber('three')).toMatchObject({ ok: false });
  });
});
