/** A bench for bending: tools as good as none, pieces that are weighed, droops as they would be read. */
import type { FlexCable } from '../../src/findings/shapes/flex.ts';
import { droopOfSet } from '../../src/methods/flex/droopWithSet.ts';
import { Bench } from './bench.ts';

export const G = 9.80665;
export const C = { temperature: '20.0', temperature_unit: 'C' };
export type Cells = Readonly<Record<string, string>>;

/** A bench whose rule and scale are as good as none, so that figures come out as put in. */
export function finely(): Bench {
  return new Bench()
    .tool('rule', 'steel rule', '0.0001', 'mm', { max_error: '0.001' })
    .tool('scale', 'pocket scale', '0.00001', 'g', { max_error: '0.0001' })
    .tool('gauge', 'force gauge', '0.0001', 'N', { max_error: '0.001' });
}

/** Cable x with its bend piece weighed: w in N/m. */
export function cableOf(b: Bench, id: string, w: number): Bench {
  return b
    .cable(id, '2 AWG', 'OFC')
    .piece(`${id}-b`, id, { kind: 'bend' })
    .read(`${id}-b`, 'specimen_length', '400.0000', 'mm', { instrument: 'rule' })
    .read(`${id}-b`, 'specimen_mass', ((w / G) * 0.4 * 1000).toFixed(5), 'g', { instrument: 'scale' });
}

/** Droop of a piece of stiffness EI and set q, both ways up. */
export function droop(
  b: Bench,
  id: string,
  w: number,
  EI: number,
  q = 0,
  overhang = 0.3,
  more: Cells = C,
  set = 'd1',
): Bench {
  const lambda = (w * overhang ** 3) / EI;
  b.read(`${id}-b`, 'overhang', (overhang * 1000).toFixed(4), 'mm', { instrument: 'rule', set, ...more });
  for (const [position, sign] of [
    ['up', 1],
    ['down', -1],
  ] as const)
    b.read(`${id}-b`, 'tip_drop', (droopOfSet(lambda, q, sign).drop * overhang * 1000).toFixed(4), 'mm', {
      instrument: 'rule',
      set,
      position,
      ...more,
    });
  return b;
}

export const flexOf = (b: Bench, id = 'x'): FlexCable => b.findings().flex!.cables.find((c) => c.cable === id)!;
