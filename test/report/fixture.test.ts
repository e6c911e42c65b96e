import { describe, expect, it } from 'vitest';
import { Findings } from '../../src/findings/schema.ts';
import { rudeNames, sixCables } from '../fixtures/findings.ts';

describe('the hand-written findings', () => {
  it.each([
    ['six cables', sixCables],
    ['rude names', rudeNames],
  ])('%s fit the published shape', (_name, findings) => {
    const read = Findings.safeParse(findings);
    expect(read.error?.issues ?? []).toEqual([]);
  });
});
