import { describe, expect, it } from 'vitest';
import { acrossOf } from '../../../src/findings/across/across.ts';
import { linksOn } from '../../../src/findings/across/links.ts';
import { lotsOverTime } from '../../../src/findings/across/lots.ts';
import { QUANTITIES, quantityOf } from '../../../src/findings/across/quantities.ts';
import { acrossChart } from '../../../src/report/across/acrossChart.ts';
import { driftStrip } from '../../../src/report/across/driftStrip.ts';
import { warmthText } from '../../../src/report/across/warmthText.ts';
import { lightTheme } from '../../../src/report/theme.ts';
import { figure, line } from '../../findings/across/lines.ts';

const wire = (trial: string, value: number) =>
  line(trial, 'House wire', { shared_name: 'house wire', conductor_area: figure(value, 'mm2', 0.003) });
const [link] = linksOn([wire('a', 10), wire('b', 10.2), wire('c', 9.9)]);
const CHOSEN = [
  line('a', 'Quill', { lot: 'x', day: '2026-01-04' }),
  line('b', '<script>alert(1)</script>', { temperature_C: null, metal_found: null }),
  line('b', 'Quill', { lot: 'x', cable: 'quill-2', temperature_C: null, conductor_area: figure(31, 'mm2', 0.004) }),
];
const asked = { quantity: quantityOf('area'), link: link!, shift: false, level: 0.95 };

describe('chosen cables of several trials on one axis', () => {
  it('leaves room between the end of an interval and the end of the axis', () => {
    const ends = (low: number, high: number) => ({
      conductor_area: { ...figure(32, 'mm2', 0.01), interval: [low, high] as [number, number] },
    });
    const chosen = [line('a', 'Quill', ends(30, 34)), line('a', 'Rush', ends(31, 33))];
    const svg = acrossChart(acrossOf(chosen, { ...asked, link: null }), { width: 1200, theme: lightTheme, units: {} });
    const [, left, right] = /<line x1="([\d.]+)" y1="34" x2="([\d.]+)" y2="34"/.exec(svg)!.map(Number);
    const bars = [...svg.matchAll(/<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/g)].map((found) => found.map(Number));
    expect(bars.length).toBeGreaterThanOrEqual(4);
    for (const [, x, wide] of bars) {
      expect(x!).toBeGreaterThan(left! + 5);
      expect(x! + wide!).toBeLessThan(right! - 5);
    }
  });

  it.each([
    [360, 'widened'],
    [1200, 'widened'],
    [360, 'shifted'],
    [1200, 'shifted'],
  ])('draws each within %i px, %s, with its trial, day and temperature', (width, way) => {
    const svg = acrossChart(acrossOf(CHOSEN, { ...asked, shift: way === 'shifted' }), {
      width,
      theme: lightTheme,
      units: {},
    });
    for (const part of ['Trial a · 2026-01-04 · 20 to 21\u00a0°C', 'temperature not noted', '&lt;script&gt;', way])
      expect(svg.includes(part), part).toBe(true);
    expect(svg.includes('<script>')).toBe(false);
    const ticks = [...svg.matchAll(/font-size="13"[^>]*>([\d.]+)</g)].map(([, text]) => text);
    expect(new Set(ticks).size).toBe(ticks.length);
    for (const [, at] of svg.matchAll(/ x="([\d.-]+)"/g)) expect(Number(at)).toBeLessThanOrEqual(width);
  });

  it.each(QUANTITIES.map(({ id }) => id))('draws %s, or nothing where it was not measured', (id) => {
    const svg = acrossChart(acrossOf(CHOSEN, { ...asked, quantity: quantityOf(id) }), {
      width: 900,
      theme: lightTheme,
      units: { length: 'in', perLength: 'ft', area: 'awg' },
    });
    expect(svg === '').toBe(id === 'stiffness');
  });
});

describe('temperatures beside them', () => {
  it.each<[readonly [number, number], 'C' | 'F', string]>([
    [[19.6, 20.4], 'C', '20\u00a0°C'],
    [[19, 21], 'C', '19 to 21\u00a0°C'],
    [[-5, 20], 'F', '23 to 68\u00a0°F'],
    [[-5, -5], 'C', '−5\u00a0°C'],
  ])('%j in °%s reads %s', (range, unit, text) => {
    expect(warmthText(range, unit)).toBe(text);
  });
});

describe('one lot over time', () => {
  it('draws the line through it, dashed where no change was seen', () => {
    const strip = (value: number) => {
      const [lot] = lotsOverTime([CHOSEN[0]!, { ...CHOSEN[2]!, conductor_area: figure(value, 'mm2', 0.004) }], {
        ...asked,
        link: null,
      });
      return driftStrip(lot!, { width: 300, theme: lightTheme });
    };
    expect(strip(31)).toContain('down by');
    expect(strip(31)).not.toContain('dasharray');
    expect(strip(33.1)).toContain('dasharray');
    expect(strip(31)).toContain('2026-01-04');
  });
});
