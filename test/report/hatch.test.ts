import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossedRing, ruledRectangle, ruledRing } from '../../src/report/hatch.ts';

const numbers = (path: string): number[][] =>
  [...path.matchAll(/M(\S+) (\S+)L(\S+) ([^M]+)/g)].map((match) => match.slice(1).map(Number));

/** Half of the last decimal kept, in both coordinates. */
const ROUNDING = 0.01;

describe('ruling', () => {
  it('rises to the right, or falls', () => {
    for (const [x1, y1, x2, y2] of numbers(ruledRing(0, 0, 10, 0, 2, 'rising')))
      expect((x2! - x1!) * (y2! - y1!)).toBeLessThan(0);
    for (const [x1, y1, x2, y2] of numbers(ruledRing(0, 0, 10, 0, 2, 'falling')))
      expect((x2! - x1!) * (y2! - y1!)).toBeGreaterThan(0);
  });

  it('draws nothing in nothing', () => {
    expect(ruledRing(0, 0, 0, 0, 5, 'rising')).toBe('');
    expect(ruledRectangle(0, 0, 0, 0, 5, 'rising')).toBe('');
  });

  it('stays in its ring: ends on one of the two edges, middles never in the hole', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 0.95, noNaN: true }),
        (outer, share) => {
          const inner = outer * share;
          for (const [x1, y1, x2, y2] of numbers(crossedRing(0, 0, outer, inner, 4))) {
            for (const r of [Math.hypot(x1!, y1!), Math.hypot(x2!, y2!)]) {
              expect(Math.min(Math.abs(r - outer), Math.abs(r - inner))).toBeLessThan(ROUNDING);
            }
            expect(Math.hypot((x1! + x2!) / 2, (y1! + y2!) / 2)).toBeGreaterThan(inner - ROUNDING);
          }
        },
      ),
      { seed: 1 },
    );
  });

  it('stays in its rectangle and runs at 45°', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 40 }), (width, height) => {
        for (const [x1, y1, x2, y2] of numbers(ruledRectangle(5, 7, width, height, 4, 'rising'))) {
          const xs = [x1!, x2!];
          const ys = [y1!, y2!];
          expect(Math.min(...xs)).toBeGreaterThanOrEqual(5 - ROUNDING);
          expect(Math.max(...xs)).toBeLessThanOrEqual(5 + width + ROUNDING);
          expect(Math.min(...ys)).toBeGreaterThanOrEqual(7 - ROUNDING);
          expect(Math.max(...ys)).toBeLessThanOrEqual(7 + height + ROUNDING);
          expect(Math.abs(x2! - x1! + (y2! - y1!))).toBeLessThan(3 * ROUNDING);
        }
      }),
      { seed: 2 },
    );
  });
});
