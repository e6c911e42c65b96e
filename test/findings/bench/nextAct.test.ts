import { describe, expect, it } from 'vitest';
import { benchList } from '../../../src/findings/nextAct.ts';
import { entry } from '../../trial/entries.ts';
import { cable, setting, trialOf } from '../plan/trials.ts';

const piece = (specimen: string, kind: string, of = 'harrow') =>
  entry('specimen', { specimen, cable: of, kind, code: specimen.toUpperCase(), cut_length: '300' });
const ohms = (reading: string, specimen: string, more = {}) =>
  entry('reading', {
    reading,
    specimen,
    quantity: 'resistance',
    value: '0.9',
    unit: 'mohm',
    at_length: '2700',
    ...more,
  });

const START = [
  cable('harrow'),
  cable('sedge'),
  piece('w1', 'whole'),
  piece('w2', 'whole', 'sedge'),
  piece('a1', 'apart'),
];

describe('what the bench wants', () => {
  it('is ohms on every whole length first, each piece once a round', () => {
    const { acts, next, progress } = benchList(trialOf(...START));
    const first = acts.slice(0, 6);
    expect(first.map((a) => a.item.quantity)).toEqual(Array(6).fill('resistance'));
    expect(first.map((a) => a.repeat)).toEqual([1, 1, 2, 2, 3, 3]);
    expect(new Set(first.slice(0, 2).map((a) => a.item.specimen))).toEqual(new Set(['w1', 'w2']));
    expect(next).toBe(acts[0]);
    expect(progress.done).toBe(0);
    expect(progress.left).toBe(acts.length);
  });

  it('suggests the listed tool, and none where none is fit', () => {
    const { items } = benchList(trialOf(...START));
    const tool = (quantity: string) => items.find((i) => i.quantity === quantity)!.instrument;
    expect(tool('resistance')).toBe('meter');
    expect(tool('conductor_mass')).toBe('scale');
    expect(tool('conductor_length')).toBe('rule');
    expect(tool('strand_diameter')).toBeNull();
    expect(tool('strand_count')).toBeNull();
  });

  it('counts what is taken, and not what is struck or replaced', () => {
    const wanted = benchList(trialOf(...START)).progress.wanted;
    const taken = trialOf(
      ...START,
      ohms('r1', 'w1'),
      ohms('r2', 'w1'),
      entry('strike', { reading: 'r2', why: 'slipped' }),
    );
    const { items, progress } = benchList(taken);
    expect(items.find((i) => i.specimen === 'w1' && i.quantity === 'resistance')).toMatchObject({
      wanted: 3,
      done: 1,
      left: 2,
    });
    expect(progress).toEqual({ wanted, done: 1, left: wanted - 1 });
  });

  it('does not count more than is wanted', () => {
    const many = Array.from({ length: 9 }, (_, i) => ohms(`r${i}`, 'w1'));
    const { items } = benchList(trialOf(...START, ...many));
    expect(items.find((i) => i.specimen === 'w1' && i.quantity === 'resistance')).toMatchObject({ done: 3, left: 0 });
  });

  it('reads overhang and drop of one face together', () => {
    const { acts } = benchList(trialOf(cable('harrow'), piece('b1', 'bend'), setting('methods', 'bend')));
    expect(acts.map((a) => `${a.item.quantity} ${a.repeat}`)).toEqual([
      'specimen_length 1',
      'specimen_mass 1',
      'outer_diameter 1',
      'outer_diameter 2',
      'overhang 1',
      'tip_drop 1',
      'overhang 2',
      'tip_drop 2',
      'overhang 3',
      'tip_drop 3',
    ]);
  });

  it('by specimen finishes a piece before the next', () => {
    const entries = [cable('harrow'), piece('a1', 'apart'), piece('a2', 'apart'), setting('methods', 'weigh')];
    const pieces = (working: string) =>
      benchList(trialOf(...entries, setting('working', working))).acts.map((a) => a.item.specimen);
    const changes = (list: string[]) => list.filter((p, i) => i > 0 && p !== list[i - 1]).length;
    expect(changes(pieces('by specimen'))).toBe(1);
    expect(changes(pieces('by quantity'))).toBeGreaterThan(3);
    expect([...pieces('by specimen')].sort()).toEqual([...pieces('by quantity')].sort());
  });

  it('lists what eyes and a magnet are still to say of each cable, where the plan wants them', () => {
    const look = (look: string, of: string) => entry('evidence', { cable: of, look, seen: 'red through' });
    const left = (...more: Parameters<typeof trialOf>) =>
      benchList(trialOf(...START, ...more)).looks.map((item) => [item.look, item.cables.length, item.left.join(' ')]);
    expect(left()).toEqual([
      ['print_on_jacket', 2, 'harrow sedge'],
      ['scraped_strand', 2, 'harrow sedge'],
      ['magnet', 2, 'harrow sedge'],
    ]);
    const printed = entry('cable', { cable: 'sedge', claimed_size: '2 AWG', printed_on_jacket: '2 AWG OFC' });
    expect(left(look('scraped_strand', 'harrow'), look('magnet', 'sedge'), printed).map((item) => item[2])).toEqual([
      'harrow',
      'sedge',
      'harrow',
    ]);
    expect(left(setting('methods', 'ohms'))).toEqual([]);
  });

  it('wants nothing where no piece is on record', () => {
    expect(benchList(trialOf(cable('harrow')))).toMatchObject({
      items: [],
      next: null,
      progress: { wanted: 0, done: 0, left: 0 },
    });
  });
});
