import { describe, expect, it } from 'vitest';
import { FIRST_ANSWERS } from '../../../src/edge/page/store/amps/runAnswers.ts';
import { questionFrom } from '../../../src/edge/page/store/amps/runQuestion.ts';
import { riseAt } from '../../../src/findings/current/drawn.ts';
import { nominalSizes } from '../../../src/methods/current/runCheck/nominal.ts';
import { runCheck } from '../../../src/methods/current/runCheck/runCheck.ts';
import { dropStrip, heatStrip, runCharts } from '../../../src/report/amps/ampsPictures.ts';
import { ampsStrip, describeStrip } from '../../../src/report/amps/ampsStrip.ts';
import { describeFourWire, fourWirePlot } from '../../../src/report/amps/fourWirePlot.ts';
import { describeHeating, heatingCurve } from '../../../src/report/amps/heatingCurve.ts';
import { describeLengths, lengthChart } from '../../../src/report/amps/lengthChart.ts';
import { lightTheme } from '../../../src/report/theme.ts';
import { bothWays, byLength, lost, tooShort, warming } from '../../fixtures/findings/amps.ts';
import { tagsOf } from '../markup.ts';

const RATING = 333.15;
const sizes = (names: readonly string[]) =>
  nominalSizes('awg', RATING)
    .filter(({ name }) => names.includes(name))
    .map((cable) => ({ ...cable, measured: true }));

describe('the strip of amps', () => {
  it('says every row and the limit in its description', () => {
    expect(describeStrip(lost)).toBe(
      'Lost on the way, %: Sedge 3.2 %, 2.9 to 3.6; Quill 3.9 %, 3.6 to 4.4; Harrow <b>& 6.1 %, 5.2 to no end; the limit is may be lost 4 %.',
    );
  });

  it.each([320, 560, 1300])(
    'draws a bar and a tick for each row %d px wide, and an arrow where an end is open',
    (width) => {
      const svg = ampsStrip(lost, { width, theme: lightTheme });
      const tags = tagsOf(svg);
      // A bar and a tick each.
      expect(tags.filter(({ name }) => name === 'rect')).toHaveLength(2 * lost.rows.length);
      expect(svg).not.toContain('<b>');
      const right = tags
        .filter(({ name }) => name === 'rect')
        .map((t) => Number(t.attributes.x) + Number(t.attributes.width));
      for (const edge of right) expect(edge).toBeLessThanOrEqual(width);
    },
  );

  it('draws rows of which nothing comes through without a bar', () => {
    const none = {
      ...lost.rows[0]!,
      value: Number.NaN,
      low: Number.NaN,
      high: Number.NaN,
      text: 'does not come through',
    };
    const svg = ampsStrip({ ...lost, rows: [none] }, { width: 600, theme: lightTheme });
    expect(tagsOf(svg).filter(({ name }) => name === 'rect')).toHaveLength(0);
    expect(svg).toContain('does not come through');
  });
});

describe('curves and points', () => {
  it('follow the fit: two thirds of the way after one time constant', () => {
    expect(riseAt({ amplitudes: [40], timeConstants: [600] }, 600)).toBeCloseTo(40 * (1 - Math.exp(-1)), 9);
    expect(riseAt({ amplitudes: [10, 30], timeConstants: [50, 600] }, 0)).toBe(0);
  });

  it('say where a heating ends, or that it is not known', () => {
    const steady = { value: 40, low: 38.6, high: 41.5 };
    expect(describeHeating({ heating: warming, name: 'Sedge', steady })).toBe(
      'Sedge heated by 150 A, 40 K after 59 minutes; it ends at 40.0 K, 38.6 to 41.5.',
    );
    const refused = { heating: tooShort, name: 'Sedge', steady: null };
    expect(describeHeating(refused)).toMatch(/where it ends is not known\.$/);
    const svg = heatingCurve(refused, { width: 400, height: 230, theme: lightTheme });
    expect(svg).toContain('stroke-dasharray="6 4"');
    expect(tagsOf(svg).filter(({ name }) => name === 'rect')).toHaveLength(0);
  });

  it('put a dot for every pair of volts and amps', () => {
    const picture = { reading: bothWays, resistance: 0.0008, emf: 0.0001 };
    const svg = fourWirePlot(picture, { width: 400, height: 230, theme: lightTheme });
    expect(tagsOf(svg).filter(({ name }) => name === 'circle')).toHaveLength(4);
    expect(describeFourWire(picture)).toContain('the slope is 0.8000 mΩ, 100 µV without current');
  });
});

describe('the charts by length', () => {
  it('name every measured cable once, escaped', () => {
    const svg = lengthChart(byLength, { width: 620, height: 270, theme: lightTheme });
    for (const name of ['Sedge', 'Quill', 'Harrow &lt;b&gt;&amp;']) expect(svg.split(`>${name}<`)).toHaveLength(2);
    expect(describeLengths(byLength)).toContain('at 4.5 m: Sedge 3.3 %;');
  });

  it.each([1, 4, 11])('stand on the drop and the heat that the table has, %d m', (length) => {
    const q = questionFrom({ ...FIRST_ANSWERS, charging: '', length: String(length) });
    const check = runCheck(q, sizes(['2 AWG', '1/0 AWG']), []);
    const charts = runCharts(q, check, { unit: 'm', of: (m) => m });
    const strip = dropStrip(q, check);
    charts.drop.curves.forEach((curve, i) => {
      const at = curve.points.find((p) => Math.abs(p.length - length) < 1e-9)!;
      expect(at.value).toBeCloseTo(strip.rows[i]!.value, 6);
    });
    expect(strip.limit!.value).toBeCloseTo((100 * 0.5) / 12.6, 9);
    expect(heatStrip(check).limit!.value).toBeCloseTo(60, 9);
  });

  it('name no upper end where the load may not be fed at the far end of the doubts', () => {
    const q = questionFrom({ ...FIRST_ANSWERS, load: 'W', steady: '2000', resting: '12', charging: '' });
    const check = runCheck(q, sizes(['4 AWG', '2 AWG', '1/0 AWG']), []);
    expect(check.answers.map((a) => a.feeds)).toEqual(['no', 'not settled', 'yes']);
    const texts = (strip: ReturnType<typeof dropStrip>) => strip.rows.map((row) => row.text);
    const ends = (text: string) => text.replace(/\d+\.?\d*/g, '#');
    expect(texts(dropStrip(q, check)).map(ends)).toEqual(['cannot feed this load', '# %, # or more', '# %, # to #']);
    expect(texts(heatStrip(check)).map(ends)).toEqual(['cannot feed this load', '# °C, # or more', '# °C, # to #']);
  });

  it('hold the load that is asked about, and name the lines in the order in which they end', () => {
    const steep = (name: string, by: number) => ({
      name,
      measured: true,
      points: Array.from({ length: 12 }, (_, i) => ({ length: (i + 1) * 0.75, value: (i + 1) * by })),
    });
    const chart = { ...byLength, curves: [steep('Low', 5), steep('High', 6), steep('Mid', 5.5)] };
    const svg = lengthChart(chart, { width: 620, height: 270, theme: lightTheme });
    const at = (name: string) => Number(new RegExp(`y="([\\d.]+)"[^>]*>${name}<`).exec(svg)![1]);
    expect(at('High')).toBeLessThan(at('Mid'));
    expect(at('Mid')).toBeLessThan(at('Low'));
    // 36 % at 4.5 m stands within the field, though 4 % may be lost.
    const ticks = [...svg.matchAll(/>(\d+)<\/text>/g)].map((m) => Number(m[1]));
    expect(Math.max(...ticks)).toBeGreaterThanOrEqual(36);
  });

  it('gives each row its own rating where ratings differ', () => {
    const q = questionFrom(FIRST_ANSWERS);
    const [a, b] = sizes(['2 AWG', '1/0 AWG']) as [ReturnType<typeof sizes>[0], ReturnType<typeof sizes>[0]];
    const strip = heatStrip(runCheck(q, [a, { ...b, rating: 378.15 }], []));
    expect(strip.limit).toBeNull();
    expect(strip.rows.map((row) => Math.round(row.limit!))).toEqual([60, 105]);
  });
});
