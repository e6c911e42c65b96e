import { describe, expect, it } from 'vitest';
import { type CableAssay, jointAssay } from '../../../src/methods/assay/joint.ts';
import { posterior } from '../../../src/methods/assay/posterior.ts';
import { errorsThatMakeCopper, errorsThatReach, type NeededError } from '../../../src/methods/assay/toolError.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, EVERYTHING, MASS_AND_OHMS, tools } from './bench.ts';

const ALPHA = 0.00393;

/** Readings with the error of one tool taken out of them, as if it were known. */
function corrected(assay: CableAssay, e: NeededError): Float64Array {
  return Float64Array.from(assay.cable.rows, (row, i) => {
    let y = assay.components[0].system.y[i];
    for (const s of row.shared) if (s.input === e.input) y -= s.power * Math.log(1 + s.slope * e.needed);
    if (row.temperature?.input === e.input)
      y -= Math.log(1 + (ALPHA / (1 + ALPHA * row.temperature.above20)) * e.needed);
    return y;
  });
}

/** A cable whose most believed supposition stands first. */
function assayOf(truth: ReturnType<typeof copperOf>, readings = EVERYTHING) {
  const joint = jointAssay([cableOf('x', truth, readings)], tools());
  const [assay] = joint.cables;
  assay.components.sort((a, b) => b.weight - a.weight);
  return { joint, assay };
}

describe('how wrong a tool would have to be', () => {
  it.each([
    { found: 30, required: 32.96e-6 },
    { found: 35, required: 32.96e-6 },
  ])('$found mm²: with the error taken out, the area stands at what is asked for', ({ found, required }) => {
    const { joint, assay } = assayOf(copperOf(found));
    const errors = errorsThatReach(joint, assay, required);
    expect(errors.map((e) => e.input)).toEqual(expect.arrayContaining(['scale', 'rule', 'meter gain', 'meter zero']));
    for (const e of errors) {
      const { system } = assay.components[0];
      const again = posterior({ ...system, y: corrected(assay, e) }, assay.others);
      expectClose(again.x[0], Math.log(required), { absolute: 1e-7, because: e.input });
    }
  });

  it('points the right way: a short cable needs tools that read too little metal', () => {
    const { joint, assay } = assayOf(copperOf(30));
    const needed = new Map(errorsThatReach(joint, assay, 32.96e-6).map((e) => [e.input, e.needed]));
    expect(needed.get('scale')!).toBeLessThan(0);
    expect(needed.get('rule')!).toBeGreaterThan(0);
    expect(needed.get('meter gain')!).toBeGreaterThan(0);
  });

  it('names the least unlikely tool first, and no constant of nature', () => {
    const { joint, assay } = assayOf(copperOf(30));
    const errors = errorsThatReach(joint, assay, 32.96e-6);
    const times = errors.map((e) => Math.abs(e.needed) / e.limit);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(times[0]).toBeGreaterThan(1);
    expect(errors.every((e) => !/copper|usual/i.test(e.input))).toBe(true);
  });

  it('is nothing for a tool that could not do it', () => {
    const { joint, assay } = assayOf(copperOf(3));
    expect(errorsThatReach(joint, assay, 60e-6).map((e) => e.input)).not.toContain('thermometer');
  });

  it('lifts mass times ohms of clad metal to copper when taken out', () => {
    const { joint, assay } = assayOf(copperOf(33, { density: 3480, resistivity: 2.7e-8 }), MASS_AND_OHMS);
    const product = 0.1517e-3;
    const errors = errorsThatMakeCopper(joint, assay, product);
    expect(errors.length).toBeGreaterThan(1);
    const { alpha } = assay.components[0].supposition.metal;
    for (const e of errors.filter((each) => each.input !== 'thermometer')) {
      const y = corrected(assay, e);
      expectClose(Math.exp(y[0] + y[1]), product, { relative: 1e-6, because: `${e.input}, alpha ${alpha}` });
      expect(Math.abs(e.needed) / e.limit, `${e.input} is far out of its limit`).toBeGreaterThan(10);
    }
  });

  it('cannot be said of the metal without both mass and ohms', () => {
    const { joint, assay } = assayOf(copperOf(33), { weighed: [0.3] });
    expect(errorsThatMakeCopper(joint, assay, 0.15e-3)).toEqual([]);
  });
});
