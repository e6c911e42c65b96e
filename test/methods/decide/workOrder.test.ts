import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutesOf, STEPS, USUAL_MINUTES } from '../../../src/methods/decide/workMinutes.ts';
import { type StepWish, workOrder } from '../../../src/methods/decide/workOrder.ts';
import { expectClose } from '../../tolerance.ts';

const WISHES: StepWish[] = [
  { step: 'weigh', specimens: ['a1', 'a2', 'a3'], repeats: 2 },
  { step: 'strands', specimens: ['a1', 'a2', 'a3'], repeats: 1 },
  { step: 'ohms', specimens: ['w1', 'w2'], repeats: 3 },
  { step: 'cut', specimens: ['a1', 'a2', 'a3'], repeats: 0 },
];
const BY_QUANTITY = { working: 'by quantity', seed: 'club', soakHours: 2 } as const;

describe('the order of work', () => {
  it('is the rule, in whatever order it is wished for', () => {
    const { steps } = workOrder(WISHES, BY_QUANTITY);
    expect(steps.map((s) => s.step)).toEqual(['ohms', 'cut', 'weigh', 'strands']);
    expect(workOrder([...WISHES].reverse(), BY_QUANTITY).tasks).toEqual(workOrder(WISHES, BY_QUANTITY).tasks);
  });

  it('goes over all pieces once in each block', () => {
    const [ohms] = workOrder(WISHES, BY_QUANTITY).steps;
    expect(ohms!.blocks).toHaveLength(3);
    for (const block of ohms!.blocks) expect([...block].sort()).toEqual(['w1', 'w2']);
  });

  it('orders the blocks differently', () => {
    const many = Array.from({ length: 8 }, (_, i) => `p${i}`);
    const [step] = workOrder([{ step: 'weigh', specimens: many, repeats: 3 }], BY_QUANTITY).steps;
    expect(new Set(step!.blocks.map((b) => b.join())).size).toBe(3);
  });

  it('by specimen finishes one piece after the other, once all are cut', () => {
    const { tasks } = workOrder(WISHES, { ...BY_QUANTITY, working: 'by specimen' });
    const steps = tasks.map((t) => t.step);
    expect(steps.lastIndexOf('cut')).toBeLessThan(steps.indexOf('weigh'));
    const pieces = tasks.slice(steps.lastIndexOf('cut') + 1).map((t) => t.specimen);
    const changes = pieces.filter((p, i) => i > 0 && p !== pieces[i - 1]).length;
    expect(changes).toBe(2);
  });

  it('adds up its minutes', () => {
    const { minutes, steps } = workOrder([{ step: 'weigh', specimens: ['a1', 'a2'], repeats: 3 }], BY_QUANTITY);
    const { setUp, piece, repeat } = USUAL_MINUTES.weigh;
    expectClose(minutes, setUp + 2 * (piece + 3 * repeat), { relative: 1e-12 });
    expect(steps[0]!.minutes).toBe(minutes);
    expect(minutesOf('ohms', 0, 5)).toBe(0);
  });

  it('does every task once, whatever is wished', () => {
    const wish = fc.record({
      step: fc.constantFrom(...STEPS),
      specimens: fc.uniqueArray(fc.string({ minLength: 1, maxLength: 4 }), { maxLength: 6 }),
      repeats: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(wish, { selector: (w) => w.step }),
        fc.string(),
        fc.constantFrom('by quantity' as const, 'by specimen' as const),
        (wishes, seed, working) => {
          const { tasks } = workOrder(wishes, { working, seed, soakHours: 0 });
          const wanted = wishes.flatMap((w) =>
            w.specimens.flatMap((s) => Array.from({ length: w.repeats }, (_, i) => `${w.step} ${s} ${i + 1}`)),
          );
          expect(tasks.map((t) => `${t.step} ${t.specimen} ${t.round}`).sort()).toEqual(wanted.sort());
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });
});
