/** A straight line through voltages and currents, computed independently in R: slope, intercept and their standard errors. */
import { describe, expect, it } from 'vitest';
import { fourWire } from '../../src/methods/current/fourWire.ts';
import { expectClose, expectDigits } from '../tolerance.ts';

const CURRENTS = [10, 20, 30, 40, 50];
const MILLIVOLTS = [1.021, 2.032, 3.047, 4.058, 5.073];

describe('four-wire regression', () => {
  it('gives slope, intercept and their errors', () => {
    const found = fourWire(CURRENTS.map((current, i) => ({ current, voltage: MILLIVOLTS[i] / 1000 })));
    expect(found.way).toBe('line');
    expectDigits(found.resistance, 0.1013e-3, 10);
    expectDigits(found.u!, 4e-5 * 1e-3, 8);
    expectDigits(found.emf!, 0.0072e-3, 9);
    expectDigits(found.emfU!, 0.00132664992e-3, 7);
    expect(found.dof).toBe(3);
  });

  it('forced through zero it would be 0.19 % too high: the thermal voltage', () => {
    const found = fourWire(CURRENTS.map((current, i) => ({ current, voltage: MILLIVOLTS[i] / 1000 })));
    const forced = 0.101496363636e-3; // computed independently
    expectClose(forced / found.resistance - 1, 0.0019, { absolute: 0.0001 });
  });
});
