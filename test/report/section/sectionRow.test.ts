import { describe, expect, it } from 'vitest';
import { headlineClaim } from '../../../src/findings/cableOutcome.ts';
import type { CableFindings } from '../../../src/findings/schema.ts';
import { markOfClaim } from '../../../src/report/outcomeMark.ts';
import { scaleText } from '../../../src/report/section/scaleBar.ts';
import { sectionInput } from '../../../src/report/section/sectionInput.ts';
import { type RowCable, sectionRow } from '../../../src/report/section/sectionRow.ts';
import { lightTheme } from '../../../src/report/theme.ts';
import { rudeNames, sixCables, unmeasured } from '../../fixtures/findings.ts';
import { named, numberOf, tagsOf } from '../markup.ts';

function rowCable(cable: CableFindings): RowCable {
  const claim = headlineClaim(cable);
  const mark = claim === null ? null : markOfClaim(claim, cable.copper_share?.value ?? null);
  return { section: sectionInput(cable), outcome: mark === null ? null : { mark, word: mark.outcome, note: '' } };
}
const six = sixCables.cables.filter(({ role }) => role === 'compared').map(rowCable);

describe('a row of cut faces', () => {
  it('has one whole scale, set by the widest cable', () => {
    const row = sectionRow(six, 1360, { theme: lightTheme });
    expect(row.scalePxPerMm).toBe(Math.floor((1360 / 6 - 20) / 14));
    expect(row.columns).toBe(6);
    const wide = named(row.svg, 'circle').filter((tag) => numberOf(tag, 'r') === (14 * row.scalePxPerMm) / 2);
    expect(wide).toHaveLength(1);
  });

  it('is not shrunk by a cable of which nothing is known', () => {
    const alone = sectionRow(six.slice(0, 2), 600, { theme: lightTheme });
    const withUnknown = sectionRow([...six.slice(0, 2), rowCable(unmeasured)], 900, { theme: lightTheme });
    expect(withUnknown.scalePxPerMm).toBe(alone.scalePxPerMm);
  });

  it('goes into several lines at one scale where it is narrow', () => {
    const row = sectionRow(six, 340, { theme: lightTheme });
    expect(row.columns).toBe(2);
    expect(new Set(row.placed.map(({ y }) => y)).size).toBe(3);
    expect(row.placed.every(({ x }) => x > 0 && x < 340)).toBe(true);
  });

  it('makes the lines equally long', () => {
    expect(sectionRow(six, 640, { theme: lightTheme }).columns).toBe(3);
    expect(sectionRow(six.slice(0, 5), 400, { theme: lightTheme }).columns).toBe(3);
    expect(sectionRow(six, 100, { theme: lightTheme }).columns).toBe(1);
  });

  it('says the scale in words', () => {
    expect(scaleText(10, 6)).toBe('10 mm, one scale for all six');
    expect(scaleText(10, 2)).toBe('10 mm, one scale for both');
    expect(scaleText(5, 1)).toBe('5 mm');
    const words = named(sectionRow(six, 1360, { theme: lightTheme }).svg, 'text').map((tag) => tag.text);
    expect(words).toContain('10 mm, one scale for all six');
  });

  it('says every outcome beside its mark', () => {
    const words = named(sectionRow(six, 1360, { theme: lightTheme }).svg, 'tspan').map((tag) => tag.text);
    expect(words.filter((word) => ['meets', 'falls short', 'not settled'].includes(word))).toEqual([
      'meets',
      'meets',
      'falls short',
      'not settled',
      'falls short',
      'falls short',
    ]);
  });

  it('takes any names, and none', () => {
    tagsOf(sectionRow(rudeNames.cables.map(rowCable), 1000, { theme: lightTheme }).svg);
    expect(tagsOf(sectionRow([], 1000, { theme: lightTheme }).svg)).toHaveLength(1);
  });
});
