import { describe, expect, it } from 'vitest';
import { COMMON } from '../../../src/methods/assay/prior.ts';
import { controlHypothesis, METALS, metalHypotheses, STARTING_ODDS } from '../../../src/methods/metal/hypotheses.ts';
import { expectClose } from '../../tolerance.ts';

const list = metalHypotheses();
const oddsOf = (metal: string, all = list) => all.filter((h) => h.metal === metal).reduce((sum, h) => sum + h.prior, 0);

describe('suppositions about the metal', () => {
  it('have odds that sum to 1, metal by metal as printed', () => {
    expectClose(
      list.reduce((s, h) => s + h.prior, 0),
      1,
      { absolute: 1e-12 },
    );
    expectClose(
      Object.values(STARTING_ODDS).reduce((a, b) => a + b, 0),
      1,
      { absolute: 1e-12 },
    );
    for (const metal of METALS) expectClose(oddsOf(metal), STARTING_ODDS[metal], { relative: 1e-9 });
  });

  it('take other odds, scaled to sum to 1', () => {
    const changed = metalHypotheses({ copper: 0.9, other: 0 });
    expectClose(
      changed.reduce((s, h) => s + h.prior, 0),
      1,
      { absolute: 1e-12 },
    );
    expect(oddsOf('other', changed)).toBe(0);
    expectClose(oddsOf('copper', changed) / oddsOf('aluminium', changed), 0.9 / STARTING_ODDS.aluminium, {
      relative: 1e-9,
    });
  });

  it('are possible: positive spreads, shares from 0 to 1, lighter and worse conducting than copper where clad', () => {
    const copper = list.find((h) => h.metal === 'copper')!;
    for (const h of list) {
      expect(h.lnDensity.sd).toBeGreaterThan(0);
      expect(h.lnResistivity.sd).toBeGreaterThan(0);
      expect(h.copperShare).toBeGreaterThanOrEqual(0);
      expect(h.copperShare).toBeLessThanOrEqual(1);
      expect(h.lnResistivity.mean).toBeGreaterThanOrEqual(copper.lnResistivity.mean);
      if (h.copperShare < 1) expect(h.lnDensity.mean).toBeLessThan(copper.lnDensity.mean);
    }
  });

  it('more copper in the clad means denser and better conducting', () => {
    const clad = list.filter((h) => h.metal === 'copper-clad aluminium').sort((a, b) => a.copperShare - b.copperShare);
    expect(clad.length).toBeGreaterThan(4);
    for (let i = 1; i < clad.length; i++) {
      expect(clad[i].lnDensity.mean).toBeGreaterThan(clad[i - 1].lnDensity.mean);
      expect(clad[i].lnResistivity.mean).toBeLessThan(clad[i - 1].lnResistivity.mean);
    }
  });

  it('that share the constants of copper doubt more than what is common to all', () => {
    for (const h of list.filter((each) => each.sharesCopperConstants)) {
      expect(h.lnDensity.sd).toBeGreaterThan(COMMON['copper density']);
      expect(h.lnResistivity.sd).toBeGreaterThan(COMMON['copper resistivity']);
    }
  });

  it('leave a control piece no doubt but copper', () => {
    expect(controlHypothesis()).toMatchObject({ metal: 'copper', prior: 1 });
  });
});
