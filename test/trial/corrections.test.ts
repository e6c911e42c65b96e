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
        'Reading r1 (93.1 g) was replaced by r2 (39.1 g). Reason given: digits swapped',
        'quill',
        ['r1', 'r2'],
      ],
      ['struck', 'Reading r2 (39.1 g) was struck out. Reason given: draught', 'quill', ['r2']],
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
        'Cable quill was described anew: claimed_size from "2 AWG" to "4 AWG"; lot is now "B7"; model "Two" taken back.',
        'quill',
      ],
      ['Piece q1 was described anew: cut_length from "300" to "310".', 'quill'],
      ['The trial was described anew: target_temperature from "20" to "21".', null],
    ]);
  });

  it('name a few changes and count the rest, and shorten long cells', () => {
    const [one] = told(
      entry('cable', { cable: 'quill', a: '1', b: '2', c: '3', d: '4', e: '5', claimed_size: 'x'.repeat(100) }),
    );
    expect(one!.text).toContain('a is now "1"; b is now "2"; c is now "3"; claimed_metal "OFC" taken back; 5 more.');
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
    expect(one!.text).toBe('Reading r1 (93.1 g) was replaced by r2 (39.1 g). Reason given: digits swapped');
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
