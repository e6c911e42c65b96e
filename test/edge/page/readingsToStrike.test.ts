import { describe, expect, it } from 'vitest';
import { readingsToStrike } from '../../../src/edge/page/store/bench/readingsToStrike.ts';
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
