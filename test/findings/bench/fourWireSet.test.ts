import { describe, expect, it } from 'vitest';
import { FOUR_WIRE_PAIRS, fourWirePair, fourWirePartner } from '../../../src/findings/bench/fourWireSet.ts';
import { suggestedTool, wantedGroups } from '../../../src/findings/bench/wantedReadings.ts';
import { benchTools } from '../../../src/findings/plan/benchTools.ts';
import { planSettings } from '../../../src/findings/plan/settings.ts';
import type { Reading, Trial } from '../../../src/trial/trial.ts';

const read = (quantity: string, set: string, standing: Reading['standing'] = 'counted') =>
  ({ specimen: 'a-1', quantity, set, standing }) as Reading;
const trial = (...readings: Reading[]) => ({ readings }) as Pick<Trial, 'readings'>;

describe('volts and amps at the bench', () => {
  it('go pair by pair, each current as clamped and turned round, the amps beside their volts', () => {
    const done: Reading[] = [];
    const sets: string[] = [];
    let quantity: 'test_voltage' | 'test_current' | null = 'test_voltage';
    while (quantity !== null) {
      const pair = fourWirePair(trial(...done), 'a-1', quantity);
      done.push(read(quantity, pair.set));
      sets.push(`${quantity} ${pair.current}${pair.reversed ? ' reversed' : ''}`);
      quantity = fourWirePartner(pair, quantity);
    }
    expect(done).toHaveLength(2 * FOUR_WIRE_PAIRS);
    expect(sets.slice(0, 4)).toEqual([
      'test_voltage 1',
      'test_current 1',
      'test_voltage 1 reversed',
      'test_current 1 reversed',
    ]);
    expect(sets.at(-1)).toBe('test_current 3 reversed');
    for (let i = 0; i < done.length; i += 2) expect(done[i]!.set).toBe(done[i + 1]!.set);
  });

  it('a struck reading leaves its place to the next', () => {
    const there = trial(read('test_voltage', 'current 1', 'struck'), read('test_voltage', 'current 2'));
    expect(fourWirePair(there, 'a-1', 'test_voltage').set).toBe('current 1');
  });

  it('are asked for where the plan wants them, and with no ruler', () => {
    const wanted = (methods: string) =>
      wantedGroups(planSettings({ methods })).filter(({ quantities }) => quantities.includes('test_voltage'));
    expect(wanted('ohms, weigh')).toEqual([]);
    expect(wanted('ohms, four-wire')).toMatchObject([{ step: 'ohms', wanted: FOUR_WIRE_PAIRS, onAll: true }]);
    const rule = benchTools({ instruments: [] } as unknown as Trial);
    expect(suggestedTool('test_voltage', rule)).toBeNull();
  });
});
