import { describe, expect, it } from 'vitest';
import { planOf } from '../../../src/findings/plan.ts';
import { cable, setting, trialOf } from './trials.ts';

const planned = (methods: string) =>
  planOf(trialOf(cable('harrow'), cable('sedge'), setting('methods', methods)), { draws: 0 });
const sum = (list: readonly { minutes: number }[]) => list.reduce((all, { minutes }) => all + minutes, 0);

describe('the acts of bending in a plan', () => {
  it.each([
    { methods: 'weigh', acts: [] },
    { methods: 'weigh, bend', acts: ['cut', 'droop'] },
    { methods: 'weigh, push', acts: ['cut', 'push'] },
    { methods: 'weigh, bend, push, coil, spring, judge', acts: ['cut', 'droop', 'push', 'judge', 'coil', 'spring'] },
  ])('are counted one by one: $methods', ({ methods, acts }) => {
    const plan = planned(methods);
    const bend = plan.steps.find(({ step }) => step === 'bend');
    const parts = bend?.parts ?? [];
    expect(parts.map(({ act }) => act)).toEqual(acts);
    for (const { minutes } of parts) expect(minutes).toBeGreaterThan(0);
    expect(bend?.minutes ?? 0).toBeCloseTo(sum(parts), 9);
    expect(plan.minutes).toBeCloseTo(sum(plan.steps), 9);
  });

  it('take three answers of half a minute for a judged pair, set-up aside', () => {
    expect(planned('weigh, bend, judge').minutes - planned('weigh, bend').minutes).toBeCloseTo(5 + 3 * 0.5, 9);
  });
});
