import { describe, expect, it } from 'vitest';
import { readingsToStrike } from '../../../src/edge/page/store/bench/readingsToStrike.ts';
import { whichReading } from '../../../src/edge/page/store/bench/whichReading.ts';
import type { Reading } from '../../../src/trial/trial.ts';

const read = (reading: string, specimen: string, standing = 'counted') => ({ reading, specimen, standing }) as Reading;

describe('readings offered to be struck out', () => {
  const ofP = Array.from({ length: 9 }, (_, i) => read(`p${i}`, 'p'));
  const ofQ = Array.from({ length: 8 }, (_, i) => read(`q${i}`, 'q'));
  const readings = [...ofP, read('gone', 'p', 'struck'), ...ofQ];
  const names = (first: string, ...pieces: string[]) =>
    readingsToStrike({ readings }, first, pieces).map((r) => r.reading);

  it('hold every one of the piece in hand, the newest first, and the latest five of the others', () => {
    expect(names('', 'p')).toEqual([
      ...['p8', 'p7', 'p6', 'p5', 'p4', 'p3', 'p2', 'p1', 'p0'],
      ...['q7', 'q6', 'q5', 'q4', 'q3'],
    ]);
  });

  it('begin with the one in question and go on with its piece', () => {
    expect(names('q2', 'p').slice(0, 9)).toEqual(['q2', 'q7', 'q6', 'q5', 'q4', 'q3', 'q1', 'q0', 'p8']);
    expect(names('q2', 'p')).toHaveLength(17);
  });
});

describe('which reading it is', () => {
  const at = (day: number, hour: number, minute: number) => new Date(2026, 10, day, hour, minute).toISOString();
  const free = (reading: string, specimen: string, when: string, standing = 'counted') =>
    ({
      reading,
      specimen,
      quantity: 'overhang',
      standing,
      row: { value: '270', unit: 'mm', at: when },
    }) as unknown as Reading;
  const readings = [
    free('a', 'p', at(24, 9, 5)),
    free('other', 'q', at(24, 9, 6)),
    free('b', 'p', at(25, 14, 32), 'struck'),
    free('c', 'p', ''),
  ];

  it('tells three of one value apart, as they are numbered beside the field', () => {
    const words = readings.filter(({ specimen }) => specimen === 'p').map((each) => whichReading({ readings }, each));
    expect(words).toEqual(['reading 1 of 3, 24 Nov, 09:05', 'reading 2 of 3, 25 Nov, 14:32', 'reading 3 of 3']);
    expect(whichReading({ readings }, readings[1]!)).toMatch(/^reading 1 of 1, /);
  });
});
