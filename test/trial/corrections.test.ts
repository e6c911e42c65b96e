import { describe, expect, it } from 'vitest';
import { corrections } from '../../src/trial/corrections.ts';
import { fold } from '../../src/trial/fold.ts';
import { entry, onePiece, reading } from './entries.ts';

const BASE = onePiece();

const told = (...entries: ReturnType<typeof entry>[]) => {
  const journal = [...BASE, ...entries];
  return corrections(journal, fold(journal));
};
const at = (clock: string) => `2026-10-03T${clock}Z`;

describe('corrections', () => {
  it('are none where nothing was put right', () => {
    expect(
      told(reading('r1', 'conductor_mass', '93.1', 'g'), entry('setting', { setting: 'repeats', value: '3' })),
    ).toEqual([]);
  });

  it('tell a replaced and a struck reading with their values and reasons', () => {
    const list = told(
      reading('r1', 'conductor_mass', '93.1', 'g'),
      reading('r2', 'conductor_mass', '39.1', 'g', { replaces: 'r1', why: 'digits swapped' }),
      entry(
        'strike',
        { reading: 'r2', why: 'draught' },
        { by: 'Ann', device: 'phone', at: '2026-10-03T11:00:00.000Z' },
      ),
    );
    expect(list.map(({ what, text, cable, readings }) => [what, text, cable, readings])).toEqual([
      [
        'replaced',
        'Mass of the conductor of q1: 93.1 g was replaced by 39.1 g. Reason given: digits swapped',
        'quill',
        ['r1', 'r2'],
      ],
      ['struck', 'Mass of the conductor of q1: 39.1 g was struck out. Reason given: draught', 'quill', ['r2']],
    ]);
    expect(list[1]).toMatchObject({ by: 'Ann', device: 'phone', at: '2026-10-03T11:00:00.000Z' });
  });

  it('tell what changed when a cable, a piece, a tool or the trial is described anew', () => {
    const list = told(
      entry('cable', { cable: 'quill', maker: 'Quill', claimed_size: '4 AWG', claimed_metal: 'OFC', lot: 'B7' }),
      entry('specimen', { specimen: 'q1', cable: 'quill', cut_length: '310', kind: 'apart' }),
      entry('instrument', { instrument: 'scale', kind: 'pocket scale', resolution: '0.01', unit: 'g' }),
      entry('trial', { trial: 'club', title: 'Club trial', target_temperature: '21', opened_on: '2026-10-03' }),
    );
    expect(list.map(({ text, cable }) => [text, cable])).toEqual([
      [
        'Cable Quill was described anew: size on the label from "2 AWG" to "4 AWG"; lot is now "B7"; model "Two" taken back.',
        'quill',
      ],
      ['Piece q1 was described anew: cut length from "300" to "310".', 'quill'],
      ['The trial was described anew: target temperature from "20" to "21".', null],
    ]);
  });

  it('name a few changes and count the rest, and shorten long cells', () => {
    const [one] = told(
      entry('cable', { cable: 'quill', a: '1', b: '2', c: '3', d: '4', e: '5', claimed_size: 'x'.repeat(100) }),
    );
    expect(one!.text).toContain(
      'a is now "1"; b is now "2"; c is now "3"; metal on the label "OFC" taken back; 5 more.',
    );
    const [long] = told(
      entry('cable', {
        cable: 'quill',
        maker: 'Quill',
        model: 'Two',
        claimed_metal: 'OFC',
        claimed_size: 'x'.repeat(100),
      }),
    );
    expect(long!.text.length).toBeLessThan(160);
  });

  it('tell a repair with how much it moved', () => {
    const pieces = [
      entry('specimen', { specimen: 'q2', cable: 'quill' }),
      reading('r1', 'conductor_mass', '93.1', 'g', { at: at('10:00') }),
      reading('r2', 'conductor_mass', '93.2', 'g', { at: at('11:00') }),
      reading('r3', 'conductor_mass', '93.2', 'g', { specimen: 'q2', at: at('11:00') }),
    ];
    const repair = (row: Record<string, string>) =>
      entry('retag', { retag: 't', kind: 'swap', specimen: 'q1', becomes: 'q2', why: 'tags mixed up', ...row });
    const [swap] = told(...pieces, repair({}));
    expect(swap).toMatchObject({ what: 'retagged', readings: ['r1', 'r2', 'r3'], cable: null });
    expect(swap!.text).toBe('Pieces q1 and q2 were swapped: 3 readings changed places. Reason given: tags mixed up');
    const [tag] = told(...pieces, repair({ kind: 'tag', from: at('10:30') }));
    expect(tag!.text).toBe('What was recorded on piece q1 belongs to q2: 1 reading moved. Reason given: tags mixed up');
  });

  it('tell a correction that stands before what it corrects, by the clock of another device', () => {
    const [one] = told(
      reading('r2', 'conductor_mass', '39.1', 'g', { replaces: 'r1', why: 'digits swapped' }),
      reading('r1', 'conductor_mass', '93.1', 'g'),
    );
    expect(one!.text).toBe('Mass of the conductor of q1: 93.1 g was replaced by 39.1 g. Reason given: digits swapped');
  });

  it('tell nothing twice when the same is said again', () => {
    const again = reading('r1', 'conductor_mass', '93.1', 'g');
    const strike = entry('strike', { reading: 'r1', why: 'draught' });
    const list = told(again, { ...again, id: again.id.replace('-7000-', '-7001-') }, strike, {
      ...strike,
      id: strike.id.replace('-7000-', '-7001-'),
    });
    expect(list.map(({ what }) => what)).toEqual(['struck']);
  });
});

describe('what a person reads', () => {
  it('names pieces by the code on their tag, and quantities and columns in words of the trade', () => {
    const entries = [
      ...onePiece(),
      entry('specimen', { specimen: 'c1-a1', cable: 'quill', code: 'KR', kind: 'apart', cut_length: '300' }),
      reading('r-2f24a8c3e6', 'specimen_mass', '140', 'g', { specimen: 'c1-a1' }),
      reading('r-91', 'specimen_mass', '14.1', 'g', { specimen: 'c1-a1' }),
      entry('strike', { reading: 'r-91', why: 'slip' }),
      reading('r-92', 'specimen_mass', '1410', 'g', { specimen: 'c1-a1', at_length: 'x' }),
    ];
    const trial = fold(entries);
    const texts = [...trial.remarks.map(({ text }) => text), ...corrections(entries, trial).map(({ text }) => text)];
    expect(texts.length).toBeGreaterThan(2);
    for (const text of texts) expect(text).not.toMatch(/c1-a1(?!.*left out)|r-\w+|[a-z]_[a-z]/);
    expect(texts).toContain('Mass of the whole piece of KR: 14.1 g was struck out. Reason given: slip');
  });
});
