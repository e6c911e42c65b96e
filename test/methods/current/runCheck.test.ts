import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FUSE_RATINGS, fuseFor, holdsPeak, longestOpening } from '../../../src/methods/current/runCheck/fuse.ts';
import { nominalCable, nominalSizes } from '../../../src/methods/current/runCheck/nominal.ts';
import { overloads, overloadTime } from '../../../src/methods/current/runCheck/overload.ts';
import { profileAnswer, profileFromText } from '../../../src/methods/current/runCheck/profile.ts';
import {
  exactly,
  type RunCable,
  type RunQuestion,
  usualCharging,
} from '../../../src/methods/current/runCheck/question.ts';
import { runCheck } from '../../../src/methods/current/runCheck/runCheck.ts';
import { steadyTemperature } from '../../../src/methods/current/thermal/steady.ts';
import { expectClose } from '../../tolerance.ts';

const KELVIN = 273.15;
const measured = (area: number, more: Partial<RunCable> = {}): RunCable => ({
  ...nominalCable('x', 'X', area * 1e-6, 80 + KELVIN),
  measured: true,
  ...more,
});

const QUESTION: RunQuestion = {
  supply: { resting: 12.6, charging: null, ohms: exactly(0.004), direct: true },
  load: { kind: 'amps', steady: 100, peak: null, efficiency: 1 },
  length: 5,
  back: { kind: 'same cable', length: 5 },
  joints: [{ name: 'lug', count: 4, ohms: 1e-4 }],
  surroundings: { ambient: 30 + KELVIN, bundle: 1, layer: null },
  allowedDrop: 0.06,
  measured: null,
};
const ask = (more: Partial<RunQuestion> = {}, cables: RunCable[] = [measured(35)]) =>
  runCheck({ ...QUESTION, ...more }, cables, []);
const first = (more: Partial<RunQuestion> = {}, cables?: RunCable[]) => ask(more, cables).answers[0];

describe('volts of a run', () => {
  it('are current times cable both ways, at its temperature, and joints', () => {
    const cable = measured(35);
    const a = first();
    const kelvin = steadyTemperature(cable.heated, 100, { ...QUESTION.surroundings, lossFactor: 1 })!.conductor;
    expectClose(a.resting.temperature.value, kelvin, { absolute: 0.05 });
    const ohms = 10 * cable.heated.resistance20 * (1 + 0.00393 * (kelvin - 293.15)) + 4e-4;
    expectClose(a.resting.lost.value, 100 * ohms, { relative: 1e-3 });
    expectClose(a.resting.atLoad.value, 12.6 - 100 * (ohms + 0.004), { relative: 1e-3 });
    expectClose(a.drop.value, (100 * ohms) / 12.6, { relative: 1e-3 });
    expectClose(a.resting.watts.value, 100 ** 2 * ohms, { relative: 1e-3 });
  });

  it('a load in watts draws more as its volts fall', () => {
    const load = { kind: 'watts', steady: 1000, peak: null, efficiency: 0.8 } as const;
    const a = first({ load });
    expectClose(a.resting.steady.value * a.resting.atLoad.value, 1000 / 0.8, { relative: 1e-6 });
    expect(a.resting.steady.value).toBeGreaterThan(1250 / 12.6);
    const longer = first({ load, length: 9, back: { kind: 'same cable', length: 9 } });
    expect(longer.resting.steady.value).toBeGreaterThan(a.resting.steady.value);
  });

  it('a load that cannot come through cannot be fed: no heat to judge, no fuse, no price', () => {
    const a = first({ load: { kind: 'watts', steady: 9000, peak: null, efficiency: 1 } }, [measured(6)]);
    expect(a.resting.fails).toBe('not enough volts');
    expect(a.outcomes.drop).toBe('falls short');
    expect(a.feeds).toBe('no');
    expect(a.outcomes.heat).toBeNull();
    expect(a.outcomes.all).toBe('falls short');
    expect(a.resting.hottest.value).toBeNaN();
    expect([a.parallel, a.fuseEach, a.fuse.rating, a.mass, a.cost]).toEqual([null, null, null, null, null]);
  });

  it('an unknown body leaves it open, a measured one settles it', () => {
    const load = { ...QUESTION.load, steady: 120 };
    const unknown = first({ load, back: { kind: 'body unknown', low: 0.0003, high: 0.005 } });
    expect(unknown.outcomes.drop).toBe('not settled');
    expect(unknown.drop.high).toBeGreaterThan(unknown.drop.low * 1.8);
    const known = first({ load, back: { kind: 'body measured', ohms: 0.001 } });
    expect(known.outcomes.drop).toBe('meets');
  });

  it('measured volts beat the list of joints and the body', () => {
    const cable = measured(35);
    const R = 5 * cable.heated.resistance20 * (1 + 0.00393 * 10);
    const q = {
      back: { kind: 'body unknown', low: 0.0003, high: 0.005 } as const,
      measured: { plus: 100 * (R + 0.0008), minus: 100 * 0.0021, current: 100, cable: 'x' },
    };
    const a = first(q, [cable]);
    const warm = 5 * cable.heated.resistance20 * (1 + 0.00393 * (a.resting.temperature.value - 293.15));
    expectClose(a.resting.lost.value, 100 * (warm + 0.0008 + 0.0021), { relative: 2e-3 });
    expect(a.drop.high - a.drop.low).toBeLessThan(0.006);
  });

  it('the supply while it charges is looked at too', () => {
    const a = first({ supply: { ...QUESTION.supply, charging: 14.2 } });
    expect(a.charging!.atLoad.value).toBeGreaterThan(a.resting.atLoad.value);
    expectClose(a.drop.value, a.resting.lost.value / 12.6, { relative: 1e-9 });
  });
});

describe('heat of a run', () => {
  it('a peak for part of the time heats by its square, and a short one only in part', () => {
    const load = { ...QUESTION.load, steady: 50, peak: { amount: 250, share: 0.1, seconds: 20 } };
    const a = first({ load });
    const heating = Math.sqrt(0.1 * 250 ** 2 + 0.9 * 50 ** 2);
    const kelvin = steadyTemperature(measured(35).heated, heating, {
      ...QUESTION.surroundings,
      lossFactor: 1,
    })!.conductor;
    expectClose(a.resting.temperature.value, kelvin, { absolute: 0.05 });
    expect(a.resting.hottest.value).toBeGreaterThan(kelvin);
    expect(a.resting.hottest.value).toBeLessThan(kelvin + 12);
    expectClose(a.resting.lostSteady.value, a.resting.lost.value / 5, { relative: 1e-9 });
  });

  it('meets, not settled and falls short follow the ends of the doubt', () => {
    const at = (rating: number) =>
      first({ allowedDrop: 0.5 }, [measured(25, { rating: rating + KELVIN })]).outcomes.heat;
    const a = first({ allowedDrop: 0.5 }, [measured(25)]);
    const [low, high] = [a.resting.hottest.low - KELVIN, a.resting.hottest.high - KELVIN];
    expect(high - low).toBeGreaterThan(3);
    expect([at(high + 0.1), at((low + high) / 2), at(low - 0.1)]).toEqual(['meets', 'not settled', 'falls short']);
    expectClose(a.margin.low, 80 - high, { absolute: 1e-6 });
  });

  it('a heating test narrows it', () => {
    const doubt = (u: number) => {
      const a = first({}, [measured(25, { loss: { factor: 1, u } })]);
      return a.carrying.high - a.carrying.low;
    };
    expect(doubt(0.04)).toBeLessThan(0.6 * doubt(0.1));
  });
});

describe('what it takes', () => {
  it('runs side by side, their mass and cost', () => {
    const thin = measured(16, { massPerMetre: 0.2, price: { perMetre: 4, currency: 'EUR' } });
    const a = first({}, [thin]);
    expect(a.outcomes.drop).toBe('falls short');
    expect(a.parallel).toBe(2);
    expectClose(a.mass!, 0.2 * 10 * 2, { relative: 1e-12 });
    expect(a.cost).toEqual({ amount: 80, currency: 'EUR' });
    // Each of the two has the fuse of its own half of the load; one by itself would have a larger one.
    expect(a.fuseEach!.rating!).toBeGreaterThan(50);
    expect(a.fuseEach!.rating!).toBeLessThan(100);
  });

  it('surroundings as hot as the rating leave nothing to advise', () => {
    const a = first({ surroundings: { ambient: 85 + KELVIN, bundle: 1, layer: null } });
    expect([a.tooHot, a.parallel, a.fuse.rating, a.mass]).toEqual([true, null, null, null]);
  });

  it('the least nominal size that does, and the measured ones that do', () => {
    const check = runCheck(QUESTION, [measured(16), measured(50, { id: 'y' })], nominalSizes('awg', 80 + KELVIN));
    expect(check.meets).toEqual(['y']);
    const size = check.answers.find((a) => a.cable.name === check.leastSize)!;
    expect(size.outcomes.all).toBe('meets');
    const thinner = check.answers.filter((a) => !a.cable.measured && a.cable.area < size.cable.area);
    expect(thinner.length).toBeGreaterThan(0);
    expect(thinner.every((a) => a.outcomes.all !== 'meets')).toBe(true);
  });

  it('curves rise with the length, measured ones with a strip', () => {
    const { curves } = runCheck(QUESTION, [measured(35)], nominalSizes('mm2', 80 + KELVIN).slice(2, 3));
    for (const { points, measured: own } of curves) {
      for (let i = 1; i < points.length; i++) expect(points[i].drop).toBeGreaterThan(points[i - 1].drop);
      expect(points.every((p) => (own ? p.dropHigh > p.dropLow : p.dropHigh === p.dropLow))).toBe(true);
    }
    const [own] = curves;
    expectClose(own.points[5].length, 5, { relative: 1e-12 });
    expectClose(own.points[5].drop, first().drop.value, { relative: 1e-3 });
  });

  it('more copper never loses more, and never heats more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 20, max: 150, noNaN: true }),
        (area, amps) => {
          const q = { load: { ...QUESTION.load, steady: amps } };
          const [a, b] = [first(q, [measured(area)]), first(q, [measured(area * 1.1)])];
          if (a.resting.fails) return;
          expect(b.drop.value).toBeLessThan(a.drop.value);
          expect(b.resting.hottest.value).toBeLessThan(a.resting.hottest.value);
        },
      ),
      { seed: 3, numRuns: 40 },
    );
  });
});

describe('the hottest', () => {
  it('is of the same supply as the margin, and has no far end where too little comes through there', () => {
    const q: RunQuestion = {
      ...QUESTION,
      supply: { resting: 12.6, charging: 14.2, ohms: { value: 0.005, low: 0.002, high: 0.008 }, direct: true },
      back: { kind: 'body unknown', low: 0.0003, high: 0.02 },
      load: { kind: 'watts', steady: 1800, peak: null, efficiency: 1 },
    };
    const [a] = runCheck(q, [measured(35)], []).answers;
    expect(a!.feeds).toBe('not settled');
    expect(a!.hottest.value).toBeCloseTo(a!.cable.rating - a!.margin.value, 9);
    expect(a!.hottest.low).toBeLessThanOrEqual(a!.hottest.value);
    expect(a!.hottest.high).toBeNaN();
    expect(a!.outcomes.heat).toBe('not settled');
  });
});

describe('heat where the far end of the doubts lets too little through', () => {
  const starved = (rating: number) =>
    first(
      {
        supply: { resting: 12, charging: null, ohms: { value: 0.005, low: 0.002, high: 0.008 }, direct: true },
        load: { kind: 'watts', steady: 2000, peak: null, efficiency: 0.9 },
        length: 4,
        back: { kind: 'same cable', length: 4 },
      },
      [measured(33, { rating: rating + KELVIN })],
    );

  it('falls short where all that is known lies above the rating, and is not settled where some lies below', () => {
    const a = starved(60);
    expect([a.feeds, a.resting.hottest.high]).toEqual(['not settled', Number.NaN]);
    expect(a.hottest.low).toBeGreaterThan(a.cable.rating);
    expect(a.outcomes).toEqual({ drop: 'falls short', heat: 'falls short', all: 'falls short' });
    const between = (a.hottest.low + a.hottest.value) / 2 - KELVIN;
    expect(starved(between).outcomes.heat).toBe('not settled');
    expect(starved(180).outcomes.heat).toBe('not settled');
  });
});

describe('an overload', () => {
  it('reaches the rating sooner the larger it is, and never below what the cable carries', () => {
    const q = QUESTION;
    const cable = measured(35);
    const { carrying } = first({}, [cable]);
    expect(overloadTime(q, cable, 0.97 * carrying.low)).toBeNull();
    expect(overloadTime(q, cable, 1.5 * carrying.low)!).toBeGreaterThan(overloadTime(q, cable, 2 * carrying.low)!);
  });

  it('is of every measured cable alike where one is stated, else of the load’s own peak where it is fed', () => {
    const thin = measured(10);
    const { answers } = runCheck(QUESTION, [measured(35), thin], []);
    const stated = overloads(QUESTION, answers, 300);
    expect(stated.map((o) => o.current)).toEqual([300, 300]);
    expect(stated[1]!.seconds!).toBeLessThan(stated[0]!.seconds!);
    expect(overloads(QUESTION, answers, 5).map((o) => o.seconds)).toEqual([null, null]);
    expect(overloads(QUESTION, answers, null).map((o) => o.current)).toEqual(answers.map((a) => a.resting.peak.high));
    const starved = { ...QUESTION, load: { ...QUESTION.load, kind: 'watts' as const, steady: 9000 } };
    const unfed = runCheck(starved, [thin], []).answers;
    expect(overloads(starved, unfed, null)).toEqual([]);
    expect(overloads(starved, unfed, 300)).toHaveLength(1);
    expect(() => overloads(QUESTION, answers, 0)).toThrow(RangeError);
  });
});

describe('fuses', () => {
  const need = { steady: 80, peak: 80, peakSeconds: 1e9, carrying: 140, farShort: 900, nearShort: 4000 };
  const cable = measured(25);

  it('the least rating above the load and below what the cable bears', () => {
    const found = fuseFor(need, cable);
    expect(found.rating).toBe(100);
    expect(found.fits).toEqual([100, 125]);
    expect(found.letThrough!.far).toBeLessThan(1);
    for (const r of found.fits) expect(FUSE_RATINGS).toContain(r);
  });

  it.each([
    ['the cable bears less', { carrying: 90 }, /bears less/],
    ['a short is not seen', { farShort: 150 }, /would not open/],
    ['the load is too large', { steady: 800, peak: 800 }, /above every rating/],
    ['the peak opens it', { peak: 600, peakSeconds: 10 }, /No fuse fits/],
  ] as const)('none fits where %s', (_why, more, words) => {
    const found = fuseFor({ ...need, ...more }, cable);
    expect(found.rating).toBeNull();
    expect(found.text).toMatch(words);
  });

  it('a thin cable is overheated before a large fuse opens', () => {
    const thin = measured(1.5);
    expect(
      fuseFor({ ...need, carrying: 1000, steady: 310, peak: 310, farShort: 700, nearShort: 700 }, thin).text,
    ).toMatch(/overheat/);
  });

  it('opening times fall with the current and are continuous', () => {
    expect(longestOpening(1)).toBe(Number.POSITIVE_INFINITY);
    expectClose(longestOpening(2), 5, { relative: 1e-9 });
    expectClose(longestOpening(6), 0.1, { relative: 1e-9 });
    expectClose(longestOpening(12) * 144, 0.1 * 36, { relative: 1e-9 });
    for (let m = 1.35; m < 20; m *= 1.05) expect(longestOpening(m * 1.05)).toBeLessThan(longestOpening(m));
    expect(holdsPeak(100, 105, 1e5)).toBe(true);
    expect(holdsPeak(100, 150, 10)).toBe(false);
    expect(holdsPeak(100, 190, 0.1)).toBe(true);
  });
});

describe('what is usual', () => {
  it.each([
    [12, 14.2],
    [12.6, 14.2],
    [13.2, 14.2],
    [6, 7.1],
    [24, 28.4],
    [25.6, 28.4],
    [48, 56.8],
  ])('%f V at rest are charged at %f V', (resting, charging) => {
    expect(usualCharging(resting)).toBe(charging);
  });
});

describe('what cannot be', () => {
  const cases: [string, Partial<RunQuestion>, RegExp][] = [
    ['more than 60 V', { supply: { ...QUESTION.supply, resting: 72 } }, /at most 60 V/],
    ['60 V passed while charging', { supply: { ...QUESTION.supply, resting: 48, charging: 64 } }, /at most 60 V/],
    ['charging below the volts at rest', { supply: { ...QUESTION.supply, charging: 12 } }, /lies below the 12.6 V/],
    ['a current of a slipped finger', { load: { ...QUESTION.load, steady: 40_000 } }, /10000 A/],
    ['watts of one', { load: { ...QUESTION.load, kind: 'watts', steady: 4e6 } }, /10000 A/],
    ['the mains', { supply: { ...QUESTION.supply, direct: false } }, /mains/],
    ['a negative length', { length: -3 }, /−3 m long/],
    ['a current of 0', { load: { ...QUESTION.load, steady: 0 } }, /load is 0/],
    [
      'a peak below the steady load',
      { load: { ...QUESTION.load, peak: { amount: 10, share: 0.1, seconds: 5 } } },
      /swapped/,
    ],
    ['an efficiency above 1', { load: { ...QUESTION.load, efficiency: 1.2 } }, /efficiency/],
    ['a drop of everything', { allowedDrop: 1 }, /100 % of the supply/],
    ['a way back of no length', { back: { kind: 'same cable', length: 0 } }, /way back/],
    [
      'a length of a slipped finger',
      { length: 4000, back: { kind: 'same cable', length: 4000 } },
      /^The run is 4000 m/,
    ],
    ['half a cable', { surroundings: { ambient: 300, bundle: 1.5, layer: null } }, /1\.5 cables/],
    [
      'a layer of nothing',
      { surroundings: { ambient: 300, bundle: 1, layer: { thickness: 0, conductivity: 0.05 } } },
      /0 mm thick/,
    ],
    ['a body turned round', { back: { kind: 'body unknown', low: 2, high: 1 } }, /2000 to 1000 mΩ/],
    ['volts at no current', { measured: { plus: 0.1, minus: 0.1, current: 0, cable: null } }, /0 A/],
    ['surroundings above', { surroundings: { ambient: 600, bundle: 1, layer: null } }, /surroundings/],
  ];
  it.each(cases)('%s is named', (_name, more, words) => {
    const check = ask(more);
    expect(check.answers).toEqual([]);
    expect(check.problems.join(' ')).toMatch(words);
    // Each with what was expected, or what to do about it.
    for (const problem of check.problems) expect(problem).toMatch(/expected|needed|nothing to check|swapped/);
  });

  it('surroundings are taken up to the ends that are named, and not beyond', () => {
    const at = (celsius: number) =>
      ask({ surroundings: { ambient: celsius + KELVIN, bundle: 1, layer: null } }).problems.join(' ');
    expect([at(200), at(-100)]).toEqual(['', '']);
    expect(at(201)).toBe('The surroundings are at 201 °C; expected is −100 to 200 °C.');
    expect(at(-101)).toContain('expected is −100 to 200 °C');
  });

  it('says what is wrong with a length once, and of the mains nothing else', () => {
    expect(ask({ length: -3, back: { kind: 'same cable', length: -3 } }).problems).toHaveLength(1);
    const mains = ask({ supply: { ...QUESTION.supply, resting: 230, charging: 262, direct: false } });
    expect(mains.problems).toHaveLength(1);
  });
});

describe('a load that changes', () => {
  it('is read from lines, each holding until the next', () => {
    expect(profileFromText('s, A\n0, 20\n30, 100\n40, 20\n')).toEqual([
      { amount: 20, seconds: 30 },
      { amount: 100, seconds: 10 },
      { amount: 20, seconds: 10 },
    ]);
    expect(profileFromText('12:00:00\t5\n12:01:00\t6')).toEqual([
      { amount: 5, seconds: 60 },
      { amount: 6, seconds: 60 },
    ]);
  });

  it.each([
    ['0 5\n10 six', /Line 2/],
    ['0 5\n10 6\n5 7', /backwards at line 3/],
    ['0 5\n10 -6', /not negative/],
    ['0 5', /two lines/],
  ])('%j is refused', (text, words) => {
    expect(() => profileFromText(text)).toThrow(words);
  });

  it('comes to a peak below the same current held for ever', () => {
    const holds = profileFromText('0 40\n600 200\n660 40\n1200 40');
    const a = profileAnswer(QUESTION, measured(35), holds);
    expect(a.peakAt).toBeGreaterThan(600);
    expect(a.peakAt).toBeLessThanOrEqual(665);
    const forEver = steadyTemperature(measured(35).heated, 200, { ...QUESTION.surroundings, lossFactor: 1 })!.conductor;
    expect(a.peak).toBeLessThan(forEver);
    expect(a.transient.imbalance).toBeLessThan(1e-6);
    expect(a.energy).toBeGreaterThan(0);
  });
});
