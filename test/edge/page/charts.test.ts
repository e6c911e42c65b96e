import { describe, expect, it } from 'vitest';
import { chartOf, rowAxis } from '../../../src/edge/page/parts/chartOf.ts';
import { gaugeFigure, gaugeWords } from '../../../src/edge/page/parts/gaugeWords.ts';
import { faceLayout, scaleBarLength } from '../../../src/edge/page/places/inside/faceLayout.ts';
import type { CableFindings } from '../../../src/findings/schema.ts';
import { figureText } from '../../../src/report/figures.ts';
import { intervalHead } from '../../../src/report/intervalBar.ts';
import { sectionDrawing } from '../../../src/report/section/sectionDrawing.ts';
import { sectionInput } from '../../../src/report/section/sectionInput.ts';
import { lightTheme } from '../../../src/report/theme.ts';
import { defaultDisplayUnits } from '../../../src/units/display.ts';
import { awgArea, effectiveAwg, effectiveGaugeText } from '../../../src/units/gauge.ts';
import { sixCables, unmeasured } from '../../fixtures/findings.ts';

const cables = sixCables.cables.filter((cable) => cable.role !== 'control');

describe('chartOf', () => {
  it('holds every interval and the one limit of all labels', () => {
    const { axis, shared } = chartOf(cables, 266, defaultDisplayUnits);
    expect(shared).toBe(true);
    expect(axis?.limit).toBeCloseTo(32.96, 9);
    for (const cable of cables) {
      expect(axis!.domain[0]).toBeLessThanOrEqual(cable.conductor_area!.interval[0]);
      expect(axis!.domain[1]).toBeGreaterThanOrEqual(cable.conductor_area!.interval[1]);
    }
  });

  it('gives each row its own limit where labels differ, and none to a label without an area', () => {
    const larger = {
      ...cables[0]!,
      claims: cables[0]!.claims.map((claim) => (claim.required === null ? claim : { ...claim, required: 40 })),
    };
    const chart = chartOf([larger, cables[1]!, unmeasured], 266, defaultDisplayUnits);
    expect(chart.shared).toBe(false);
    expect(rowAxis(chart, larger)?.limit).toBe(40);
    expect(rowAxis(chart, cables[1]!)?.limit).toBeCloseTo(32.96, 9);
    expect(rowAxis(chart, unmeasured)?.limit).toBeNull();
    expect(chart.axis!.domain[1]).toBeGreaterThanOrEqual(40);
    // The head says what the lines are, for it has none of its own; a row that shows its limit needs no such words.
    expect(intervalHead(chart.axis!, { width: 266, theme: lightTheme })).toContain('line: least its label asks');
    expect(rowAxis(chart, larger)?.caption).toBeUndefined();
    expect(chartOf(cables, 266, defaultDisplayUnits).axis?.caption).toBeUndefined();
  });

  it('is marked at true gauge sizes when gauge was chosen', () => {
    const { axis } = chartOf(cables, 266, { ...defaultDisplayUnits, area: 'awg' });
    expect(axis!.ticks.length).toBeGreaterThan(1);
    for (const { value, text } of axis!.ticks) expect(value).toBeCloseTo(1e6 * awgArea(Number(text)), 6);
    expect(axis!.write!(33.63)).toBe('2');
  });
});

describe('the gauge in the table', () => {
  const withArea = (mm2: number, share: number): CableFindings => {
    const interval: [number, number] = [mm2 * (1 - share), mm2 * (1 + share)];
    const gauge = (area: number) => effectiveAwg(area * 1e-6);
    const base = cables[0]!.conductor_area!;
    return {
      ...cables[0]!,
      conductor_area: { ...base, value: mm2, interval },
      effective_awg: { ...base, unit: 'AWG', value: gauge(mm2), interval: [gauge(interval[1]), gauge(interval[0])] },
      effective_gauge_text: effectiveGaugeText(mm2 * 1e-6),
    };
  };

  it.each([
    [8.4, 0.01],
    [32, 0.01],
    [32, 0.2],
    [41, 0.1],
  ])('stands with its ± where the area of %d mm² has one of %d of it', (mm2, share) => {
    const cable = withArea(mm2, share);
    expect(gaugeFigure(cable)).toBe(cable.conductor_area);
    expect(figureText(gaugeFigure(cable), { area: 'awg' })).toMatchObject({ unit: 'AWG' });
    expect(Number(figureText(gaugeFigure(cable), { area: 'awg' }).plusMinus)).toBeGreaterThan(0);
  });

  it.each([
    [41, 0.25, '1/0\u00a0to\u00a03'],
    [53.5, 0.01, '1/0\u00a0AWG'],
    [41, 0.5, 'not told'],
  ])('is told in words for %d mm² with a ± of %d of it: %s', (mm2, share, words) => {
    const cable = withArea(mm2, share);
    expect(gaugeFigure(cable)).toBeNull();
    expect(gaugeWords(cable)?.replace(/ /g, '\u00a0').replace('not\u00a0told', 'not told')).toBe(words);
  });
});

describe('faceLayout', () => {
  it.each([320, 390, 900, 1360, 2060])('fits all faces into %i px at one whole scale', (width) => {
    const layout = faceLayout(cables.map(sectionInput), width);
    const largest = Math.max(...cables.map((cable) => cable.outer_diameter?.value ?? 0));
    expect(Number.isInteger(layout.scalePxPerMm)).toBe(true);
    expect(largest * layout.scalePxPerMm).toBeLessThanOrEqual(width / layout.across);
  });

  it.each([
    ['16 AWG', 1.31, null],
    ['16 AWG in a jacket', 1.31, 2.4],
    ['1/0', 53.5, 14],
    ['very thick', 2000, 95],
    ['thick as a pipe', 90_000, 700],
  ])('keeps %s and its scale bar within a phone', (_, area, outer) => {
    for (const width of [324, 354, 1360]) {
      const face = { ...sectionInput(unmeasured), metalArea: area, claimedArea: area, outerDiameter: outer };
      const { scalePxPerMm } = faceLayout([face], width);
      const { width: drawn } = sectionDrawing(face, { scalePxPerMm, theme: lightTheme, showTicks: 'upright' });
      expect(drawn).toBeGreaterThan(0);
      expect(drawn).toBeLessThanOrEqual(width);
      const bar = scalePxPerMm * scaleBarLength(scalePxPerMm);
      expect(bar).toBeGreaterThanOrEqual(40);
      expect(bar).toBeLessThanOrEqual(200);
    }
  });

  it('draws something even when nothing was measured', () => {
    expect(faceLayout([sectionInput(unmeasured)], 390)).toMatchObject({ across: 1 });
  });
});
