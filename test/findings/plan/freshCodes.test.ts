import { describe, expect, it } from 'vitest';
import { freshCodes } from '../../../src/findings/plan/freshCodes.ts';
import { fold } from '../../../src/trial/fold.ts';
import { entry } from '../../trial/entries.ts';
import { cable, DESCRIBED } from './trials.ts';

const piece = (specimen: string, code: string) =>
  entry('specimen', { specimen, cable: 'harrow', code, cut_length: '300', kind: 'apart' });

describe('new codes', () => {
  const entries = [
    DESCRIBED,
    cable('harrow'),
    piece('a1', 'KL'),
    piece('a1', 'NR'),
    piece('a2', 'DF'),
    piece('a3', ''),
  ];
  const trial = fold(entries);
  const rows = freshCodes(trial, entries, 'drawn');

  it('are given to every piece that has one, and change nothing else', () => {
    expect(rows.map((row) => row.specimen)).toEqual(['a1', 'a2']);
    for (const row of rows) {
      const was = trial.specimens.find(({ specimen }) => specimen === row.specimen)!.row;
      expect({ ...row, code: '' }).toEqual({ ...was, code: '' });
    }
  });

  it('are none that was ever given, in either order of its letters, over many draws', () => {
    const old = new Set(['KL', 'NR', 'DF', 'LK', 'RN', 'FD']);
    for (let i = 0; i < 50; i++) {
      const codes = freshCodes(trial, entries, `draw ${i}`).map((row) => row.code);
      expect(new Set(codes).size).toBe(2);
      for (const code of codes) expect(old.has(code!)).toBe(false);
    }
  });

  it('are shared by pieces that shared the old one', () => {
    const twins = [DESCRIBED, cable('harrow'), piece('a1', 'KL'), piece('a2', 'KL'), piece('a3', 'DF')];
    const [one, two, three] = freshCodes(fold(twins), twins, 'drawn').map((row) => row.code);
    expect([one === two, one === three]).toEqual([true, false]);
  });

  it('follow from what was drawn, and from nothing of the trial alone', () => {
    expect(freshCodes(trial, entries, 'drawn')).toEqual(rows);
    expect(freshCodes(trial, entries, 'drawn anew')).not.toEqual(rows);
  });
});

it('names shown to whoever cuts leave the trial blind', () => {
  const { blinding } = fold([
    DESCRIBED,
    entry('blinding', { act: 'blind', how: 'sleeve', at: '2026-10-03 09:00' }),
    entry('blinding', { act: 'show', at: '2026-10-03 10:00' }),
  ]);
  expect([blinding.blind, blinding.revealed, blinding.since]).toEqual([true, false, '2026-10-03 09:00']);
});
