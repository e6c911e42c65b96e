import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countDifferences } from '../../../src/edge/cli/countDifferences.ts';
import { compareJson } from '../../../src/edge/cli/firstDifference.ts';

describe('comparing published JSON with computed JSON', () => {
  it.each([
    [
      { a: 1, b: [1, 2] },
      { b: [1, 2], a: 1 },
    ],
    [null, null],
    [[], []],
    [{ a: 1 }, { a: 1 + 1e-12 }],
  ])('%j and %j are the same', (published, computed) => {
    expect(compareJson(published, computed, 1e-9).first).toBeNull();
  });

  it.each([
    [{ a: { b: [1, { c: 2 }] } }, { a: { b: [1, { c: 3 }] } }, 'a.b[1].c', 2, 3],
    [{ a: 1 }, { a: '1' }, 'a', 1, '1'],
    [{ a: 1 }, {}, 'a', 1, undefined],
    [{}, { a: null }, 'a', undefined, null],
    [{ a: [1] }, { a: [1, 2] }, 'a.length', 1, 2],
    [{ a: [] }, { a: {} }, 'a', [], {}],
    [{ a: 0 }, { a: 1e-9 }, 'a', 0, 1e-9],
    [{ a: -1 }, { a: 1 }, 'a', -1, 1],
    [1, null, 'the whole', 1, null],
    [{ a: 1, b: 2 }, { a: 1 + 1e-8, b: 3 }, 'a', 1, 1 + 1e-8],
  ])('%j and %j differ first at %s', (published, computed, place, theirs, ours) => {
    expect(compareJson(published, computed, 1e-9).first).toEqual({ place, published: theirs, computed: ours });
  });

  it('names the first figure beside the first difference of any kind', () => {
    const { first, firstFigure } = compareJson({ said: 'a', b: [1, 2] }, { said: 'b', b: [1, 3] }, 0);
    expect([first?.place, firstFigure?.place]).toEqual(['said', 'b[1]']);
    expect(compareJson({ said: 'a' }, { said: 'b' }, 0).firstFigure).toBeNull();
  });

  it('takes what rounding leaves of nothing for nothing, and nothing larger', () => {
    expect(compareJson([0], [1.1e-16], 1e-9).first).toBeNull();
    expect(countDifferences([0, 1], [1.1e-16, 2], 1e-9)).toBe(1);
    expect(compareJson([0], [1e-9], 1e-9).first).toEqual({ place: '[0]', published: 0, computed: 1e-9 });
  });

  it('reports the largest difference that it let pass', () => {
    expect(compareJson([100, 1], [100, 1 + 1e-10], 1e-9).largest).toBeCloseTo(1e-10, 14);
    expect(compareJson([100, 1], [100, 1], 1e-9).largest).toBe(0);
  });

  it('finds nothing between a value and itself, and something between a value and the same value changed', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const copy: unknown = JSON.parse(JSON.stringify(value));
        expect(compareJson(JSON.parse(JSON.stringify(value)), copy, 0).first).toBeNull();
        expect(compareJson({ held: copy }, { held: [copy] }, 0).first).not.toBeNull();
      }),
      { seed: 20261125 },
    );
  });
});
