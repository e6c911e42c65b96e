import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rateCounter } from '../../../src/edge/server/rates.ts';

describe('counting', () => {
  it('lets a burst through, then one at a time', () => {
    const wait = rateCounter({ burst: 3, perSecond: 0.5 });
    expect([0, 0, 0, 0].map((now) => wait('a', now))).toEqual([0, 0, 0, 2]);
    expect(wait('a', 1000)).toBe(1);
    expect(wait('a', 2000)).toBe(0);
    expect(wait('a', 2000)).toBe(2);
    expect(wait('b', 2000)).toBe(0);
  });

  it('is not turned back by a clock that steps back', () => {
    const wait = rateCounter({ burst: 1, perSecond: 1 });
    expect(wait('a', 10_000)).toBe(0);
    expect(wait('a', 0)).toBe(1);
    expect(wait('a', 1000)).toBe(0);
  });

  it('remembers so many addresses and no more', () => {
    const wait = rateCounter({ burst: 1, perSecond: 0.001 }, 2);
    expect([wait('a', 0), wait('b', 0), wait('b', 0) > 0, wait('c', 0)]).toEqual([0, 0, true, 0]);
    expect(wait('a', 0)).toBe(0); // forgotten when the third one came
  });

  it('never lets more through than the rate allows, and tells a wait that is long enough', () => {
    const steps = fc.array(fc.integer({ min: 0, max: 3000 }), { maxLength: 80 });
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 20 }), (gaps, burst, tenths) => {
        const perSecond = tenths / 10;
        const wait = rateCounter({ burst, perSecond });
        let now = 0;
        let through = 0;
        for (const gap of gaps) {
          now += gap;
          const seconds = wait('a', now);
          if (seconds === 0) through += 1;
          else {
            now += seconds * 1000;
            expect(wait('a', now)).toBe(0);
            through += 1;
          }
        }
        expect(through).toBeLessThanOrEqual(burst + (now / 1000) * perSecond + 1e-9);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
