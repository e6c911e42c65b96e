import { describe, expect, it } from 'vitest';
import { sectionInput } from '../../../src/report/section/sectionInput.ts';
import { reach, sectionRadii } from '../../../src/report/section/sectionRadii.ts';
import { brackenfell, saltmarsh, unmeasured } from '../../fixtures/findings.ts';
import { expectClose } from '../../tolerance.ts';

const whole = sectionInput(brackenfell);

describe('radii of a cut face', () => {
  it('give the metal back as its area', () => {
    const radii = sectionRadii(whole);
    expectClose(Math.PI * radii.metal! ** 2, 34.8, { relative: 1e-12 });
    expectClose(Math.PI * radii.claim! ** 2, 33.63, { relative: 1e-12 });
  });

  it.each([
    ['outer diameter', { outerDiameter: null }, { outer: (7.9 + 3.8) / 2, bundle: 3.95, jacketInside: 3.95 }],
    ['bundle', { bundleDiameter: null }, { outer: 5.85, bundle: 3.95, jacketInside: 3.95 }],
    ['wall', { wall: null }, { outer: 5.85, bundle: 3.95, jacketInside: 3.95 }],
    ['outer diameter and wall', { outerDiameter: null, wall: null }, { outer: null, bundle: 3.95, jacketInside: null }],
    ['bundle and wall', { bundleDiameter: null, wall: null }, { outer: 5.85, bundle: null, jacketInside: null }],
  ])('without %s', (_what, missing, wanted) => {
    const got = sectionRadii({ ...whole, ...missing });
    for (const key of ['outer', 'bundle', 'jacketInside'] as const) {
      if (wanted[key] === null) expect(got[key], key).toBeNull();
      else expectClose(got[key]!, wanted[key], { relative: 1e-12, because: key });
    }
  });

  it('do not let a wall thicker than the cable through', () => {
    expect(sectionRadii({ ...whole, wall: 7, bundleDiameter: null }).jacketInside).toBeNull();
  });

  it('reach as far as the widest known thing', () => {
    expect(reach(sectionRadii(whole))).toBe(5.85);
    expect(reach(sectionRadii(sectionInput(saltmarsh)))).toBe(5.75);
    expect(reach(sectionRadii(sectionInput(unmeasured)))).toBeNull();
  });
});
