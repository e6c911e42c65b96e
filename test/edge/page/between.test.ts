import { describe, expect, it } from 'vitest';
import { between } from '../../../src/edge/page/places/inside/between.ts';
import { sixCables } from '../../fixtures/findings.ts';

describe('between', () => {
  it('finds a pair either way round, with the sign turned', () => {
    const forth = between(sixCables, 'brackenfell', 'nine-elms-cord');
    const back = between(sixCables, 'nine-elms-cord', 'brackenfell');
    expect(forth?.difference.value).toBeCloseTo(0.8, 9);
    expect(back?.difference.value).toBeCloseTo(-0.8, 9);
    expect(back?.size.value).toBeCloseTo(0.8, 9);
    expect(back?.difference.interval[0]).toBeCloseTo(-(forth?.difference.interval[1] ?? 0), 9);
    expect(forth?.parted).toBe(true);
  });

  it('says by how much shared tools sharpen the difference', () => {
    const pair = sixCables.comparisons[0]!;
    const per = Math.round(100 * (1 - pair.difference.u / pair.u_if_independent));
    expect(between(sixCables, pair.a, pair.b)?.sharper).toContain(`${per} % smaller`);
  });

  it('does not part two cables whose interval holds nought', () => {
    const close = {
      ...sixCables.comparisons[0]!,
      difference: { ...sixCables.comparisons[0]!.difference, interval: [-0.1, 0.4] as [number, number] },
    };
    expect(between({ ...sixCables, comparisons: [close] }, close.a, close.b)?.parted).toBe(false);
  });

  it('knows nothing of a pair that was never compared', () => {
    expect(between(sixCables, 'quill', 'saltmarsh')).toBeNull();
  });
});
