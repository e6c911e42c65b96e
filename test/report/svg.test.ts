import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { element, escapeText, label, round, svgDocument } from '../../src/report/svg.ts';
import { tagsOf } from './markup.ts';

describe('numbers in drawings', () => {
  it.each([
    [1, '1'],
    [1.005, '1'],
    [1.256, '1.26'],
    [10, '10'],
    [-0.001, '0'],
    [-2.5, '-2.5'],
    [0.1 + 0.2, '0.3'],
    [123456.789, '123456.79'],
  ])('%d is written %s', (x, text) => {
    expect(round(x)).toBe(text);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('%d is refused', (x) => {
    expect(() => round(x)).toThrow(RangeError);
  });
});

describe('text in drawings', () => {
  it.each([
    ['<script>alert(1)</script>', '&lt;script&gt;alert(1)&lt;/script&gt;'],
    [`a "b" & 'c'`, 'a &quot;b&quot; &amp; &#39;c&#39;'],
    ['bell \u0007 null \u0000', 'bell \uFFFD null \uFFFD'],
    ['half \ud83d pair', 'half \uFFFD pair'],
    ['סליל 🔌', 'סליל 🔌'],
  ])('%j is written %j', (text, escaped) => {
    expect(escapeText(text)).toBe(escaped);
  });

  it('never breaks the markup, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const tags = tagsOf(label(0, 0, text, { 'font-size': 12, fill: text }));
        expect(tags).toHaveLength(1);
      }),
      { seed: 20261125 },
    );
  });
});

describe('elements', () => {
  it('leaves out what is not given, and closes itself when empty', () => {
    expect(element('circle', { r: 2, fill: null, stroke: undefined })).toBe('<circle r="2"/>');
  });

  it('says its description, or hides when it has none', () => {
    expect(svgDocument({ width: 1, height: 1, description: 'a < b' })).toContain('role="img" aria-label="a &lt; b"');
    expect(svgDocument({ width: 1, height: 1, description: '' })).toContain('aria-hidden="true"');
  });
});
