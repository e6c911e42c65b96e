import { describe, expect, it } from 'vitest';
import { Failure } from '../../../src/edge/cli/failure.ts';
import { questionOf, type RunOptions } from '../../../src/edge/cli/runOptions.ts';
import { runProblems } from '../../../src/methods/current/runCheck/question.ts';
import { expectClose } from '../../tolerance.ts';

const TYPED: RunOptions = {
  cable: [],
  load: '80A',
  length: '5m',
  peakShare: '0.2',
  peakSeconds: '30',
  efficiency: '1',
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
  ])('%j is named as wrong use', (more, option) => {
    expect(() => asked(more)).toThrow(Failure);
    expect(() => asked(more)).toThrow(option);
  });

  it.each([
    [{ supply: '72' }, /above 60 V/],
    [{ supply: '230 VAC' }, /mains/],
    [{ length: '-3m' }, /-3 m long/],
    [{ load: '0A' }, /load is 0/],
  ])('%j is left to the check, which names it', (more, words) => {
    expect(runProblems(asked(more)).join(' ')).toMatch(words);
  });
});
