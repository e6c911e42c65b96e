import { describe, expect, it } from 'vitest';
import { figureColumn } from '../../../src/report/figureColumn.ts';
import { displayWidth } from '../../../src/report/text/displayWidth.ts';
import { shelfTable } from '../../../src/report/text/shelfTable.ts';
import { figure, line } from '../../findings/across/lines.ts';

const LINES = [
  line('a', 'Brackenfell Boot Run', { bending_stiffness: figure(0.0512, 'N m2', 0.03) }),
  line('b', '='.repeat(200), { metal_found: null, conductor_area: null, price_per_m: null, day: null }),
  line('b', '\u001b[31mred <b>', { label: { size: '', metal: '', area_mm2: null } }),
];

describe('the shelf on a terminal', () => {
  it('has name and trial, label and what was found', () => {
    const text = shelfTable(LINES.slice(0, 1), { width: 140 });
    for (const part of [
      'Brackenfell Boot Run',
      'Trial a',
      '2 AWG',
      'OFC',
      '33.1',
      'copper',
      '12.50 EUR',
      '2026-10-03',
      '0.051',
    ])
      expect(text).toContain(part);
  });

  it.each([60, 80, 140])('keeps within %i columns, whatever names hold, and writes no control characters', (width) => {
    const text = shelfTable(LINES, { width });
    for (const row of text.split('\n')) expect(displayWidth(row), row).toBeLessThanOrEqual(width);
    expect(text).not.toContain('\u001b');
    expect(text).toContain('not settled');
  });

  it.each([60, 100])('never breaks a unit from its figure, at %i columns', (width) => {
    const thin = line('a', 'Thin', { conductor_area: figure(3.27, 'mm2', 0.0007) });
    const text = shelfTable([thin, LINES[0]!], { width, units: { area: 'awg' } });
    expect(text).toMatch(/ 12\.05 ± 0\.01 AWG\b/);
    expect(shelfTable([thin], { width, units: { area: 'awg' }, ascii: true })).toMatch(/\d \+\/- [\d.]+ AWG\b/);
  });

  it('rounds as the table of one trial does', () => {
    const areas = [figure(34.72, 'mm2', 0.004), figure(12.6, 'mm2', 0.05)];
    const text = shelfTable(
      areas.map((conductor_area, at) => line('a', `Cable ${at}`, { conductor_area })),
      { width: 100 },
    );
    for (const { value, plusMinus } of figureColumn(areas, {})) expect(text).toContain(`${value} ± ${plusMinus} mm²`);
    expect(text).toContain('34.7 ± 0.3 mm²');
  });

  it('leaves out from the end what has no room', () => {
    expect(shelfTable(LINES, { width: 60 })).not.toContain('Price');
    expect(shelfTable(LINES, { width: 140 })).toContain('Stiffness');
  });

  it('needs no more than ASCII where that is asked for', () => {
    expect(shelfTable(LINES, { ascii: true, width: 140 })).toMatch(/^[\n\x20-\x7e]*$/);
  });
});
