/**
 * The program held against lots of invented cables whose truth is known: a short run of what docs/figures.md reports in
 * full. The floors are aims set before the program was run on these lots.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { COMPLICATIONS } from '../simulate/complications.ts';
import { complicatedLots, type Effort, FULL_EFFORT, named, type Prevalence, plainLots } from '../simulate/figures.ts';
import type { Judged } from '../simulate/judge.ts';
import { hasOhms, SUBSETS, type Subset, type SubsetName } from '../simulate/subsets.ts';
import { honestOf, median, rate, type Share, share, shareText } from '../simulate/tally.ts';

/** The first lots of docs/figures.md. Mass alone is quick to assay, and its misses are rare: it gets half of them. */
const EFFORT: Effort = { firstSeed: FULL_EFFORT.firstSeed, plainLots: 12, complicatedLots: 2 };
const MASS_ALONE: Effort = { ...EFFORT, plainLots: FULL_EFFORT.plainLots / 2 };
const PATIENCE = 300_000; // ms, for a machine that is busy with other tests

function expectShare(got: Share, bound: { atLeast?: number; atMost?: number }, what: string): void {
  expect(got.of, `${what}: cases`).toBeGreaterThan(0);
  if (bound.atLeast !== undefined)
    expect(rate(got), `${what}: ${shareText(got)}`).toBeGreaterThanOrEqual(bound.atLeast);
  if (bound.atMost !== undefined) expect(rate(got), `${what}: ${shareText(got)}`).toBeLessThanOrEqual(bound.atMost);
}

describe('lots read with careful hobby tools', () => {
  let judged: Judged[];
  const of = (name: SubsetName) => judged.filter((each) => each.subset.name === name);
  const withOhms = () => judged.filter((each) => hasOhms(each.subset));
  beforeAll(() => {
    const massAlone = (subset: Subset) => subset.name === 'mass only';
    judged = [
      ...plainLots(MASS_ALONE, 'A', SUBSETS.filter(massAlone)),
      ...plainLots(
        EFFORT,
        'A',
        SUBSETS.filter((subset) => !massAlone(subset)),
      ),
    ];
  }, PATIENCE);

  it('cover the true area in 94 to 100 % wherever the metal can be told', () => {
    for (const name of ['mass + ohms', 'mass + strands', 'all', 'ohms + strands', 'mass + ohms + eye'] as const) {
      expectShare(
        share(of(name), (each) => each.covered),
        { atLeast: 0.94 },
        `${name}, covered`,
      );
    }
  });

  it('accuse at most 0.5 % of honest cables', () => {
    const accused = share(honestOf(judged), (each) => each.accused);
    expectShare(accused, { atMost: 0.005 }, 'accused');
  });

  it('miss at most 1 % of cables short by 6 % where ohms were read, 2 % from mass and strands', () => {
    const missed = (some: readonly Judged[]) => share(some, (each) => each.missed);
    expectShare(missed(withOhms()), { atMost: 0.01 }, 'with ohms, missed');
    expectShare(missed(of('mass + strands')), { atMost: 0.02 }, 'mass + strands, missed');
  });

  it('tell from mass alone that copper is missing, in all but 1 %', () => {
    const missed = share(of('mass only'), (each) => each.copperMissed);
    expectShare(missed, { atMost: 0.01 }, 'copper missed from mass alone');
    const onArea = share(of('mass only'), (each) => each.short.includes('AWG by area'));
    expect(onArea.hits, 'area falls short from mass alone').toBe(0);
  });

  it('name the right metal in 99 % where ohms were read', () => {
    const right = share(withOhms(), (each) => each.metalRight);
    expectShare(right, { atLeast: 0.99 }, 'metal');
  });

  it('state areas as closely as the tools allow', () => {
    const halfWidth = (some: readonly Judged[]) => median(some.map((each) => each.halfWidth));
    expect(halfWidth([...of('mass + ohms'), ...of('all')]), 'with ohms').toBeLessThanOrEqual(0.023);
    const bare = of('mass + ohms + eye').filter((each) => each.cable.metal.name === 'bare');
    expect(halfWidth(bare), 'seen red through').toBeLessThanOrEqual(0.013);
    expect(halfWidth(of('mass + strands')), 'mass + strands').toBeLessThanOrEqual(0.036);
    // An interval that shrank to nothing would pass the lines above and fail here.
    expect(halfWidth(bare), 'seen red through').toBeGreaterThan(0.004);
  });
});

describe('lots in which one reading is wrong', { timeout: PATIENCE }, () => {
  const judgedFor = (name: string, prevalence: Prevalence) => {
    const complication = COMPLICATIONS.find((each) => each.name === name)!;
    return { complication, judged: complicatedLots(EFFORT, complication, prevalence) };
  };

  it('flag a strand count that is short by a seventh, and accuse no honest copper for it', () => {
    const { complication, judged } = judgedFor('strand count short by 1/7', 0.2);
    const all = judged.filter((each) => each.subset.name === 'all');
    expectShare(
      share(all, (each) => each.flagged),
      { atLeast: 0.6 },
      'flagged',
    );
    expectShare(
      share(all, (each) => named(each, complication.culprit!)),
      { atLeast: 0.8 },
      'strand count named',
    );
    expectShare(
      share(honestOf(judged), (each) => each.accused),
      { atMost: 0.01 },
      'accused',
    );
  });

  it('flag one specimen that weighs a tenth too much or too little', () => {
    const { judged } = judgedFor("one specimen's mass 10 % wrong", 0.2);
    expectShare(
      share(judged, (each) => each.flagged),
      { atLeast: 0.95 },
      'flagged',
    );
    expectShare(
      share(honestOf(judged), (each) => each.accused),
      { atMost: 0.01 },
      'accused',
    );
  });

  it('still cover clad aluminium with much copper', () => {
    const { judged } = judgedFor('clad aluminium with 20 to 30 % copper', 1);
    const ohms = judged.filter((each) => hasOhms(each.subset));
    expectShare(
      share(ohms, (each) => each.covered),
      { atLeast: 0.94 },
      'covered',
    );
  });
});
