import { describe, expect, it } from 'vitest';
import { fold } from '../../src/trial/fold.ts';
import { readingLives } from '../../src/trial/lives.ts';
import { entry, onePiece, reading } from './entries.ts';

const BASE = onePiece();

const lives = (...entries: ReturnType<typeof entry>[]) => {
  const journal = [...BASE, ...entries];
  return readingLives(journal, fold(journal));
};
const told = (life: ReturnType<typeof lives>, id: string) =>
  life.get(id)?.events.map(({ what, with: other, why }) => [what, other, why].filter((part) => part !== '').join(': '));

describe('the life of a reading', () => {
  it('tells what was said, replaced, struck and moved, with reasons', () => {
    const life = lives(
      reading('r1', 'conductor_mass', '93.1', 'g', { at: '2026-10-03T10:00Z' }),
      reading('r2', 'conductor_mass', '39.1', 'g', { replaces: 'r1', why: 'digits swapped', at: '2026-10-03T10:01Z' }),
      entry('strike', { reading: 'r2', why: 'draught' }),
      entry('retag', { retag: 't1', kind: 'tag', specimen: 'q1', becomes: 'q2', why: 'tag fell off' }),
    );
    expect([...life.keys()]).toEqual(['r1', 'r2']);
    expect(told(life, 'r1')).toEqual(['said: 93.1 g', 'replaced: r2: digits swapped', 'retagged: t1: tag fell off']);
    expect(told(life, 'r2')).toEqual(['said: 39.1 g: digits swapped', 'struck: draught']);
    expect(life.get('r1')).toMatchObject({ typedSpecimen: 'q1', now: { specimen: 'q2', standing: 'replaced' } });
  });

  it('names the entry, the person, the device and the time', () => {
    const said = entry(
      'reading',
      { reading: 'r1', specimen: 'q1', quantity: 'conductor_mass', value: '9', unit: 'g', by: 'Ben' },
      { by: 'Ann', device: 'phone', at: '2026-10-03T11:00:00.000Z' },
    );
    const unsigned = { ...said, id: said.id.replace('-7000-', '-7001-'), by: '' };
    const [first, second] = lives(said, unsigned).get('r1')!.events;
    expect(first).toEqual({
      what: 'said',
      entry: said.id,
      at: '2026-10-03T11:00:00.000Z',
      by: 'Ann',
      device: 'phone',
      why: '',
      with: '9 g',
    });
    expect([second!.what, second!.by]).toEqual(['said again', 'Ben']);
  });

  it('holds a reading that cannot be read, and one that was struck before it was said', () => {
    const life = lives(
      entry('strike', { reading: 'r2', why: 'doubt' }),
      reading('r1', 'conductor_mass', 'heavy', 'g'),
      reading('r2', 'conductor_mass', '9', 'g'),
    );
    expect(life.get('r1')).toMatchObject({ now: null, events: [{ what: 'said', with: 'heavy g' }] });
    expect(told(life, 'r2')).toEqual(['struck: doubt', 'said: 9 g']);
  });

  it('tells of a repair once, as said last, and of a swap and its undoing both', () => {
    const swap = (name: string, why: string) =>
      entry('retag', { retag: name, kind: 'swap', specimen: 'q1', becomes: 'q2', why });
    const life = lives(
      reading('r1', 'conductor_mass', '9', 'g'),
      swap('t1', 'first thought'),
      swap('t1', 'second thought'),
      swap('t2', 'it was right after all'),
    );
    expect(told(life, 'r1')).toEqual([
      'said: 9 g',
      'retagged: t1: second thought',
      'retagged: t2: it was right after all',
    ]);
    expect(life.get('r1')!.now!.specimen).toBe('q1');
  });

  it('does not depend on the order in which entries are held', () => {
    const journal = [
      ...onePiece(),
      reading('r1', 'conductor_mass', '9', 'g'),
      reading('r2', 'conductor_mass', '8', 'g', { replaces: 'r1', why: 'again' }),
      entry('strike', { reading: 'r2', why: 'no' }),
    ];
    expect(readingLives([...journal].reverse(), fold(journal))).toEqual(readingLives(journal, fold(journal)));
  });
});
