import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layFactorOfBundle } from '../../../src/methods/assay/lay.ts';
import { expectClose } from '../../tolerance.ts';

/** Mean over the disc of the length of a helix at each radius, by Simpson's rule in the radius. */
function meanOverDisc(diameter: number, lay: number): number {
  const steps = 2000;
  const R = diameter / 2;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const r = (R * i) / steps;
    const weight = i === 0 || i === steps ? 1 : i % 2 ? 4 : 2;
    sum += weight * r * Math.hypot(1, (2 * Math.PI * r) / lay);
  }
  return ((sum * R) / steps / 3 / (R * R)) * 2;
}

describe('lay factor of a bundle', () => {
  it.each([
    [0.008, 0.1],
    [0.008, 0.05],
    [0.012, 0.09],
    [0.002, 0.2],
    [0.001, 0.35],
  ])('bundle of %s m laid once round in %s m: as integrated over the disc', (d, l) => {
    expectClose(layFactorOfBundle(d, l), meanOverDisc(d, l), { absolute: 1e-9 });
  });

  it('is never below 1, grows with the bundle, falls with the lay, and meets its series without a step', () => {
    const size = fc.double({ min: 1e-4, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: 0.01, max: 5, noNaN: true }), (d, l) => {
        const k = layFactorOfBundle(d, l);
        expect(k).toBeGreaterThanOrEqual(1);
        expect(layFactorOfBundle(d * 1.1, l)).toBeGreaterThanOrEqual(k);
        expect(layFactorOfBundle(d, l * 1.1)).toBeLessThanOrEqual(k);
      }),
      { seed: 20261125, numRuns: 200 },
    );
    const at = (q: number) => layFactorOfBundle(q / Math.PI, 1);
    expectClose(at(0.01 - 1e-12), at(0.01 + 1e-12), { absolute: 1e-9 });
  });
});
