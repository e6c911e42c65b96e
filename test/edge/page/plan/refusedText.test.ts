import { describe, expect, it } from 'vitest';
import { refusedText } from '../../../../src/edge/page/store/plan/cables.ts';

describe('what stays of pasted rows once the good ones are added', () => {
  const HEAD = 'Maker\tSize\tStrands';
  const cases: { what: string; text: string; good: number; lines: number[]; stays: string }[] = [
    { what: 'nothing refused', text: `${HEAD}\nAlder\t2 AWG\t665`, good: 1, lines: [], stays: '' },
    {
      what: 'a refused row under its headings',
      text: `${HEAD}\nAlder\t2 AWG\t665\nBirch\t2 AWG\tmany\n`,
      good: 1,
      lines: [3],
      stays: `${HEAD}\nBirch\t2 AWG\tmany`,
    },
    {
      what: 'two things refused in one row',
      text: `${HEAD}\r\nBirch\t2 AWG\tmany\r\n`,
      good: 0,
      lines: [2, 2],
      stays: `${HEAD}\nBirch\t2 AWG\tmany`,
    },
    { what: 'rows without headings', text: 'Alder\t2 AWG\nBirch\tlong', good: 1, lines: [2], stays: 'Birch\tlong' },
    { what: 'cells that may hold lines', text: `${HEAD}\n"Al\nder"\t2\tmany`, good: 0, lines: [2], stays: '' },
  ];
  it.each(cases)('$what', ({ text, good, lines, stays }) => {
    const refused = lines.map((line) => ({ line }));
    expect(refusedText(text, good, refused)).toBe(stays);
  });
});
