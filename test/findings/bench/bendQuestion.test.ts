import { describe, expect, it } from 'vitest';
import { faceWords, pieceSoFar } from '../../../src/edge/page/store/bench/repeats.ts';
import { questionFor } from '../../../src/findings/bench/questionFor.ts';
import { wantedGroups } from '../../../src/findings/bench/wantedReadings.ts';
import { planSettings } from '../../../src/findings/plan/settings.ts';
import { fold } from '../../../src/trial/fold.ts';
import { Bench } from '../bench.ts';

const bench = () => new Bench().cable('x', '2 AWG', 'OFC').piece('b', 'x', { kind: 'bend', cut_length: '360' });
const drooping = () => bench().read('b', 'overhang', '280', 'mm', { set: 'droop' });
const ask = (b: Bench, quantity: string, value: string, unit: string) =>
  questionFor(fold(b.entries), { specimen: 'b', quantity, value, unit });

describe('a reading of bending is asked about', () => {
  const thick = () => bench().read('b', 'outer_diameter', '12.0', 'mm');
  it.each([
    ['a drop as deep as what hangs free', drooping(), 'tip_drop', '280', 'mm', 'too-much'],
    ['a sound drop', drooping(), 'tip_drop', '90', 'mm', null],
    ['a drop too small to read', drooping(), 'tip_drop', '2', 'mm', 'too-little'],
    ['a drop upwards, of a curled piece', drooping(), 'tip_drop', '-12', 'mm', null],
    ['an angle past plumb', drooping(), 'chord_angle', '95', 'deg', 'too-much'],
    ['a sound angle', drooping(), 'chord_angle', '40', 'deg', null],
    ['more than all springs back', bench(), 'spring_back', '150', '%', 'too-much'],
    ['a share typed as per cent', bench(), 'spring_back', '0.8', '%', 'too-little'],
    ['a sound spring-back', bench(), 'spring_back', '67', '%', null],
    ['a coil narrower than the cable', thick(), 'coil_diameter', '5', 'mm', 'too-little'],
    ['a sound coil', thick(), 'coil_diameter', '60', 'mm', null],
    ['a coil of a cable of unknown thickness', bench(), 'coil_diameter', '60', 'mm', 'no-diameter'],
    ['turns tighter than the cable', thick(), 'coil_turns', '12', '', 'too-much'],
  ] as const)('%s', (_, b, quantity, value, unit, code) => {
    expect(ask(b, quantity, value, unit)?.code ?? null).toBe(code);
  });

  it('and told how much to let hang free where the piece has it', () => {
    const long = new Bench().cable('x', '2 AWG', 'OFC').piece('b', 'x', { kind: 'bend', cut_length: '2000' });
    long.read('b', 'overhang', '280', 'mm', { set: 'droop' });
    expect(ask(long, 'tip_drop', '5', 'mm')!.text).toMatch(/Let about \d{3} mm hang free, or push it/);
  });
});

describe('the mean shown beside a droop', () => {
  it('is of one way up', () => {
    const b = drooping();
    for (const [value, position] of [
      ['90', 'up'],
      ['92', 'up'],
      ['60', 'down'],
    ] as const)
      b.read('b', 'tip_drop', value, 'mm', { set: 'droop', position });
    const trial = fold(b.entries);
    expect(pieceSoFar(trial, 'b', 'tip_drop', 'mm', 'up').mean).toBe('91');
    expect(pieceSoFar(trial, 'b', 'tip_drop', 'mm', 'down').mean).toBe('60');
    expect(pieceSoFar(trial, 'b', 'tip_drop', 'mm', 'down').readings.map(({ text, face }) => [text, face])).toEqual([
      ['90', 'as laid'],
      ['92', 'as laid'],
      ['60', 'turned over'],
    ]);
  });

  it('stands beside the readings that it is of, and no others', () => {
    const b = drooping();
    b.read('b', 'tip_drop', '32', 'mm', { set: 'droop', position: 'up' });
    b.read('b', 'tip_drop', '30', 'mm', { set: 'droop', position: 'down' });
    const trial = fold(b.entries);
    const shown = (face: 'up' | 'down') => {
      const { alike, mean } = pieceSoFar(trial, 'b', 'tip_drop', 'mm', face);
      return [alike.map(({ text }) => text), mean];
    };
    expect(shown('up')).toEqual([['32'], '32']);
    expect(shown('down')).toEqual([['30'], '30']);
    expect([faceWords('tip_drop', 'down'), faceWords('overhang', 'down')]).toEqual(['turned over', '']);
  });
});

describe('what the bench asks for by bending', () => {
  const asked = (methods: string) => wantedGroups(planSettings({ methods })).flatMap((g) => g.quantities);
  it('holds weight, length and thickness where nothing else asks for them', () => {
    expect(asked('bend')).toEqual(['specimen_length', 'specimen_mass', 'outer_diameter', 'overhang', 'tip_drop']);
    expect(asked('bend, weigh, wall').filter((q) => q === 'specimen_length')).toEqual([]);
  });

  it('holds what is ticked beside the droop', () => {
    expect(asked('bend, push, coil, spring')).toEqual(
      expect.arrayContaining(['push_span', 'push_deflection', 'push_force', 'coil_diameter', 'spring_back']),
    );
    expect(planSettings({ methods: 'weigh, coil' }).bendPieces).toBe(1);
    expect(planSettings({ methods: 'weigh' }).bendPieces).toBe(0);
  });
});
