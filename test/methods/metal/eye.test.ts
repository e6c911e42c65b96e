import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EyeEvidence, isKnownSight, knownSights, lnLikelihoodOfSight } from '../../../src/methods/metal/eye.ts';
import { METALS, type Metal } from '../../../src/methods/metal/hypotheses.ts';
import { expectClose } from '../../tolerance.ts';

const look = (seen: string, count: number | null = null, seenIn: number | null = null, at = 'scraped_strand') => ({
  look: at,
  seen,
  count,
  seenIn,
});
const favoured = (evidence: EyeEvidence[]) => {
  const ln = lnLikelihoodOfSight(evidence);
  return METALS.filter((m) => ln[m] === 0);
};

describe('what eyes and a magnet say', () => {
  const TABLE: readonly (readonly [string, EyeEvidence, Metal])[] = [
    ['red all through', look('red through'), 'copper'],
    ['tin over red', look('tin outside'), 'tinned copper'],
    ['white inside', look('white core'), 'copper-clad aluminium'],
    ['a magnet that pulls', look('pulls', null, null, 'magnet'), 'copper-clad steel'],
    ['half of the strands white', look('white core', 10, 5), 'mixed'],
    ['half of the strands red', look('red through', 10, 5), 'mixed'],
    ['ten of ten red', look('red through', 10, 10), 'copper'],
  ];
  it.each(TABLE)('%s speaks for the right metal', (_, evidence, metal) => {
    expect(favoured([evidence])).toContain(metal);
  });

  it('a magnet that does not pull rules out steel and says nothing of the rest', () => {
    const ln = lnLikelihoodOfSight([look('no pull', null, null, 'magnet')]);
    expect(ln['copper-clad steel']).toBeLessThan(-3);
    expectClose(ln.copper, ln['copper-clad aluminium'], { absolute: 1e-12 });
  });

  it('is as the table of chances has it for one look', () => {
    const ln = lnLikelihoodOfSight([look('red through')]);
    expectClose(ln['tinned copper'] - ln.copper, Math.log(0.03 / 0.96), { absolute: 1e-12 });
    expectClose(ln.mixed - ln.copper, Math.log(0.5 / 0.96), { absolute: 1e-12 });
  });

  it('counts of strands add up, up to e^5 to 1 for one look', () => {
    const two = lnLikelihoodOfSight([look('red through', 2, 2)]);
    expectClose(two.mixed - two.copper, Math.log((0.25 ** 2 + 0.5 ** 2 + 0.75 ** 2) / 3 / 0.96 ** 2), {
      absolute: 1e-12,
    });
    const many = lnLikelihoodOfSight([look('red through', 50, 50)]);
    expect(many['copper-clad aluminium']).toBe(-5);
  });

  it('of nothing seen, or of words it does not know, says nothing', () => {
    for (const evidence of [[], [look('shiny')], [look('red through', null, null, 'smell')]])
      expect(Object.values(lnLikelihoodOfSight(evidence)).every((v) => v === 0)).toBe(true);
    expect(isKnownSight('scraped_strand', 'shiny')).toBe(false);
  });

  it('reads its own words, however they are written', () => {
    for (const { look: at, seen } of knownSights()) expect(isKnownSight(at, seen)).toBe(true);
    expect(isKnownSight(' Scraped strand', 'RED through ')).toBe(true);
  });

  it('never favours anything above 0 nor rules it out for good, and order does not matter', () => {
    const any = fc.record({
      look: fc.constantFrom('scraped_strand', 'magnet'),
      seen: fc.constantFrom(...knownSights().map((s) => s.seen)),
      count: fc.option(fc.integer({ min: 1, max: 40 })),
      seenIn: fc.option(fc.integer({ min: 0, max: 60 })),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 5 }), (evidence) => {
        const ln = lnLikelihoodOfSight(evidence);
        const back = lnLikelihoodOfSight([...evidence].reverse());
        expect(Math.max(...Object.values(ln))).toBe(0);
        for (const m of METALS) {
          expect(ln[m]).toBeGreaterThanOrEqual(-5 * evidence.length);
          expectClose(back[m], ln[m], { absolute: 1e-9 });
        }
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });
});
