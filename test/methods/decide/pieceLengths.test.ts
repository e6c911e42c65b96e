import { describe, expect, it } from 'vitest';
import {
  bundleDiameter,
  contactInset,
  copperPerMetre,
  ohmsPerMetre,
} from '../../../src/methods/decide/conductorSize.ts';
import {
  apartLength,
  bendLength,
  contactDistanceOn,
  guessedBendingLength,
  roundUp,
} from '../../../src/methods/decide/pieceLengths.ts';
import { OVERNIGHT_HOURS, soakHours } from '../../../src/methods/decide/soak.ts';
import { awgArea } from '../../../src/units/gauge.ts';
import { expectClose } from '../../tolerance.ts';

const ONE_AUGHT = awgArea(0);
const FOUR_AUGHT = awgArea(-3);
const POCKET = 3e-5;
const KITCHEN = 1e-3;
const RULE = 5e-4;

describe('a piece to take apart', () => {
  it('is 300 mm where scale and rule are good enough', () => {
    expect(apartLength(ONE_AUGHT, POCKET, RULE).length).toBe(0.3);
  });

  it('is long enough for a kitchen scale: limits over length make half a per cent', () => {
    const { length } = apartLength(ONE_AUGHT, KITCHEN, RULE);
    const doubt = KITCHEN / (copperPerMetre(ONE_AUGHT) * length) + RULE / length;
    expect(doubt).toBeLessThanOrEqual(0.005);
    expect(doubt).toBeGreaterThan(0.0048);
  });

  it('stops at 3 m, and says what would help', () => {
    const small = apartLength(awgArea(12), KITCHEN, RULE);
    expect(small.length).toBe(3);
    expect(small.why).toMatch(/finer scale/);
  });
});

describe('a piece to bend', () => {
  it('grows with the size and with coarse strands, within what was met', () => {
    const sizes = [10, 6, 2, 0, -3].map(awgArea);
    const lengths = sizes.map((area) => guessedBendingLength(area, 'unknown'));
    expect([...lengths].sort((a, b) => a - b)).toEqual(lengths);
    for (const area of sizes) {
      expect(guessedBendingLength(area, 'coarse')).toBeGreaterThanOrEqual(guessedBendingLength(area, 'fine'));
      expect(guessedBendingLength(area, 'coarse')).toBeLessThanOrEqual(0.4);
      expect(guessedBendingLength(area, 'fine')).toBeGreaterThanOrEqual(0.06);
    }
  });

  it('holds an overhang of 100 to 600 mm and 60 to 100 mm in the clamp', () => {
    for (const n of [16, 8, 2, -3])
      for (const stranding of ['fine', 'coarse'] as const) {
        const { length } = bendLength(awgArea(n), stranding, null);
        expect(length).toBeGreaterThanOrEqual(0.16);
        expect(length).toBeLessThanOrEqual(0.7);
      }
  });
});

describe('contacts on a piece', () => {
  it('stand in by about 50 mm on 1/0', () => {
    expectClose(contactInset(ONE_AUGHT), 0.05, { absolute: 0.002, because: '1.5 circumferences, by hand' });
    expectClose(Math.PI * bundleDiameter(ONE_AUGHT), 0.0335, { relative: 0.01, because: 'by hand' });
  });

  it('leave nothing to read between them on a short piece', () => {
    expect(contactDistanceOn(0.1, ONE_AUGHT)).toBe(0);
    expectClose(contactDistanceOn(3, ONE_AUGHT), 3 - 2 * 0.07, { absolute: 0.003, because: 'inset and clamp' });
  });
});

describe('what copper of a size should read', () => {
  it('150 mm of 1/0 is about 50 µΩ, and 1/0 weighs about 150 g a foot', () => {
    expectClose(ohmsPerMetre(ONE_AUGHT) * 0.15, 49.8e-6, { relative: 0.02, because: '17.17 nΩ·m · 1.035 / 53.5 mm²' });
    expectClose(ohmsPerMetre(FOUR_AUGHT) * 0.15, 24.8e-6, { relative: 0.02 });
    expectClose(copperPerMetre(ONE_AUGHT) * 0.3048, 0.15, { relative: 0.01 });
  });
});

it('rounds lengths up to the rule, and leaves whole ones', () => {
  expectClose(roundUp(0.301), 0.31, { relative: 1e-12 });
  expectClose(roundUp(0.3), 0.3, { relative: 1e-12 });
});

it('soaks heavy cable longer', () => {
  expect([8, 2, -3].map((n) => soakHours(awgArea(n)))).toEqual([1, 2, OVERNIGHT_HOURS]);
});
