import { signal } from '@preact/signals';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const { asked } = vi.hoisted(() => ({ asked: [] as (number | 'auto')[] }));

vi.mock('../../../src/edge/page/worker/bench.ts', () => ({
  Stopped: class Stopped extends Error {},
  Bench: class Bench {
    async ask(_kind: string, { draws }: { draws: number | 'auto' }) {
      asked.push(draws);
      return { findings: { title: 'a trial' }, place: '', readings: [] };
    }
    stop() {}
  },
}));
vi.mock('../../../src/edge/page/store/journal/journal.ts', async () => {
  const journal = [{ id: '1' }];
  return {
    held: signal({ trial: 'a', outbox: { journal }, link: 'with the bench', sentence: '', asked: true }),
    folded: signal(null),
    openJournal: async () => {},
  };
});

// Other test files of the same worker have read the true modules, or will.
vi.resetModules();
afterAll(() => {
  vi.doUnmock('../../../src/edge/page/worker/bench.ts');
  vi.doUnmock('../../../src/edge/page/store/journal/journal.ts');
  vi.resetModules();
});
const { closeTrial, followTrial } = await import('../../../src/edge/page/store/assay.ts');

/** ms: longer than the rest before the draws. */
const A_WHILE = 5000;

describe('the random draws of a trial that is looked at', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    asked.length = 0;
  });
  afterEach(() => {
    closeTrial();
    vi.useRealTimers();
  });

  it('begin once somebody has settled', async () => {
    const leave = followTrial('a');
    await vi.advanceTimersByTimeAsync(1000);
    expect(asked).toEqual([0]);
    await vi.advanceTimersByTimeAsync(A_WHILE);
    expect(asked).toEqual([0, 'auto']);
    leave();
  });

  it('do not begin for whoever has left, and go on once somebody is back', async () => {
    followTrial('a')();
    await vi.advanceTimersByTimeAsync(A_WHILE);
    expect(asked).toEqual([0]);
    const leave = followTrial('a');
    await vi.advanceTimersByTimeAsync(A_WHILE);
    expect(asked).toEqual([0, 'auto']);
    leave();
  });

  it('are drawn once for whoever goes from one place of the trial to another', async () => {
    followTrial('a')();
    const leave = followTrial('a');
    await vi.advanceTimersByTimeAsync(A_WHILE);
    expect(asked).toEqual([0, 'auto']);
    leave();
  });
});
