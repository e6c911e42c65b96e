import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FourWirePoint, fourWire, plausibleResistance } from '../../../src/methods/current/fourWire.ts';
import { expectClose } from '../../tolerance.ts';

const points = (...pairs: [number, number][]): FourWirePoint[] =>
  pairs.map(([current, voltage]) => ({ current, voltage }));

/** V = e + R I (1 + c I²) at currents both ways round. */
function taken(R: number, e: number, c: number, currents: readonly number[]): FourWirePoint[] {
  return currents
    .flatMap((i) => [i, -i])
    .map((current) => ({ current, voltage: e + R * current * (1 + c * current ** 2) }));
}

describe('a four-wire resistance', () => {
  it('leaves a thermal voltage in the intercept', () => {
    const found = fourWire(taken(6e-4, 12e-6, 0, [10, 20, 40]));
    expectClose(found.resistance, 6e-4, { relative: 1e-12 });
    expectClose(found.emf!, 12e-6, { relative: 1e-9 });
    expect(found.way).toBe('line');
    expect(found.warmed).toBeNull();
    // Through the origin the one-way readings would be off by e/I.
    expect(Math.abs((12e-6 + 6e-4 * 10) / 10 / 6e-4 - 1)).toBeGreaterThan(1e-3);
  });

  it('two polarities cancel it exactly, one level keeps it', () => {
    const both = fourWire(points([50, 0.030012], [-50, -0.029988]));
    expectClose(both.resistance, 6e-4, { relative: 1e-12 });
    expectClose(both.emf!, 12e-6, { relative: 1e-6 });
    expect(both).toMatchObject({ way: 'two polarities', u: null });
    const one = fourWire(points([50, 0.030012]));
    expect(one).toMatchObject({ way: 'one level', emf: null });
    expectClose(one.resistance, 6.0024e-4, { relative: 1e-12 });
  });

  it('sees the test warm the wire, and gives the resistance at no current', () => {
    const found = fourWire(taken(6e-4, 0, 4e-6, [10, 25, 40, 55]));
    expect(found.way).toBe('line with heating');
    expectClose(found.resistance, 6e-4, { relative: 1e-9 });
    expectClose(found.warmed!, 4e-6 * 55 ** 2, { relative: 1e-6 });
  });

  it('takes no bend for heating that scatter explains', () => {
    const noise = [3, -2, 1, -3, 2, -1, 3, -2].map((x) => x * 1e-6);
    const found = fourWire(
      taken(6e-4, 0, 0, [10, 25, 40, 55]).map((p, i) => ({ ...p, voltage: p.voltage + noise[i] })),
    );
    expect(found.warmed).toBeNull();
    expect(found.way).toBe('line');
  });

  const impossible: [string, FourWirePoint[], RegExp][] = [
    ['no points', [], /at least one/],
    ['a current of 0', points([0, 0.001]), /0 A/],
    ['a voltage that falls', points([10, -0.005], [20, -0.01], [30, -0.015]), /change places|turned round/],
    ['a voltage that is none', points([10, Number.NaN]), /numbers/],
  ];
  it.each(impossible)('refuses %s by name', (_what, list, words) => {
    expect(() => fourWire(list)).toThrow(words);
  });

  it('scales with the voltage and against the current', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 1e-2, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: -1e-4, max: 1e-4, noNaN: true }),
        (R, k, e) => {
          const base = taken(R, e, 0, [5, 10, 20]);
          const scaled = base.map((p) => ({ current: p.current / k, voltage: p.voltage * k }));
          expectClose(fourWire(scaled).resistance, fourWire(base).resistance * k * k, { relative: 1e-9 });
        },
      ),
      { seed: 41, numRuns: 60 },
    );
  });
});

describe('whether a resistance can belong to the size', () => {
  const area = 33.6e-6;
  it.each([
    [0.53e-3, 'plausible'], // copper
    [0.82e-3, 'plausible'], // clad aluminium
    [0.66e-3, 'plausible'], // copper that is a fifth short
    [2.5e-3, 'too high'], // two wires
    [0.3e-3, 'too low'], // half the current went elsewhere
  ] as const)('%f Ω/m is %s', (perMetre, wanted) => {
    expect(plausibleResistance(perMetre, area)).toBe(wanted);
  });
});
