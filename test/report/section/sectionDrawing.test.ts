import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sectionDrawing } from '../../../src/report/section/sectionDrawing.ts';
import { type SectionInput, sectionInput } from '../../../src/report/section/sectionInput.ts';
import { darkTheme, lightTheme, paperTheme } from '../../../src/report/theme.ts';
import {
  brackenfell,
  nineElmsCord,
  quill,
  rudeNames,
  saltmarsh,
  tollgate,
  unmeasured,
} from '../../fixtures/findings.ts';
import { expectClose } from '../../tolerance.ts';
import { named, numberOf, tagsOf } from '../markup.ts';

const SCALE = 14;
const draw = (cable: SectionInput, scale = SCALE, theme = lightTheme): string =>
  sectionDrawing(cable, { scalePxPerMm: scale, theme }).svg;

const circlesOf = (svg: string, attribute: 'fill' | 'stroke', colour: string): number[] =>
  named(svg, 'circle')
    .filter((tag) => tag.attributes[attribute] === colour)
    .map((tag) => numberOf(tag, 'r'));

/** Centres and radii of the strands: the path of whole circles. */
function strandsOf(svg: string): { r: number; own: number }[] {
  const c = numberOf(named(svg, 'svg')[0]!, 'width') / 2;
  const path = named(svg, 'path').find((tag) => tag.attributes['fill-opacity'] === '0.38');
  return [...(path?.attributes.d ?? '').matchAll(/M(\S+) (\S+)a(\S+) /g)].map(([, x, y, own]) => ({
    r: Math.hypot(Number(x) + Number(own) - c, Number(y) - c),
    own: Number(own),
  }));
}

describe('the cut face', () => {
  it.each([
    ['copper', brackenfell, 34.8],
    ['thick jacket', quill, 28.6],
  ])('%s: the disc is the true area, the ring the claimed one, the jacket its diameter', (_name, cable, area) => {
    const svg = draw(sectionInput(cable));
    const [metal] = circlesOf(svg, 'fill', lightTheme.copper);
    expectClose(Math.PI * (metal! / SCALE) ** 2, area, { relative: 1e-3, because: 'coordinates have two decimals' });
    const ring = named(svg, 'circle').find((tag) => tag.attributes['stroke-dasharray'] === '5 3.5');
    expectClose(Math.PI * (numberOf(ring!, 'r') / SCALE) ** 2, 33.63, { relative: 1e-3 });
    expectClose(numberOf(named(svg, 'circle')[0]!, 'r'), (SCALE * cable.outer_diameter!.value) / 2, { relative: 1e-3 });
  });

  it('shows the metal that is not there as a bare gap', () => {
    const svg = draw(sectionInput(quill));
    const claim = SCALE * Math.sqrt(33.63 / Math.PI);
    const strands = strandsOf(svg);
    expect(strands.length).toBeGreaterThan(40);
    for (const { r, own } of strands) expect(r - own).toBeGreaterThan(claim - 0.3);
  });

  it('gives tinned copper a rim of tin', () => {
    const svg = draw(sectionInput(nineElmsCord));
    const [tin] = circlesOf(svg, 'fill', lightTheme.tin);
    const [copper] = circlesOf(svg, 'fill', lightTheme.copper);
    expectClose(tin! - copper!, 1.75, { absolute: 0.02, because: '0.1 mm is 1.4 px here, less than the least' });
  });

  it('gives clad aluminium a copper rim of its true share, and rules the rest', () => {
    const svg = draw(sectionInput(tollgate), 40);
    const rim = named(svg, 'path').find((tag) => tag.attributes['fill-rule'] === 'evenodd')!;
    const [outer, inner] = [...rim.attributes.d!.matchAll(/a(\S+) /g)]
      .map(([, r]) => Number(r))
      .filter((_, i) => i % 2 === 0);
    expectClose(1 - (inner! / outer!) ** 2, 0.15, { relative: 2e-3 });
    expect(named(svg, 'path').some((tag) => tag.attributes.stroke === lightTheme.bed)).toBe(true);
  });

  it('crosses what is not known, and fills it with no metal', () => {
    const svg = draw(sectionInput(saltmarsh));
    expect(circlesOf(svg, 'fill', lightTheme.copper)).toEqual([]);
    expect(named(svg, 'path').filter((tag) => tag.attributes.stroke === lightTheme.edge)).toHaveLength(2);
  });

  it('asks for the scale where no area is known, and draws no ring for a label without one', () => {
    const svg = draw(sectionInput(unmeasured));
    expect(named(svg, 'text').map((tag) => tag.text)).toEqual(['weigh it']);
    expect(named(svg, 'circle').every((tag) => tag.attributes['stroke-dasharray'] !== '5 3.5')).toBe(true);
  });

  it('leaves the name alone below 40 px', () => {
    const small = sectionDrawing(sectionInput(brackenfell), { scalePxPerMm: 3.4, theme: lightTheme });
    expect(small.svg).toBe('');
    expect(small.description).toContain('Brackenfell');
    expect(draw(sectionInput(brackenfell), 3.5)).not.toBe('');
  });

  it('tints the bed on a screen that cannot part the strands, and draws them on paper', () => {
    const cable = sectionInput(brackenfell);
    expect(strandsOf(draw(cable, 8))).toEqual([]);
    expect(strandsOf(draw(cable, 8, darkTheme))).toEqual([]);
    expect(strandsOf(draw(cable, 8, paperTheme)).length).toBeGreaterThan(100);
    expect(strandsOf(draw(cable, 9)).length).toBeGreaterThan(100);
  });

  it('keeps every strand between the metal or claim and the edge of the bundle', () => {
    const size = fc.double({ min: 0.05, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 120, noNaN: true }),
        fc.double({ min: 1, max: 120, noNaN: true }),
        size,
        (metalArea, claimedArea, strand) => {
          const cable = { ...sectionInput(brackenfell), metalArea, claimedArea, strandDiameter: strand };
          const from = SCALE * Math.sqrt(Math.max(metalArea, claimedArea) / Math.PI);
          for (const { r, own } of strandsOf(draw(cable))) {
            expect(r - own).toBeGreaterThan(from - 0.5);
            expect(r + own).toBeLessThan((SCALE * 7.9) / 2 + 0.5);
          }
        },
      ),
      { seed: 3 },
    );
  });

  it('draws any cable whose figures are partly unknown, as good markup', () => {
    const maybe = (max: number) => fc.option(fc.double({ min: 0.01, max, noNaN: true }), { nil: null });
    fc.assert(
      fc.property(
        fc.record({
          metalArea: maybe(200),
          copperShare: maybe(1),
          claimedArea: maybe(200),
          bundleDiameter: maybe(30),
          outerDiameter: maybe(40),
          wall: maybe(8),
          strandDiameter: maybe(2),
          metal: fc.constantFrom('copper', 'tinned copper', 'copper-clad aluminium', 'aluminium', 'unknown'),
          jacketColour: fc.constantFrom('', 'black', 'orange'),
        }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        (figures, scale) => {
          const svg = draw({ ...sectionInput(brackenfell), ...figures } as SectionInput, scale);
          if (svg !== '') expect(tagsOf(svg)[0]!.name).toBe('svg');
        },
      ),
      { seed: 4, numRuns: 300 },
    );
  });
});

describe('the text in place of the drawing', () => {
  it('says every figure in one sentence', () => {
    expect(sectionInput(brackenfell).description).toBe(
      'Cut face of Brackenfell: jacket black; outer diameter 11.70 ± 0.06 mm; wall 1.90 ± 0.05 mm; bundle 7.90 ± 0.08 mm; ' +
        '665 ± 2 strands of 0.2581 ± 0.0016 mm; metal area 34.80 ± 0.31 mm², copper; the label claims 33.63 mm².',
    );
  });

  it('says what is not known', () => {
    const text = sectionInput(unmeasured).description;
    for (const part of [
      'wall not measured',
      'strands not measured',
      'weigh it',
      'gives no area',
      'colour not recorded',
    ]) {
      expect(text).toContain(part);
    }
  });

  it('keeps any name out of the markup', () => {
    for (const cable of rudeNames.cables) tagsOf(draw(sectionInput(cable)));
  });
});
