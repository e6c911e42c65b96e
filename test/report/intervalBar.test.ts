import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intervalAxis, limitText, positionOn } from '../../src/report/intervalAxis.ts';
import { intervalColumn, intervalHeadHeight, intervalRow } from '../../src/report/intervalBar.ts';
import { residualSpan, residualStrip, shareBar } from '../../src/report/sheetStrips.ts';
import { lightTheme } from '../../src/report/theme.ts';
import { measured } from '../fixtures/findings/build.ts';
import { sixCables } from '../fixtures/findings.ts';
import { expectClose } from '../tolerance.ts';
import { named, numberOf, tagsOf } from './markup.ts';

const figures = sixCables.cables.filter(({ role }) => role === 'compared').map((cable) => cable.conductor_area);
const axis = intervalAxis(figures, 32.96, 33.63)!;

describe('the axis of a column', () => {
  it('runs from whole tick to whole tick over all intervals and the limit', () => {
    expect(axis.domain).toEqual([24, 36]);
    expect(axis.ticks.map(({ text }) => text)).toEqual(['24', '26', '28', '30', '32', '34', '36']);
  });

  it.each([
    [32.96, '32.96'],
    [32.95821733896261, '32.96'],
    [33.630834019349614, '33.63'],
    [107.2193, '107.2'],
    [2.0871, '2.087'],
    [0.523, '0.523'],
    [107, '107'],
    [-2.5, '−2.5'],
  ])('writes the limit %d as %s', (value, text) => {
    expect(limitText(value)).toBe(text);
  });

  it('is none where there is nothing to show, and has width where all values are one', () => {
    expect(intervalAxis([null, null], null)).toBeNull();
    const point = intervalAxis([measured(5, 0, 'mm2', [])], null)!;
    expect(point.domain[1]).toBeGreaterThan(point.domain[0]);
    expect(intervalAxis([measured(0, 0, 'mm2', [])], null)!.domain[1]).toBeGreaterThan(0);
  });

  it('holds every interval whatever its size', () => {
    const value = fc.double({ min: 1e-4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value), { minLength: 1, maxLength: 12 }), value, (list, limit) => {
        const made = intervalAxis(
          list.map(([x, half]) => measured(x, half, 'mm2', [])),
          limit,
        )!;
        const x = positionOn(made, 266);
        for (const [value, half] of list) {
          expect(x(value - half)).toBeGreaterThan(-1e-6);
          expect(x(value + half)).toBeLessThan(266 + 1e-6);
        }
        expect(x(limit)).toBeGreaterThan(-1e-6);
        expect(made.ticks.length).toBeGreaterThan(1);
      }),
      { seed: 6 },
    );
  });
});

describe('a column of intervals', () => {
  const rows = figures.map((figure) => ({ figure, metal: 'copper' as const }));
  const column = intervalColumn(rows, axis, { width: 280, rowHeight: 36, theme: lightTheme, description: 'Areas' });

  it('has the limit at one place from the head through every row', () => {
    const at = (240 * (32.96 - 24)) / 12;
    const limits = named(column.svg, 'line').filter((tag) => tag.attributes['stroke-width'] === '1.5');
    expect(limits).toHaveLength(7);
    for (const limit of limits) expectClose(numberOf(limit, 'x1'), at, { absolute: 0.006, because: 'two decimals' });
    for (const limit of limits.slice(1)) expect([limit.attributes.y1, limit.attributes.y2]).toEqual(['0', '36']);
    expect(numberOf(limits[0]!, 'y2')).toBe(intervalHeadHeight);
  });

  it('draws each bar over its interval and the estimate past it', () => {
    const bars = named(column.svg, 'rect').filter((tag) => tag.attributes.fill === lightTheme.copper);
    expectClose(numberOf(bars[0]!, 'x'), 20 * (34.8 - 0.31 - 24), { absolute: 0.006 });
    expectClose(numberOf(bars[0]!, 'width'), 20 * 0.62, { absolute: 0.006 });
    const ticks = named(column.svg, 'rect').filter((tag) => tag.attributes.fill === lightTheme.ink);
    expect(numberOf(ticks[0]!, 'height')).toBeGreaterThan(numberOf(bars[0]!, 'height'));
  });

  it('names limit and label on the axis', () => {
    const words = named(column.svg, 'text').map((tag) => tag.text);
    expect(words).toContain('limit 32.96');
    expect(words).toContain('label 33.63');
  });

  it('shows aluminium ruled, the unknown crossed, and nothing for no figure', () => {
    const options = { width: 240, height: 36, theme: lightTheme };
    const strokes = (metal: 'aluminium' | 'unknown'): string[] =>
      named(intervalRow(figures[0]!, metal, axis, options), 'path').map((tag) => tag.attributes.stroke!);
    expect(strokes('aluminium')).toEqual([lightTheme.bed]);
    expect(strokes('unknown')).toEqual([lightTheme.edge]);
    expect(named(intervalRow(null, 'copper', axis, options), 'rect')).toEqual([]);
  });
});

describe('the strips of a sheet', () => {
  it('put a residual at its place, with marks at two', () => {
    const svg = residualStrip(1, { width: 131, height: 20, theme: lightTheme, span: 4 });
    expectClose(numberOf(named(svg, 'circle')[0]!, 'cx'), 65.5 + 15, { absolute: 0.01 });
    const marks = named(svg, 'line').filter((tag) => tag.attributes.stroke === lightTheme.edge);
    expect(marks.map((tag) => numberOf(tag, 'x1'))).toEqual([35.5, 95.5]);
  });

  it('open the dot of a reading that stands far off, and draw none without a residual', () => {
    const fill = (residual: number | null): string[] =>
      named(residualStrip(residual, { width: 120, height: 20, theme: lightTheme, span: 4 }), 'circle').map(
        (tag) => tag.attributes.fill!,
      );
    expect(fill(1.9)).toEqual([lightTheme.copper]);
    expect(fill(3.6)).toEqual([lightTheme.ground]);
    expect(fill(null)).toEqual([]);
    expect(fill(Number.NaN)).toEqual([]);
  });

  it('have one span for a column', () => {
    expect(residualSpan([0.4, null, -1])).toBe(3);
    expect(residualSpan([0.4, -3.6])).toBe(4);
    expect(residualSpan([])).toBe(3);
  });

  it('fill a share of the track', () => {
    const bars = named(shareBar(0.61, { width: 100, height: 7, theme: lightTheme }), 'rect');
    expect(bars.map((tag) => numberOf(tag, 'width'))).toEqual([100, 61]);
    expect(() => shareBar(1.2, { width: 100, height: 7, theme: lightTheme })).toThrow(RangeError);
    expect(tagsOf(shareBar(0, { width: 100, height: 7, theme: lightTheme }))).toHaveLength(2);
  });
});
