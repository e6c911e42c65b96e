/**
 * A piece clamped level that droops under its own weight, forward and back. Tables and their sources are in
 * data/elastica-own-weight.csv and data/elastica-chord.csv; all computed independently.
 */
import { describe, expect, it } from 'vitest';
import { stiffnessFromDroop } from '../../src/methods/flex/droop.ts';
import { droopFromTip, droopShape } from '../../src/methods/flex/elastica.ts';
import { lambdaFromChord, lambdaFromDrop } from '../../src/methods/flex/lambdaFromDroop.ts';
import { integrateUntil } from '../../src/numerics/ode.ts';
import { expectClose } from '../tolerance.ts';
import { readTable } from './readTable.ts';

const DEGREE = Math.PI / 180;
const rowsOf = (table: Record<string, number[]>) =>
  Object.values(table)[0].map((_, i) => Object.fromEntries(Object.entries(table).map(([name, c]) => [name, c[i]])));

describe('droop under its own weight', () => {
  const rows = rowsOf(readTable('elastica-own-weight.csv'));

  it.each(rows)('λ = $lambda', (row) => {
    const shape = droopShape(row.lambda);
    expectClose(shape.tipAngle, row.tip_deg * DEGREE, {
      absolute: 1e-8,
      because: 'the table has 8 decimals of a degree',
    });
    expectClose(shape.drop, row.drop, { absolute: 1e-8 });
    expectClose(shape.reach, row.reach, { absolute: 1e-8 });
    expectClose(shape.chordAngle, row.chord_deg * DEGREE, { absolute: 1e-8 });
    expectClose(1 / Math.cbrt(row.lambda), row.c_over_l, { absolute: 1e-9 });
  });

  it('λ = 8 to twelve digits', () => {
    const shape = droopShape(8);
    expectClose(shape.drop, 0.64063071742189, { absolute: 1e-12, because: '25-digit Taylor integration' });
    expectClose(shape.reach, 0.72442473413814, { absolute: 1e-12 });
    expectClose(shape.tipAngle, 53.864996179545 * DEGREE, { absolute: 1e-12 });
    expectClose(shape.chordAngle, 41.487302559378 * DEGREE, { absolute: 1e-12 });
  });

  it.each(rows.filter((r) => r.lambda <= 20))('and back from the reading to λ = $lambda', (row) => {
    const exact = droopShape(row.lambda);
    expectClose(lambdaFromDrop(exact.drop).lambda, row.lambda, { relative: 1e-9 });
    expectClose(lambdaFromChord(exact.chordAngle).lambda, row.lambda, { relative: 1e-9 });
    expectClose(droopFromTip(Math.PI / 2 - exact.tipAngle).lambda, row.lambda, { relative: 1e-9 });
  });

  it('the same load taken for a point load, or λ left doubled, is seen', () => {
    expect(Math.abs(droopShape(16).drop - 0.64063071742189)).toBeGreaterThan(0.1);
  });

  it('tends to the beam of small deflection: y/L = λ/8', () => {
    expectClose(droopShape(0.1).drop / (0.1 / 8), 0.99987503, { absolute: 1e-8, because: 'computed independently' });
    expectClose(droopShape(1e-3).drop, 1e-3 / 8, { relative: 2e-8 });
    expectClose(lambdaFromDrop(1e-4).lambda, 8e-4, { relative: 1e-7 });
  });

  it('answers to the reading as simulated: s = d ln λ / d ln y', () => {
    // Rounded figures of the simulation that the advice on the overhang rests on; computed independently.
    const wanted = [
      [1, 1.02],
      [2, 1.1],
      [3, 1.21],
      [4, 1.37],
      [6, 1.76],
      [8, 2.25],
      [12, 3.45],
      [20, 6.35],
    ];
    for (const [lambda, s] of wanted)
      expectClose(lambdaFromDrop(droopShape(lambda).drop).s, s, { absolute: 0.011, because: `λ = ${lambda}` });
  });
});

describe('from the chord angle to the bending length', () => {
  const rows = rowsOf(readTable('elastica-chord.csv'));

  it.each(rows.filter((r) => r.chord_deg <= 65))('$chord_deg°', (row) => {
    const { lambda } = lambdaFromChord(row.chord_deg * DEGREE);
    expectClose(lambda, row.lambda, { relative: 2e-8, because: 'the table has 9 digits' });
    expectClose(1 / Math.cbrt(lambda), row.c_over_l, { absolute: 1e-9 });
    expectClose(droopShape(lambda).tipAngle / DEGREE, row.tip_deg, { absolute: 2e-7 });
  });

  it.each(rows)("Peirce's closed form at $chord_deg° is the table's, and not the exact curve", (row) => {
    const t = row.chord_deg * DEGREE;
    expectClose(Math.cbrt(Math.cos(t / 2) / (8 * Math.tan(t))), row.peirce, { absolute: 1e-9 });
    expect(row.peirce).toBeGreaterThan(row.c_over_l);
  });

  it('at 41.5° the bending length is half the overhang', () => {
    // ASTM D1388, option A: slope of 41.5°, c = overhang/2. From memory; the exact angle is 41.487°.
    const { lambda } = lambdaFromChord(41.5 * DEGREE);
    expectClose(1 / Math.cbrt(lambda), 0.5, { relative: 2e-4 });
    const found = stiffnessFromDroop({ weight: 4, overhang: 0.3, read: 'chordAngle', up: 41.5 * DEGREE, down: null });
    expect(found).toHaveProperty('lambda');
    expectClose((found as { bendingLength: number }).bendingLength, 0.15, { relative: 2e-4 });
  });
});

describe("a mast that falls by its own weight (Greenhill's column)", () => {
  it('w h³/EI = 7.8373', () => {
    // A. G. Greenhill, Proceedings of the Cambridge Philosophical Society 4 (1881) 65: 9/4 of the square of the first zero of
    // J₋₁⸝₃. Computed independently; from memory. θ″ = −u θ from the free end, until θ = 0.
    const end = integrateUntil(
      (u, y, d) => {
        d[0] = y[1];
        d[1] = -u * y[0];
      },
      [1, 0],
      0,
      5,
      (y) => -y[0],
      { tolerance: 1e-13 },
    );
    expectClose(end.x ** 3, 7.83734743894, { relative: 1e-10 });
    expectClose(end.x, 1.98635270743, { relative: 1e-11 });
  });
});
