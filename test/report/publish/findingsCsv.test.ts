import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { findingsCsv, harmlessCell } from '../../../src/report/publish/findingsCsv.ts';
import { demoPublished, demoUnderNames } from '../../support/demoReport.ts';
import { HOSTILE_NAMES } from '../../support/hostile.ts';

describe('a cell of words', () => {
  it.each([
    ['=HYPERLINK("x")', '\'=HYPERLINK("x")'],
    ['+1', "'+1"],
    ['-2 AWG', "'-2 AWG"],
    ['@SUM(A1)', "'@SUM(A1)"],
    [' =1', "' =1"],
    ['\t=1', "' =1"],
    ['a\r\n=1', 'a =1'],
    ['Quill', 'Quill'],
    ['2 AWG', '2 AWG'],
    ['', ''],
  ])('%j becomes %j', (typed, wanted) => {
    expect(harmlessCell(typed)).toBe(wanted);
  });
});

describe('the figures as one table', () => {
  const parsed = (csv: string) => Papa.parse<Record<string, string>>(csv.trimEnd(), { header: true });

  it('has every measured figure with both ends, as numbers', () => {
    const { findings } = demoPublished();
    const { data, errors } = parsed(findingsCsv(findings));
    expect(errors).toEqual([]);
    const [cable] = findings.cables;
    const row = data.find((r) => r.cable === cable!.cable && r.figure === 'conductor_area')!;
    expect(Number(row.value)).toBe(cable!.conductor_area!.value);
    expect([Number(row.low), Number(row.high)]).toEqual(cable!.conductor_area!.interval);
    for (const place of [
      'bend.bending_stiffness',
      'jacket.density',
      'amps.carrying.current_A',
      'standing.price_per_m_mm2',
    ])
      expect(
        data.some((r) => r.figure === place),
        place,
      ).toBe(true);
    for (const r of data) expect(Number.isFinite(Number(r.value))).toBe(true);
  });

  it('holds no cell that a spreadsheet would run', () => {
    const { findings } = demoUnderNames(Object.values(HOSTILE_NAMES));
    const { data } = parsed(findingsCsv(findings));
    expect(data.some((r) => r.name === `'${HOSTILE_NAMES.formula}`)).toBe(true);
    for (const r of data)
      for (const [column, content] of Object.entries(r)) {
        const number = content !== '' && Number.isFinite(Number(content));
        if (!number) expect(content, column).not.toMatch(/^[=+\-@\t\r]/);
      }
  });
});
