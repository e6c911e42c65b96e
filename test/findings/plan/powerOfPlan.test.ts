import { describe, expect, it } from 'vitest';
import { usualTool } from '../../../src/findings/plan/benchTools.ts';
import { foretoldTrial, trueScatterOfMean } from '../../../src/findings/plan/foretoldTrial.ts';
import { areaClaimed, powerOfPlan, timesIn100, type WorkToTry } from '../../../src/findings/plan/powerOfPlan.ts';
import { smallestPlan } from '../../../src/findings/plan/smallestPlan.ts';
import { rowsOfTrial } from '../../../src/findings/rows/rowsOfTrial.ts';
import { lnFigureIf } from '../../../src/methods/assay/figures.ts';
import { jointAssay } from '../../../src/methods/assay/joint.ts';
import { mixtureMean } from '../../../src/numerics/mixture.ts';
import { readSizeText, type SizeClaim } from '../../../src/units/sizeText.ts';
import { expectClose } from '../../tolerance.ts';

function size(text: string): SizeClaim {
  const read = readSizeText(text);
  if (!read.ok) throw new Error(`${text} is no size`);
  return read.value;
}

const rule = usualTool('steel rule');
const tape = usualTool('tape');
const pocket = usualTool('pocket scale');
const kitchen = usualTool('kitchen scale');
const meter = usualTool('four-wire meter', 1e-6);
const micrometer = usualTool('micrometer');
const NOTHING: WorkToTry = { mass: null, ohms: null, strands: null, eye: false };
const mass = { tool: pocket, length: rule, over: 0.3, pieces: 1, repeats: 1 };
const ohms = { tool: meter, over: 2.8, repeats: 1 };
const OPTIONS = { shortfall: 0.05, metal: 'either', draws: 300, seed: '0123456789abcdef' } as const;

describe('a foretold trial', () => {
  it('is read back by the assay as the cable that it was made of', () => {
    const area = 53.5e-6;
    const work = { mass, ohms, strands: { tool: micrometer, count: 1064, measured: 8 }, seen: 'red through' };
    const { cables, inputs } = rowsOfTrial(foretoldTrial(area, work));
    expect(cables[0]!.rows.map((r) => r.kind)).toEqual(['mass', 'resistance', 'strands']);
    const [assay] = jointAssay([cables[0]!.assay], inputs).cables;
    expectClose(Math.exp(mixtureMean(lnFigureIf(assay!, 'area', ['copper']))), area, {
      relative: 0.002,
      because: 'rounding to the displays',
    });
  });

  it('takes as many readings as are planned', () => {
    const trial = foretoldTrial(53.5e-6, { ...NOTHING, seen: null, mass: { ...mass, pieces: 2, repeats: 3 } });
    expect(trial.readings.filter((r) => r.quantity === 'conductor_mass')).toHaveLength(6);
  });

  it('refuses a length that is none', () => {
    expect(() => foretoldTrial(1e-5, { ...NOTHING, seen: null, ohms: { ...ohms, over: 0 } })).toThrow(RangeError);
  });
});

describe('the real scatter of a mean', () => {
  it('shrinks with repeats where the display dithers, and stays where it does not', () => {
    const once = trueScatterOfMean('resistance', 1e-3, 1e-6, 1);
    expectClose(trueScatterOfMean('resistance', 1e-3, 1e-6, 4), once / 2, { relative: 1e-9 });
    const weighed = trueScatterOfMean('conductor_mass', 0.147, 1e-3, 100);
    expectClose(weighed, Math.hypot(0.04e-3, 1e-3 / Math.sqrt(12)), { relative: 1e-9 });
  });
});

describe('the power of a plan', () => {
  const power = (work: WorkToTry, more = {}) => powerOfPlan(size('1/0 AWG'), work, { ...OPTIONS, ...more })!;

  it('counts the shortfall of an AWG size from its nominal area, of a mm² size from what its standard asks', () => {
    const awg = areaClaimed(size('1/0 AWG'))!;
    expectClose(awg.required / awg.area, 0.98, { relative: 1e-12 });
    const metric = areaClaimed(size('35 mm2'))!;
    expect(metric.area).toBeLessThan(35e-6);
    expectClose(metric.required / metric.area, 0.98, { relative: 1e-12 });
    const oversized = areaClaimed(size('1/0 AWG oversized'))!;
    expectClose(oversized.required, oversized.area, { relative: 1e-12 });
  });

  it('grows from scale alone to ohms, to a look at the strands, to a micrometer', () => {
    const rungs = [
      power({ ...NOTHING, mass }),
      power({ ...NOTHING, mass, ohms }),
      power({ ...NOTHING, mass, ohms, eye: true }),
      power({ mass, ohms, eye: true, strands: { tool: micrometer, count: 1064, measured: 8 } }),
    ].map((p) => p.short.fallsShort);
    for (let i = 1; i < rungs.length; i++) expect(rungs[i], rungs.join()).toBeGreaterThan(rungs[i - 1]!);
  });

  it('rises with the shortfall', () => {
    const shown = [0.02, 0.05, 0.08, 0.12].map((shortfall) => power({ ...NOTHING, mass, ohms }, { shortfall }));
    for (let i = 1; i < shown.length; i++)
      expect(shown[i]!.short.fallsShort).toBeGreaterThanOrEqual(shown[i - 1]!.short.fallsShort);
  });

  it('falls with a coarser scale on the same short piece', () => {
    const fine = power({ ...NOTHING, mass: { ...mass, over: 0.15 }, ohms });
    const coarse = power({ ...NOTHING, mass: { ...mass, over: 0.15, tool: kitchen }, ohms });
    expect(coarse.short.fallsShort).toBeLessThan(fine.short.fallsShort);
  });

  it('speaks plainly', () => {
    const { sentence, honest } = power({ ...NOTHING, mass, ohms });
    expect(sentence).toMatch(/^This plan shows a 5 % shortfall \d+ times in 100\. /);
    expect(honest.fallsShort).toBeLessThan(0.01);
  });

  it('is nothing when nothing is read', () => {
    expect(powerOfPlan(size('1/0 AWG'), NOTHING, OPTIONS)).toBeNull();
    expect(() => power({ ...NOTHING, mass }, { shortfall: 1 })).toThrow(RangeError);
  });

  it.each([
    [0.93, 600, '93 times in 100'],
    [0, 600, 'not once in 600 tries'],
    [1, 600, 'more than 99 times in 100'],
    [0.002, 1000, 'less than once in 100'],
    [0.014, 1000, '1 times in 100'],
  ])('%f of %i draws is %s', (share, draws, words) => {
    expect(timesIn100(share, draws)).toBe(words);
  });
});

describe('the smallest plan', () => {
  const NONE = { scale: null, rule: null, tape, caliper: null, micrometer: null, meter: null, thermometer: null };
  const ask = (tools: typeof NONE | Record<string, unknown>, more = {}) =>
    smallestPlan({
      ...OPTIONS,
      draws: 150,
      size: size('1/0 AWG'),
      wholeLength: 3,
      strands: null,
      cables: 6,
      tools: { ...NONE, ...tools },
      ...more,
    })!;

  it('is the first by minutes that shows enough', () => {
    const { plan, tried, sentence } = ask({ scale: pocket, rule, meter, micrometer });
    expect(plan).toBe(tried[tried.length - 1]);
    for (const other of tried.slice(0, -1)) {
      expect(other.shows).toBeLessThan(0.9);
      expect(other.minutes).toBeLessThanOrEqual(plan!.minutes);
    }
    expect(sentence).toMatch(/^Least work that shows a 5 % shortfall/);
  });

  it('asks for less work to show more', () => {
    const tools = { scale: pocket, rule, meter, micrometer };
    const large = ask(tools, { shortfall: 0.15 }).plan!;
    const small = ask(tools, { shortfall: 0.05 }).plan!;
    expect(large.minutes).toBeLessThan(small.minutes);
  });

  it('names the tool to borrow when a scale alone does not do', () => {
    const { plan, borrow, sentence } = ask({ scale: kitchen });
    expect(plan).toBeNull();
    expect(borrow!.tool).toBe('four-wire meter');
    expect(borrow!.plan.shows).toBeGreaterThanOrEqual(0.9);
    expect(sentence).toMatch(/no plan shows.*Borrow a four-wire meter/);
  });

  it('says so when nothing can be read at all', () => {
    const { plan, tried, sentence } = ask({});
    expect({ plan, tried }).toEqual({ plan: null, tried: [] });
    expect(sentence).toMatch(/nothing of the conductor can be read. Borrow a pocket scale and a four-wire meter/);
  });
});
