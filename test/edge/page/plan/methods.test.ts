import { describe, expect, it } from 'vitest';
import { everything, leastWork, methodsText, wishesIn, worksSo } from '../../../../src/edge/page/store/plan/methods.ts';
import { planSettings } from '../../../../src/findings/plan/settings.ts';
import { planOf } from '../../../../src/findings/plan.ts';
import { cable, trialOf } from '../../../findings/plan/trials.ts';

describe('the methods in words', () => {
  it('are in the order of the work, wishes last', () => {
    expect(methodsText(['weigh', 'ohms'], ['amps'])).toBe('ohms, weigh, amps');
    expect(wishesIn('ohms, Amps; weigh')).toEqual(['amps']);
    expect(wishesIn('ohms')).toEqual([]);
  });
});

describe('how much work', () => {
  const trial = trialOf(cable('harrow'), cable('sedge'));
  const { powers, settings } = planOf(trial, { draws: 200, withSmallest: true });
  const least = leastWork(
    powers.map(({ smallest }) => smallest),
    [],
  );

  it('least: asks for the plan that was found, and no more', () => {
    expect(least).not.toBeNull();
    const then = planSettings({ ...least });
    const plan = powers[0]!.smallest!.plan!;
    expect(then.methods.has('ohms')).toBe(plan.work.ohms !== null);
    expect(then.methods.has('bend')).toBe(false);
    expect(then.repeats).toBe(plan.readings.repeats);
    expect(then.specimensEach).toBe(plan.readings.pieces);
  });

  it('knows its own way of working again, and only that', () => {
    expect(worksSo({}, settings, least!)).toBe(false);
    expect(worksSo({ ...least }, planSettings({ ...least }), least!)).toBe(true);
    const all = everything(['amps']);
    expect(worksSo({ ...all }, planSettings({ ...all }), all)).toBe(true);
    expect(worksSo({ ...all }, planSettings({ ...all }), least!)).toBe(false);
    expect(worksSo({ ...all, repeats: '5' }, planSettings({ ...all, repeats: '5' }), all)).toBe(false);
  });

  it('is not known before anything was tried', () => {
    expect(leastWork([null], [])).toBeNull();
  });
});
