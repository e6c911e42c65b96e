import { describe, expect, it } from 'vitest';
import { demoFolder } from '../../../src/edge/files/projectRoot.ts';
import { readFolder } from '../../../src/edge/files/readFolder.ts';
import { areasSoFar } from '../../../src/findings/bench/areasSoFar.ts';
import { findingsOf } from '../../../src/findings/findings.ts';
import { LaidOutBefore } from '../../../src/methods/assay/laidOut.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { fold } from '../../../src/trial/fold.ts';

const { entries } = readPackage(readFolder(demoFolder()), { now: '2026-11-25T00:00:00.000Z' });

const LEVEL = 0.95;

describe('areas so far', () => {
  it('are the same figures as the findings give', () => {
    const trial = fold(entries);
    const found = findingsOf(trial, { level: LEVEL, draws: 0 });
    const areaOf = areasSoFar(trial, LEVEL);
    expect(found.cables.map(({ cable }) => areaOf(cable))).toEqual(found.cables.map((cable) => cable.conductor_area));
    expect(found.cables.filter(({ cable }) => areaOf(cable) !== null).length).toBeGreaterThan(3);
  });

  it('are the same to the last digit after each reading, whatever was laid out before', () => {
    const before = new LaidOutBefore();
    const last = entries.findLastIndex(({ kind }) => kind === 'reading');
    for (const end of [last - 40, last - 1, last + 1, entries.length]) {
      const trial = fold(entries.slice(0, end));
      const again = areasSoFar(trial, LEVEL, before);
      const anew = areasSoFar(trial, LEVEL);
      for (const { cable } of trial.cables) expect(again(cable)).toEqual(anew(cable));
    }
  });

  it('say nothing of a cable that is unknown, or that nothing was read of', () => {
    const trial = fold(entries.filter(({ kind }) => kind !== 'reading'));
    const areaOf = areasSoFar(trial, LEVEL);
    expect(['nobody', trial.cables[0]!.cable].map(areaOf)).toEqual([null, null]);
  });
});
