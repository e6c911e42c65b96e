import { describe, expect, it } from 'vitest';
import { progressRule } from '../../src/report/progressRule.ts';
import { lightTheme } from '../../src/report/theme.ts';

const at = { width: 902, theme: lightTheme };
const copperWidth = (svg: string) => Number(/<rect[^>]* width="([\d.]+)"/.exec(svg)?.[1] ?? '0');
const ticks = (svg: string) => svg.match(/<line/g)!.length - 2;

describe('the rule of progress', () => {
  it('is copper up to what is done', () => {
    expect(copperWidth(progressRule(45, 90, at))).toBeCloseTo(451, 0);
    expect(copperWidth(progressRule(90, 90, at))).toBeCloseTo(901, 0);
    expect(copperWidth(progressRule(0, 90, at))).toBe(0);
  });

  it('has a tick for each reading, and for each few where they would run together', () => {
    expect(ticks(progressRule(3, 90, at))).toBe(91);
    expect(ticks(progressRule(3, 900, at))).toBe(181);
    expect(ticks(progressRule(3, 9000, at))).toBe(181);
  });

  it.each([
    [5, 4],
    [-1, 4],
    [0, 0],
  ])('refuses %d of %d', (done, wanted) => {
    expect(() => progressRule(done, wanted, at)).toThrow(RangeError);
  });
});
