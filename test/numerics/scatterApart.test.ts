import { describe, expect, it } from 'vitest';
import { SeededDraws } from '../../src/numerics/random.ts';
import { scatterOfEach } from '../../src/numerics/scatterApart.ts';
import { typeA } from '../../src/numerics/typeA.ts';
import { expectClose } from '../tolerance.ts';

const calm = [[[66, 67, 66]], [[80, 80, 81]], [[55, 54, 55]], [[97, 97, 96]]];

describe('scatter of each of several things', () => {
  it('is that of all together where all scatter alike', () => {
    const all = typeA({ groups: calm.flat(), resolution: 1 });
    for (const one of scatterOfEach(calm, 1)) expect(one).toEqual({ ...all, apart: null });
  });

  it('leaves one slip to the thing that it was made on', () => {
    const found = scatterOfEach([...calm, [[66, 70, 300]]], 1);
    const without = typeA({ groups: calm.flat(), resolution: 1 });
    for (const one of found.slice(0, 4)) expectClose(one.variance, without.variance, { relative: 1e-12 });
    expect(found[4].apart).toBeGreaterThan(100);
    expectClose(found[4].variance, 17945 + 1 / 3, { relative: 1e-6, because: 's² of 66, 70 and 300' });
    expect(found[4].dof).toBe(6);
  });

  it('finds two that stand apart, the furthest first', () => {
    const found = scatterOfEach([...calm, [[66, 70, 300]], [[40, 65, 52]]], 1);
    expect(found.map((one) => one.apart !== null)).toEqual([false, false, false, false, true, true]);
  });

  it('does not part one step of the display from none', () => {
    const found = scatterOfEach([[[5, 5]], [[6, 6]], [[7, 7]], [[8, 8]], [[9, 10]]], 1);
    expect(found.every((one) => one.apart === null)).toBe(true);
  });

  it('says nothing where there is nothing to compare with', () => {
    expect(scatterOfEach([[[1, 200]], [[3]], [[4]]], 1).every((one) => one.apart === null)).toBe(true);
  });

  it('calls things that scatter alike apart in no more than about 1 of 100 trials', () => {
    const random = new SeededDraws('5ca77e20aaf100d05ca77e20aaf100d0');
    const trials = 1500;
    let called = 0;
    for (let t = 0; t < trials; t++) {
      const things = Array.from({ length: 6 }, () => [Array.from({ length: 3 }, () => random.normal())]);
      if (scatterOfEach(things, 0.1).some((one) => one.apart !== null)) called++;
    }
    expect(called / trials).toBeLessThan(0.017);
    expect(called).toBeGreaterThan(0);
  });
});
