import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { failsOnMetal, headlineClaim, metalClaim, sizeClaim } from '../../src/findings/cableOutcome.ts';
import { type MarkInput, markOfClaim, outcomeMark } from '../../src/report/outcomeMark.ts';
import { lightTheme } from '../../src/report/theme.ts';
import { brackenfell, controlWire, harrowAndSedge, quill, saltmarsh, tollgate } from '../fixtures/findings.ts';
import { expectClose } from '../tolerance.ts';
import { named, numberOf, tagsOf } from './markup.ts';

const size = (
  outcome: MarkInput['outcome'],
  share: number,
  interval: [number, number] = [share, share],
): MarkInput => ({
  outcome,
  kind: 'size',
  share,
  interval,
});

/** Radii of the metal's disc and of the claimed ring, and the ring's line width. */
function radii(mark: MarkInput, px: number): { disc: number; ring: number; line: number } {
  const svg = outcomeMark(mark, { size: px, theme: lightTheme });
  const circles = named(svg, 'circle');
  const disc = circles.find((tag) => tag.attributes.fill === lightTheme.copper)!;
  const ring = circles.find((tag) => tag.attributes['stroke-dasharray'] !== undefined)!;
  return { disc: numberOf(disc, 'r'), ring: numberOf(ring, 'r'), line: numberOf(ring, 'stroke-width') };
}

describe('the outcome mark', () => {
  it.each([14, 24, 56])('at %d px: meets reaches the ring, falls short leaves a gap that is seen', (px) => {
    const meets = radii(size('meets', 1.03), px);
    expect(meets.disc).toBe(meets.ring);
    const short = radii(size('falls short', 0.97), px);
    expect(short.ring - short.line / 2 - short.disc).toBeGreaterThan(1.6);
  });

  it('draws a large shortfall at its true area', () => {
    const short = radii(size('falls short', 0.25), 56);
    expectClose((short.disc / short.ring) ** 2, 0.25, { relative: 0.01 });
  });

  it('never draws more metal for less', () => {
    const share = fc.double({ min: 0, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.integer({ min: 12, max: 80 }), (a, b, px) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(radii(size('falls short', less), px).disc).toBeLessThanOrEqual(
          radii(size('falls short', more), px).disc,
        );
      }),
      { seed: 5 },
    );
  });

  it('gives a claim that is not settled a hatched rim, and no other', () => {
    const rims = (mark: MarkInput): number => named(outcomeMark(mark, { size: 14, theme: lightTheme }), 'path').length;
    expect(rims(size('not settled', 1, [0.98, 1.02]))).toBe(1);
    expect(rims(size('meets', 1.1))).toBe(0);
    expect(rims(size('falls short', 0.8))).toBe(0);
  });

  it('has a rim as wide as the interval, where that can be seen', () => {
    const wide = radii(size('not settled', 1, [0.25, 1.2]), 80);
    expectClose(wide.disc / wide.ring, 0.5, { relative: 0.01 });
  });

  it('is passed over by a screen reader, since its word stands beside it', () => {
    expect(tagsOf(outcomeMark(size('meets', 1), { size: 14, theme: lightTheme }))[0]!.attributes['aria-hidden']).toBe(
      'true',
    );
  });
});

describe('the mark of a claim', () => {
  it('measures the metal by what the claim asks', () => {
    const mark = markOfClaim(sizeClaim(quill)!, null)!;
    expect(mark.outcome).toBe('falls short');
    expectClose(mark.share, 28.6 / 32.96, { relative: 1e-12 });
  });

  it('turns a greatest resistance round, so that less metal is a smaller disc', () => {
    const ohms = quill.claims.find(({ reading }) => reading === 'AWG by resistance')!;
    const mark = markOfClaim(ohms, null)!;
    expectClose(mark.share, 0.523 / 0.618, { relative: 1e-12 });
    expect(mark.interval[0]).toBeLessThan(mark.interval[1]);
  });

  it('measures copper held by the copper alone', () => {
    expectClose(markOfClaim(headlineClaim(tollgate)!, 0.15)!.share, (0.15 * 33.3) / 32.96, { relative: 1e-12 });
    expectClose(markOfClaim(headlineClaim(saltmarsh)!, null)!.share, 26.9 / 32.96, { relative: 1e-12 });
  });

  it('shows copper’s share for a metal claim', () => {
    expect(markOfClaim(metalClaim(tollgate)!, 0.15)).toEqual({
      outcome: 'falls short',
      kind: 'metal',
      share: 0.15,
      interval: [0.15, 0.15],
    });
  });

  it('has none for what cannot be tested', () => {
    const oxygen = brackenfell.claims.find(({ reading }) => reading === 'oxygen-free')!;
    expect(markOfClaim(oxygen, 1)).toBeNull();
  });
});

describe('the claim said first', () => {
  it.each([
    [brackenfell, 'copper held', 'meets', false],
    [tollgate, 'copper held', 'falls short', true],
    [harrowAndSedge, 'copper held', 'not settled', false],
    [saltmarsh, 'copper held', 'falls short', false],
  ])('of $name', (cable, reading, outcome, onMetal) => {
    expect(headlineClaim(cable)).toMatchObject({ reading, outcome });
    expect(failsOnMetal(cable)).toBe(onMetal);
  });

  it('is the size where copper is not claimed, and none where nothing is', () => {
    const claims = brackenfell.claims.filter(({ reading }) => reading !== 'copper held');
    expect(headlineClaim({ ...brackenfell, claims })?.reading).toBe('AWG by area');
    expect(headlineClaim(controlWire)).toBeNull();
  });
});
