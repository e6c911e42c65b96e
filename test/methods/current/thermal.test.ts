import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conductorMetal, USUAL_JACKET } from '../../../src/methods/current/materials.ts';
import { adiabaticLimit } from '../../../src/methods/current/thermal/adiabatic.ts';
import { calibrateLoss } from '../../../src/methods/current/thermal/calibrate.ts';
import { type HeatedCable, inOpenAir } from '../../../src/methods/current/thermal/run.ts';
import { carryingCurrent, steadyTemperature } from '../../../src/methods/current/thermal/steady.ts';
import { timeToTemperature, transient } from '../../../src/methods/current/thermal/transient.ts';
import { expectClose } from '../../tolerance.ts';

const CABLE: HeatedCable = {
  metal: conductorMetal('copper'),
  resistance20: 0.53e-3,
  metalVolume: 33.6e-6 * 1.035,
  bundleDiameter: 8.4e-3,
  outerDiameter: 12.3e-3,
  jacket: USUAL_JACKET,
};
const AIR = inOpenAir(303.15);
const WAYS = [
  ['by itself', AIR],
  ['seven together', { ...AIR, bundle: 7 }],
  ['under carpet', { ...AIR, layer: { thickness: 8e-3, conductivity: 0.05 } }],
  ['three under carpet', { ...AIR, bundle: 3, layer: { thickness: 8e-3, conductivity: 0.05 } }],
] as const;

describe('the steady temperature', () => {
  it.each(WAYS)('%s: what is made is given off, to a millionth', (_name, around) => {
    for (const current of [20, 60, 110, 150]) {
      const found = steadyTemperature(CABLE, current, around)!;
      const made = around.bundle * current ** 2 * found.resistance;
      expectClose(found.heat, made, { relative: 1e-6 });
      expect(found.conductor).toBeGreaterThan(found.surface);
    }
  });

  it.each(WAYS)('%s: carrying current and temperature are each other’s inverse', (_name, around) => {
    for (const rating of [333.15, 348.15, 363.15]) {
      const { current } = carryingCurrent(CABLE, rating, around);
      expectClose(steadyTemperature(CABLE, current, around)!.conductor, rating, { absolute: 1e-5, because: 'K' });
    }
  });

  it('is that of the surroundings without current, and none where the metal would melt', () => {
    expect(steadyTemperature(CABLE, 0, AIR)?.conductor).toBe(303.15);
    expect(steadyTemperature(CABLE, 3000, AIR)).toBeNull();
    expect(carryingCurrent(CABLE, 300, AIR).current).toBe(0);
  });

  it('rises with current, bundle, layer and surroundings, and falls with area', () => {
    const at = (cable: HeatedCable, current: number, around: typeof AIR) =>
      steadyTemperature(cable, current, around)!.conductor;
    fc.assert(
      fc.property(fc.double({ min: 10, max: 150, noNaN: true }), fc.integer({ min: 1, max: 9 }), (current, bundle) => {
        const around = { ...AIR, bundle };
        const here = at(CABLE, current, around);
        expect(at(CABLE, current * 1.05, around)).toBeGreaterThan(here);
        expect(at(CABLE, current, { ...around, bundle: bundle + 1 })).toBeGreaterThan(here);
        expect(at(CABLE, current, { ...around, ambient: 308.15 })).toBeGreaterThan(here);
        expect(at(CABLE, current, { ...around, layer: { thickness: 6e-3, conductivity: 0.05 } })).toBeGreaterThan(here);
        expect(at({ ...CABLE, resistance20: CABLE.resistance20 * 0.9 }, current, around)).toBeLessThan(here);
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  const impossible: [string, () => unknown, RegExp][] = [
    ['no resistance', () => steadyTemperature({ ...CABLE, resistance20: 0 }, 10, AIR), /resistance/],
    ['a jacket inside', () => steadyTemperature({ ...CABLE, outerDiameter: 5e-3 }, 10, AIR), /outside/],
    ['a bundle of none', () => steadyTemperature(CABLE, 10, { ...AIR, bundle: 0 }), /bundle/],
    ['a rating above melting', () => carryingCurrent(CABLE, 1400, AIR), /melts/],
    ['a current that is none', () => steadyTemperature(CABLE, Number.NaN, AIR), /current/],
  ];
  it.each(impossible)('refuses %s by name', (_name, run, words) => {
    expect(run).toThrow(words);
  });
});

describe('heat that changes with time', () => {
  it.each(WAYS.slice(0, 1).concat(WAYS.slice(2, 3)))('%s: ends where the steady solution lies', (_name, around) => {
    const steady = steadyTemperature(CABLE, 90, around)!;
    const found = transient(CABLE, [{ current: 90, seconds: 40 * 3600 }], around);
    const [end] = found.points.slice(-1);
    expectClose(end.conductor - 303.15, steady.conductor - 303.15, { relative: 1e-5 });
    expectClose(end.surface - 303.15, steady.surface - 303.15, { relative: 1e-5 });
  });

  it('a bundle ends a little below the steady solution, which takes every cable to be as hot as the hottest', () => {
    const around = { ...AIR, bundle: 7 };
    const steady = steadyTemperature(CABLE, 90, around)!.conductor;
    const end = transient(CABLE, [{ current: 90, seconds: 40 * 3600 }], around).peak;
    expect(end).toBeLessThanOrEqual(steady);
    expect(steady - end).toBeLessThan(0.03 * (steady - 303.15));
  });

  it.each(WAYS)('%s: the energy balance closes', (_name, around) => {
    const holds = [
      { current: 140, seconds: 600 },
      { current: 0, seconds: 900 },
      { current: 60, seconds: 1200 },
    ];
    const found = transient(CABLE, holds, around);
    expect(found.imbalance).toBeLessThan(1e-6);
    expect(found.made).toBeGreaterThan(1000);
    expect(found.peakAt).toBeLessThanOrEqual(605);
  });

  it('halving the steps of a hold changes nothing that is shown', () => {
    const whole = transient(CABLE, [{ current: 140, seconds: 100 }], AIR).peak;
    const halves = transient(
      CABLE,
      [
        { current: 140, seconds: 50 },
        { current: 140, seconds: 50 },
      ],
      AIR,
    ).peak;
    expectClose(whole - 303.15, halves - 303.15, { relative: 2e-4 });
  });

  it('time to the rating: shorter for more current, none where it is not reached', () => {
    const at = (current: number) => timeToTemperature(CABLE, current, 343.15, AIR);
    expect(at(100)).toBeNull();
    expect(at(300)!).toBeLessThan(at(220)!);
    // Without loss: C·ΔT/(I²R); with it, longer.
    const least = (CABLE.metalVolume * CABLE.metal.heatCapacity * 40) / (600 ** 2 * CABLE.resistance20 * 1.1);
    expect(at(600)!).toBeGreaterThan(least * 0.95);
    expect(at(600)!).toBeLessThan(least * 1.9);
    expect(timeToTemperature(CABLE, 300, 343.15, AIR, { start: 350 })).toBe(0);
  });

  it('ends where the metal would melt', () => {
    const found = transient(CABLE, [{ current: 4000, seconds: 3600 }], AIR);
    expect(found.held_together).toBe(false);
  });

  it('refuses a hold without time and a profile without end', () => {
    expect(() => transient(CABLE, [{ current: 10, seconds: 0 }], AIR)).toThrow(/hold 1/);
    expect(() => transient(CABLE, [{ current: 10, seconds: 1e9 }], AIR)).toThrow(/steps/);
  });
});

describe('a heating test', () => {
  it('gives back the loss that it was made with', () => {
    for (const lossFactor of [0.7, 1, 1.4]) {
      const rise = steadyTemperature(CABLE, 150, { ...AIR, lossFactor })!.conductor - AIR.ambient;
      const found = calibrateLoss(CABLE, { current: 150, rise, u: 0.5 }, AIR);
      expectClose(found.lossFactor, lossFactor, { relative: 1e-6 });
      expect(found.u).toBeGreaterThan(0.5 / rise);
      expect(found.u).toBeLessThan((2 * 0.5) / rise);
    }
  });

  it('that does not belong to the cable is refused', () => {
    expect(() => calibrateLoss(CABLE, { current: 150, rise: 800, u: 1 }, AIR)).toThrow(/does not belong/);
  });
});

describe('the adiabatic limit', () => {
  it('refuses an end that is no warmer, and one above melting', () => {
    expect(() => adiabaticLimit(CABLE.metal, 1e-5, 343, 343)).toThrow(/warms/);
    expect(() => adiabaticLimit(CABLE.metal, 1e-5, 343, 1500)).toThrow(/melts/);
  });
});
