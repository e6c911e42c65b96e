/** Wall of a cut face in the manner of IEC 60811-201:2012, and sections known by geometry alone. */
import { describe, expect, it } from 'vitest';
import { densityByDiameters, densityUnderWater } from '../../src/methods/jacket/density.ts';
import { sectionShares } from '../../src/methods/jacket/shares.ts';
import { meanToTwoDecimals, READINGS_ASKED, wallOfFace } from '../../src/methods/jacket/wall.ts';
import { expectClose } from '../tolerance.ts';

/** Radial readings of a bore of 12 mm, 0.3 mm off the middle of a circle of 16 mm, every 60° from the thinnest place; computed independently. */
const OFF_CENTRE = [1.7, 1.8457801, 2.1457801, 2.3, 2.1457801, 1.8457801];
const face = wallOfFace(OFF_CENTRE.map((mm, i) => ({ thickness: mm / 1000, angle: 60 * i })));

describe('two circles 0.3 mm apart, wall 2 mm', () => {
  it('mean 1.9971868 mm: readings toward the middle of the bore, not 2', () => {
    expectClose(face.mean * 1000, 1.9971868, { absolute: 1e-7, because: 'the readings are printed to seven decimals' });
    expectClose(meanToTwoDecimals(face.mean) * 1000, 2, { relative: 1e-12 });
  });

  it('least 1.7 mm; least over greatest 73.913 %, (greatest − least)/greatest 26.087 %: two numbers by one name', () => {
    expectClose(face.least * 1000, 1.7, { relative: 1e-12 });
    expectClose(100 * face.concentricity, 73.913, { absolute: 5e-4 });
    expectClose(100 * face.eccentricity, 26.087, { absolute: 5e-4 });
  });

  it('2e/(D − d) is 15 % and comes from the first harmonic', () => {
    expectClose((2 * face.offset! * 1000) / (16 - 12), 0.15, {
      absolute: 0.002,
      because: 'six radials are no exact cosine',
    });
    expectClose(face.thinnestAt! % 360, 0, { absolute: 1e-6 });
  });
});

it('six readings are asked (IEC 60811-201: about 60° apart, the first at the thinnest place)', () => {
  expect(READINGS_ASKED).toBe(6);
});

describe('a section by geometry: jacket area is π w (D − w)', () => {
  const exact = (value: number) => ({ value, u: 0 });
  it('shares of D 16 mm, w 2 mm, 50 mm² of metal', () => {
    const shares = sectionShares(exact(50e-6), exact(16e-3), exact(2e-3));
    expectClose(shares.jacket.value, 1 - (12 / 16) ** 2, { relative: 1e-12 });
    expectClose(shares.metal.value, 50 / (64 * Math.PI), { relative: 1e-12 });
    expectClose(shares.metal.value + shares.air.value + shares.jacket.value, 1, { relative: 1e-12 });
  });

  it('density both ways', () => {
    expectClose(densityByDiameters(exact(0.1), exact(16e-3), exact(2e-3)).value, 0.1 / (Math.PI * 2e-3 * 14e-3), {
      relative: 1e-12,
    });
    // 13.00 g in air and 3.00 g under water of 998.2 kg/m³: Archimedes.
    expectClose(densityUnderWater(exact(0.013), exact(0.003)).value, 1.3 * 998.2, { relative: 1e-12 });
  });
});
