import { describe, expect, it } from 'vitest';
import { fold } from '../../src/trial/fold.ts';
import { entry, onePiece, reading } from './entries.ts';

const foldWith = (...more: ReturnType<typeof entry>[]) => fold([...onePiece(), ...more]);

describe('notes', () => {
  it('say what they are about, with their photo and their place in the film', () => {
    const { notes, remarks } = foldWith(
      reading('r1', 'conductor_mass', '93.1', 'g'),
      entry('note', { note: 'n1', text: ' rained all day ' }),
      entry('note', {
        note: 'n2',
        about: 'Reading',
        which: 'r1',
        photo: 'ab12',
        shot: 'Scale display',
        at: '2026-10-03',
        by: 'Ann',
      }),
      entry('note', {
        note: 'n3',
        about: 'specimen',
        which: 'q1',
        text: 'end frayed',
        footage: 'card 2',
        timecode: '12:31',
      }),
    );
    expect(notes.map(({ about, which, text }) => [about, which, text])).toEqual([
      ['trial', 'club', 'rained all day'],
      ['reading', 'r1', ''],
      ['specimen', 'q1', 'end frayed'],
    ]);
    expect(notes[1]).toMatchObject({ photo: 'ab12', shot: 'scale display', at: '2026-10-03', by: 'Ann' });
    expect(notes[2]).toMatchObject({ footage: 'card 2', timecode: '12:31', at: null });
    expect(remarks).toEqual([]);
  });

  it('on what nobody described are kept and remarked on', () => {
    const { notes, remarks } = foldWith(entry('note', { note: 'n1', about: 'cable', which: 'ghost', text: 'x' }));
    expect(notes).toHaveLength(1);
    expect(remarks).toMatchObject([{ code: 'not-yet-described', text: expect.stringContaining('cable ghost') }]);
  });
});

describe('settings', () => {
  it('are one for each name, the later one counting, a blank one taking it back', () => {
    const { settings, settingRows } = foldWith(
      entry('setting', { setting: 'repeats', value: '3' }),
      entry('setting', { setting: 'working', value: 'by quantity' }),
      entry('setting', { setting: 'repeats', value: ' 5 ' }),
      entry('setting', { setting: 'working', value: '' }),
      entry('setting', { setting: '__proto__', value: 'x' }),
    );
    expect(Object.entries(settings)).toEqual([
      ['repeats', '5'],
      ['__proto__', 'x'],
    ]);
    expect(settingRows).toHaveLength(3);
  });
});

describe('blinding', () => {
  const act = (what: string, at = '', how = '') =>
    entry('blinding', { act: what, ...(at ? { at } : {}), ...(how ? { how } : {}) });

  it('is off until somebody says otherwise', () => {
    expect(foldWith().blinding).toEqual({
      blind: false,
      how: '',
      since: null,
      revealed: false,
      revealedAt: null,
      acts: [],
    });
  });

  it.each([
    ['blind', [act('blind', '2026-10-03', 'sleeve')], true, 'sleeve', '2026-10-03', false, null],
    [
      'revealed',
      [act('blind', '2026-10-03', 'sleeve'), act('reveal', '2026-10-04')],
      false,
      'sleeve',
      '2026-10-03',
      true,
      '2026-10-04',
    ],
    [
      'blind once more',
      [act('blind'), act('reveal'), act('blind', '2026-10-05', 'other room')],
      true,
      'other room',
      '2026-10-05',
      false,
      null,
    ],
    [
      'said to be blind in another way',
      [act('blind', '', 'sleeve'), act('blind', '2026-10-04')],
      true,
      'sleeve',
      '2026-10-04',
      false,
      null,
    ],
    ['revealed without having been blind', [act('reveal', '2026-10-04')], false, '', null, false, null],
    ['acted on in a way that nobody knows', [act('blind'), act('peek')], true, '', null, false, null],
  ])('may be %s', (_what, acts, blind, how, since, revealed, revealedAt) => {
    const { blinding } = foldWith(...acts);
    expect({ ...blinding, acts: blinding.acts.length }).toEqual({
      blind,
      how,
      since,
      revealed,
      revealedAt,
      acts: acts.length,
    });
  });
});
