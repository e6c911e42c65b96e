/** Bending stiffness of bundles, strands sliding and stuck. Wanted figures: computed independently, exact for 7 strands. */
import { describe, expect, it } from 'vitest';
import {
  hexagonalOffsets,
  slipStiffness,
  stickStiffness,
  stickStiffnessOfRound,
} from '../../src/methods/flex/bounds.ts';
import { expectClose } from '../tolerance.ts';

describe('strands that slide', () => {
  it('2107 strands of 0.254 mm at 115 GPa', () => {
    const bundle = { strands: 2107, strandDiameter: 0.254e-3, modulus: 115e9 };
    expectClose(slipStiffness(bundle), 0.049507, { relative: 1e-5 });
    const finer = { ...bundle, strands: 4 * bundle.strands, strandDiameter: bundle.strandDiameter / 2 };
    expectClose(slipStiffness(finer), slipStiffness(bundle) / 4, { relative: 1e-14, because: 'exact' });
  });
});

describe('strands stuck together', () => {
  it.each([
    [1, 7, 55 / 7],
    [2, 19, 21.210526316],
    [3, 37, 41.216216216],
  ])('%i rings: %i strands, %f times the sliding ones', (rings, strands, ratio) => {
    const bundle = { strands, strandDiameter: 0.3e-3, modulus: 115e9 };
    const offsets = hexagonalOffsets(rings, bundle.strandDiameter);
    expect(offsets).toHaveLength(strands);
    expectClose(stickStiffness(bundle, offsets) / slipStiffness(bundle), ratio, { relative: 1e-9 });
  });

  it('the even spread comes near the packing for many strands', () => {
    const rings = 15;
    const strands = 1 + 3 * rings * (rings + 1);
    const bundle = { strands, strandDiameter: 0.25e-3, modulus: 115e9 };
    const packed = stickStiffness(bundle, hexagonalOffsets(rings, bundle.strandDiameter));
    const round = 2 * Math.sqrt((strands * Math.sqrt(12) * (bundle.strandDiameter / 2) ** 2) / Math.PI);
    expectClose(stickStiffnessOfRound(bundle, round), packed, { relative: 0.08, because: 'a hexagon is not a circle' });
  });
});
