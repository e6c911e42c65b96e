import { describe, expect, it } from 'vitest';
import { Failure } from '../../../src/edge/cli/failure.ts';
import { questionOf, type RunOptions } from '../../../src/edge/cli/runOptions.ts';
import { overloadOf } from '../../../src/edge/cli/runTyped.ts';
import { runProblems } from '../../../src/methods/current/runCheck/problems.ts';
import { expectClose } from '../../tolerance.ts';

const TYPED: RunOptions = {
  cable: [],
  load: '80A',
  length: '5m',
  supply: '12.6',
  supplyOhms: '2-8',
  return: 'same',
  joints: '0.9',
  ambient: '30',
  bundle: '1',
  drop: '0.5V',
  sizes: 'awg',
  json: false,
  ascii: false,
};
const asked = (more: Partial<RunOptions> = {}) => questionOf({ ...TYPED, ...more });

describe('an overload as it is typed', () => {
  it('is amps, with their unit or without', () => {
    expect([overloadOf('250A'), overloadOf('250')]).toEqual([250, 250]);
  });

  it.each(['0', '-5A', '250W', '1e9', 'many'])('%s is named as wrong use', (text) => {
    expect(() => overloadOf(text)).toThrow(/--overload was .*expected amps above 0/);
  });
});

describe('a run as it is typed', () => {
  it('is read into SI', () => {
    const q = asked();
    expect(q.load).toEqual({ kind: 'amps', steady: 80, peak: null, efficiency: 1 });
    expect(q.supply).toEqual({
      resting: 12.6,
      charging: 14.2,
      ohms: { value: 0.005, low: 0.002, high: 0.008 },
      direct: true,
    });
    expectClose(q.allowedDrop, 0.5 / 12.6, { relative: 1e-12 });
    expect(q.surroundings).toEqual({ ambient: 303.15, bundle: 1, layer: null });
    expect(q.back).toEqual({ kind: 'same cable', length: 5 });
    expect(runProblems(q)).toEqual([]);
  });

  it.each([
    [{ load: '1.2kW' }, (q: ReturnType<typeof asked>) => [q.load.kind, q.load.steady], ['watts', 1200]],
    [{ length: '10ft' }, (q: ReturnType<typeof asked>) => [q.length.toFixed(3)], ['3.048']],
    [{ return: '1.2mohm' }, (q: ReturnType<typeof asked>) => [q.back], [{ kind: 'body measured', ohms: 0.0012 }]],
    [
      { return: '0.5-3mohm' },
      (q: ReturnType<typeof asked>) => [q.back],
      [{ kind: 'body unknown', low: 0.0005, high: 0.003 }],
    ],
    [{ load: '80,5A' }, (q: ReturnType<typeof asked>) => [q.load.steady], [80.5]],
    [{ ambient: '104F' }, (q: ReturnType<typeof asked>) => [q.surroundings.ambient.toFixed(6)], ['313.150000']],
    [{ load: '80W', efficiency: '80%' }, (q: ReturnType<typeof asked>) => [q.load.efficiency], [0.8]],
    [{ joints: '0.9mohm' }, (q: ReturnType<typeof asked>) => [q.joints[0]!.ohms], [0.0009]],
    [{ supplyOhms: '2 to 8' }, (q: ReturnType<typeof asked>) => [q.supply.ohms.high], [0.008]],
    [{ drop: '4%' }, (q: ReturnType<typeof asked>) => [q.allowedDrop], [0.04]],
    [
      { layer: '8mm,0.06' },
      (q: ReturnType<typeof asked>) => [q.surroundings.layer],
      [{ thickness: 0.008, conductivity: 0.06 }],
    ],
    [
      { measured: '0.18,0.09@120', installed: 'quill' },
      (q: ReturnType<typeof asked>) => [q.measured],
      [{ plus: 0.18, minus: 0.09, current: 120, cable: 'quill' }],
    ],
    [
      { peak: '200A', peakShare: '0.1' },
      (q: ReturnType<typeof asked>) => [q.load.peak],
      [{ amount: 200, share: 0.1, seconds: 30 }],
    ],
  ])('%j', (more, of, wanted) => {
    expect(of(asked(more))).toEqual(wanted);
  });

  it.each([
    [{ load: '80' }, '--load'],
    [{ load: 'many A' }, '--load'],
    [{ length: '5kg' }, '--length'],
    [{ peak: '300W' }, '--peak'],
    [{ return: 'sky' }, '--return'],
    [{ drop: 'little' }, '--drop'],
    [{ measured: '0.18' }, '--measured'],
    [{ supply: 'twelve' }, '--supply'],
    [{ ambient: 'warm' }, '--ambient'],
    [{ load: '80V' }, '"80V" (a voltage)'],
    [{ load: '1,200A' }, 'may mean 1.200 or 1200'],
    [{ load: '80W', efficiency: '90' }, 'such as 0.8 or 80%'],
    [{ efficiency: '0.9' }, '--efficiency says more about a load in watts, and --load was "80A"'],
    [{ installed: 'quill' }, '--installed says more about --measured'],
    [{ peakShare: '0.5' }, '--peak-share says more about --peak'],
  ])('%j is named as wrong use', (more, option) => {
    expect(() => asked(more)).toThrow(Failure);
    expect(() => asked(more)).toThrow(option);
  });

  it.each([
    [{ supply: '72' }, /has 72 V at rest; expected is direct current of at most 60 V/],
    [{ supply: '230 VAC' }, /mains/],
    [{ length: '-3m' }, /−3 m long/],
    [{ load: '0A' }, /load is 0/],
  ])('%j is left to the check, which names it', (more, words) => {
    expect(runProblems(asked(more)).join(' ')).toMatch(words);
  });
});
