import { describe, expect, it } from 'vitest';
import { demoFolder } from '../../../src/edge/files/projectRoot.ts';
import { readFolder } from '../../../src/edge/files/readFolder.ts';
import { areasSoFar } from '../../../src/findings/bench/areasSoFar.ts';
import { findingsOf } from '../../../src/findings/findings.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { fold } from '../../../src/trial/fold.ts';

const { entries } = readPackage(readFolder(demoFolder()), { now: '2026-11-25T00:00:00.000Z' });

describe('areas so far', () => {
  it('are the same figures as the findings give', () => {
    const trial = fold(entries);
    const found = findingsOf(trial, { level: 0.95, draws: 0 });
    const names = found.cables.map(({ cable }) => cable);
    const areas = areasSoFar(trial, names, 0.95);
    expect(areas).toEqual(
      found.cables.flatMap(({ cable, conductor_area: area }) => (area === null ? [] : [{ cable, area }])),
    );
    expect(areas.length).toBeGreaterThan(3);
    expect(areasSoFar(trial, [names[2]!], 0.95)).toEqual(areas.filter(({ cable }) => cable === names[2]));
  });

  it('say nothing of a cable that is unknown, or that nothing was read of', () => {
    const trial = fold(entries.filter(({ kind }) => kind !== 'reading'));
    expect(areasSoFar(trial, [trial.cables[0]!.cable, 'nobody'], 0.95)).toEqual([]);
  });
});
