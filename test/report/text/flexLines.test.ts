import { describe, expect, it } from 'vitest';
import { droopOfSet } from '../../../src/methods/flex/droopWithSet.ts';
import { assayTable } from '../../../src/report/text/assayTable.ts';
import { Bench } from '../../findings/bench.ts';

const C = { temperature: '20.0', temperature_unit: 'C' };

/** Two cables that droop, judged three times each way. */
function bent(): Bench {
  const b = new Bench().carefulTools();
  for (const [id, EI] of [
    ['soft', 0.03],
    ['stiff', 0.09],
  ] as const) {
    b.cable(id, '2 AWG', 'OFC')
      .piece(`${id}-b`, id, { kind: 'bend' })
      .read(`${id}-b`, 'specimen_length', '400.0', 'mm', { instrument: 'rule' })
      .read(`${id}-b`, 'specimen_mass', '244.73', 'g', { instrument: 'scale' })
      .read(`${id}-b`, 'overhang', '350.0', 'mm', { set: 'd', instrument: 'rule', ...C });
    const drop = (350 * droopOfSet((6 * 0.35 ** 3) / EI, 0, 1).drop).toFixed(1);
    for (const position of ['up', 'down'])
      b.read(`${id}-b`, 'tip_drop', drop, 'mm', { set: 'd', position, instrument: 'rule', ...C });
  }
  for (let i = 0; i < 6; i++)
    b.say('judgement', {
      judgement: `j${i}`,
      left: i % 2 ? 'soft-b' : 'stiff-b',
      right: i % 2 ? 'stiff-b' : 'soft-b',
      result: i % 2 ? 'left' : 'right',
    });
  return b;
}

describe('the block on bending', () => {
  const text = assayTable(bent().findings());

  it('says who bends most easily, and gives each cable its row', () => {
    expect(text).toContain('By droop, soft bends most easily; last stiff.');
    expect(text).toMatch(/soft +0\.030\d* ± 0\.00\d+ +20 +1 +1 +\d\d %/);
    expect(text).toMatch(/stiff +0\.09\d* ± 0\.00\d+ +20 +2 +\d +\d+ %/);
    expect(text).toContain('Chance');
  });

  it.each([60, 80])('stays within %i columns, in plain characters too', (width) => {
    for (const ascii of [false, true]) {
      const lines = assayTable(bent().findings(), { width, ascii }).split('\n');
      expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width);
    }
  });

  it('is not there without a word on bending', () => {
    expect(assayTable(new Bench().cable('x', '2 AWG').findings())).not.toContain('Bending');
  });
});
