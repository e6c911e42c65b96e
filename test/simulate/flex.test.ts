/** Short runs of the simulated droops and judged fields; the full ones are in docs/figures-bend.md. */
import { describe, expect, it } from 'vitest';
import { judgeFields } from './flex.ts';
import { tellDroops } from './flexFigures.ts';

const SHORT = { firstSeed: 70_000, trials: 12, cablesEach: 10, fields: 150 };

describe('droops at the advised overhang', () => {
  it('hold what they promise: coverage, half-width', () => {
    const told = tellDroops({ overhang: 'advised', set: 0 }, SHORT);
    expect(told.covered / told.answered).toBeGreaterThan(0.88);
    expect(told.medianHalfWidth).toBeLessThan(0.04);
    expect(told.medianHalfWidth).toBeGreaterThan(0.005);
    expect(told.ninetiethHalfWidth).toBeLessThan(0.07);
    expect(told.answered / told.cables).toBeGreaterThan(0.85);
  });

  it('a set does not shift them by more than 1 %', () => {
    const told = tellDroops({ overhang: 'advised', set: 0.15 }, SHORT);
    expect(Math.abs(told.medianBias)).toBeLessThan(0.01);
    expect(told.covered / told.answered).toBeGreaterThan(0.85);
    expect(told.flagged).toBeGreaterThan(0);
  });

  it('at one length for all, many are refused rather than guessed', () => {
    const told = tellDroops({ overhang: '300 mm', set: 0 }, { ...SHORT, trials: 4 });
    expect(told.answered).toBeLessThan(told.cables);
    expect(told.covered / told.answered).toBeGreaterThan(0.8);
  });
});

describe('judged fields of eight', () => {
  it('the easiest is in the first band, equals are seldom parted', () => {
    const told = judgeFields({ firstSeed: 900_000, fields: SHORT.fields, cables: 8, judges: 3, spread: 1.3 });
    expect(told.bestInBand1).toBeGreaterThanOrEqual(0.94);
    expect(told.equalParted).toBeLessThan(0.09);
    expect(told.bestSetHolds).toBeGreaterThan(0.9);
    expect(told.bestSetSize).toBeLessThan(4);
    expect(told.bands, 'a rule that never cuts would be right and useless').toBeGreaterThan(1.4);
  });
});
