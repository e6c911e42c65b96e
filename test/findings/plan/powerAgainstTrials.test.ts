/**
 * The foretold power beside what really comes of it: whole trials of one cable, typed as a bench would type them, folded and
 * assayed. Nothing is shared with the planning but the program that both ask.
 */
import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../../src/findings/findings.ts';
import { usualTool } from '../../../src/findings/plan/benchTools.ts';
import { powerOfPlan } from '../../../src/findings/plan/powerOfPlan.ts';
import { metalHypotheses } from '../../../src/methods/metal/hypotheses.ts';
import { SeededDraws } from '../../../src/numerics/random.ts';
import { fold } from '../../../src/trial/fold.ts';
import { awgArea } from '../../../src/units/gauge.ts';
import { readSizeText } from '../../../src/units/sizeText.ts';
import { expectClose } from '../../tolerance.ts';
import { entry } from '../../trial/entries.ts';
import { cable, DESCRIBED, TOOLS } from './trials.ts';

const LENGTH = 0.3;
const CONTACTS = 2.8;
const REPEATS = 3;
const TRIALS = 150;
const COPPER = metalHypotheses().find((m) => m.metal === 'copper')!;

const rounded = (value: number, step: number, decimals: number) => (Math.round(value / step) * step).toFixed(decimals);

/** Entries of one trial: a copper cable of that share of 1/0, read by tools that are off within their limits. */
function readings(share: number, draws: SeededDraws) {
  const within = (limit: number) => limit * (2 * draws.uniform() - 1);
  const area = awgArea(0) * share;
  const lay = Math.exp(Math.max(0, 0.034 + 0.018 * draws.normal()));
  const density = Math.exp(COPPER.lnDensity.mean + COPPER.lnDensity.sd * draws.normal());
  const resistivity = Math.exp(COPPER.lnResistivity.mean + COPPER.lnResistivity.sd * draws.normal());
  const scale = { zero: within(0.03), gain: within(0.001) };
  const rule = within(0.5);
  const meter = { zero: within(0.005), gain: within(0.01) };
  const warmer = within(1);
  const stray = (1 + 0.002 * draws.normal()) * (1 + within(0.0035));
  const contacts = CONTACTS + within(1e-3 + 1e-3 * CONTACTS);
  const grams = 1000 * area * lay * density * LENGTH * stray;
  const milliohms = ((1000 * resistivity * lay * contacts) / area) * (1 + COPPER.alpha * warmer);
  return Array.from({ length: REPEATS }, (_, i) => [
    entry('reading', {
      reading: `l${i}`,
      specimen: 'a1',
      quantity: 'conductor_length',
      value: rounded(1000 * LENGTH + rule + 0.2 * draws.normal(), 0.5, 1),
      unit: 'mm',
      instrument: 'rule',
    }),
    entry('reading', {
      reading: `m${i}`,
      specimen: 'a1',
      quantity: 'conductor_mass',
      value: rounded(grams * (1 + scale.gain) + scale.zero + 0.004 * draws.normal(), 0.01, 2),
      unit: 'g',
      instrument: 'scale',
    }),
    entry('reading', {
      reading: `r${i}`,
      specimen: 'w',
      quantity: 'resistance',
      value: rounded(milliohms * (1 + meter.gain) * (1 + 0.002 * draws.normal()) + meter.zero, 0.001, 3),
      unit: 'mohm',
      at_length: String(1000 * CONTACTS),
      temperature: '20.0',
      instrument: 'meter',
    }),
  ]).flat();
}

function sharesOfTrials(share: number, seed: string) {
  const draws = new SeededDraws(seed);
  const counts: Record<string, number> = { 'falls short': 0, meets: 0, 'not settled': 0 };
  for (let i = 0; i < TRIALS; i++) {
    const trial = fold([
      DESCRIBED,
      ...TOOLS,
      cable('harrow'),
      entry('specimen', { specimen: 'a1', cable: 'harrow', kind: 'apart', cut_length: '300' }),
      entry('specimen', { specimen: 'w', cable: 'harrow', kind: 'whole' }),
      entry('evidence', { cable: 'harrow', look: 'scraped_strand', seen: 'red through' }),
      ...readings(share, draws),
    ]);
    const claim = findingsOf(trial, { draws: 0 }).cables[0]!.claims.find((c) => c.reading === 'copper held')!;
    counts[claim.outcome!]! += 1;
  }
  return { fallsShort: counts['falls short']! / TRIALS, meets: counts.meets! / TRIALS };
}

describe('the power that a plan foretells', () => {
  const size = readSizeText('1/0 AWG');
  if (!size.ok) throw new Error('1/0 AWG is a size');
  const power = powerOfPlan(
    size.value,
    {
      mass: {
        tool: usualTool('pocket scale'),
        length: usualTool('steel rule'),
        over: LENGTH,
        pieces: 1,
        repeats: REPEATS,
      },
      ohms: { tool: usualTool('four-wire meter', 1e-6), over: CONTACTS, repeats: REPEATS },
      strands: null,
      eye: true,
    },
    { shortfall: 0.04, metal: 'copper', draws: 1000, seed: '0123456789abcdef' },
  )!;
  /** Three standard errors of the difference between a share of the trials and one of the draws. */
  const errors = (p: number) => 3 * Math.sqrt(p * (1 - p) * (1 / TRIALS + 1 / 1000)) + 0.01;

  it('is what trials of short cables show', () => {
    const { fallsShort } = sharesOfTrials(0.96, 'a1b2c3d4e5f60718');
    expect(power.short.fallsShort).toBeGreaterThan(0.3);
    expect(power.short.fallsShort).toBeLessThan(0.97);
    expectClose(fallsShort, power.short.fallsShort, { absolute: errors(power.short.fallsShort) });
  });

  it('is what trials of honest cables show', () => {
    const { fallsShort, meets } = sharesOfTrials(1, '18f7e6d5c4b3a291');
    expectClose(meets, power.honest.meets, { absolute: errors(power.honest.meets) });
    expect(fallsShort).toBeLessThanOrEqual(0.02);
  });
});
