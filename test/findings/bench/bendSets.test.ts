import { describe, expect, it } from 'vitest';
import { afterInPush, bendActOf, droopSetFor, faceFor, pushRunFor } from '../../../src/findings/bench/bendSets.ts';
import { overhangAdvice } from '../../../src/findings/bench/overhangAdvice.ts';
import { findingsOf } from '../../../src/findings/findings.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { droopShape } from '../../../src/methods/flex/elastica.ts';
import { fold } from '../../../src/trial/fold.ts';
import { expectClose } from '../../tolerance.ts';
import { Bench } from '../bench.ts';

const start = (more: Record<string, string> = {}) =>
  new Bench()
    .carefulTools()
    .cable('harrow', '2 AWG', 'copper', more)
    .piece('b1', 'harrow', { kind: 'bend', cut_length: '400' });
const trialOf = (bench: { entries: readonly Entry[] }) => fold([...bench.entries]);

/** One droop reading as the bench would keep it: with the set and the way up that follow from what was kept before. */
function keep(bench: Bench, quantity: 'overhang' | 'tip_drop', mm: number): Bench {
  const trial = trialOf(bench);
  const set = droopSetFor(trial, 'b1', quantity === 'overhang' ? mm / 1000 : null);
  const position = quantity === 'overhang' ? '' : faceFor(trial, 'b1');
  return bench.read('b1', quantity, String(mm), 'mm', { set, position });
}

describe('the set of a droop', () => {
  it('is one for both ways up and all repeats, with the ways up by turns', () => {
    const bench = start();
    for (const drop of [120, 131, 121]) {
      keep(bench, 'overhang', 320);
      keep(bench, 'tip_drop', drop);
    }
    const { readings } = trialOf(bench);
    expect(new Set(readings.map((r) => r.set))).toEqual(new Set(['droop']));
    expect(readings.filter((r) => r.quantity === 'tip_drop').map((r) => r.position)).toEqual(['up', 'down', 'up']);
    const flex = findingsOf(trialOf(bench), { draws: 0 }).flex!;
    expect(flex.cables[0]!.droops).toHaveLength(1);
  });

  it('is the next one where the piece was clamped anew at another overhang', () => {
    const bench = start();
    keep(bench, 'overhang', 200);
    keep(bench, 'tip_drop', 20);
    keep(bench, 'overhang', 330);
    keep(bench, 'tip_drop', 118);
    const sets = trialOf(bench).readings.map((r) => r.set);
    expect(sets).toEqual(['droop', 'droop', 'droop 2', 'droop 2']);
  });

  it('leaves out what was struck', () => {
    const bench = start();
    keep(bench, 'overhang', 320);
    keep(bench, 'tip_drop', 120);
    bench.say('strike', { reading: trialOf(bench).readings[1]!.reading, why: 'slipped' });
    expect(faceFor(trialOf(bench), 'b1')).toBe('up');
  });
});

describe('a push', () => {
  it('goes span, deflection, force, deflection, force', () => {
    expect(['push_span', 'push_deflection', 'push_force', 'tip_drop'].map(afterInPush)).toEqual([
      'push_deflection',
      'push_force',
      'push_deflection',
      null,
    ]);
  });

  it('is the first of a fresh piece, and worked in once that was said', () => {
    const bench = start();
    expect(pushRunFor(trialOf(bench), 'b1')).toBe('first push');
    bench.read('b1', 'push_force', '41', 'gf', { set: 'first push', position: 'loading' });
    expect(pushRunFor(trialOf(bench), 'b1')).toBe('first push');
    bench.read('b1', 'push_force', '37', 'gf', { set: 'worked in', position: 'loading' });
    expect(pushRunFor(trialOf(bench), 'b1')).toBe('worked in');
  });
});

it.each([
  ['overhang', 'droop'],
  ['push_force', 'push'],
  ['coil_turns', 'coil'],
  ['spring_back', 'spring'],
  ['resistance', null],
] as const)('%s belongs to the act %s', (quantity, act) => {
  expect(bendActOf(quantity)).toBe(act);
});

describe('the overhang to clamp', () => {
  it('is guessed from the size, shorter for a cable that claims more weight', () => {
    const plain = overhangAdvice(trialOf(start()), 'b1')!;
    const heavy = overhangAdvice(trialOf(start({ claimed_mass: '600', claimed_mass_unit: 'g/m' })), 'b1')!;
    expect(plain.from).toBe('size on the label');
    expect(heavy.from).toBe('size and weight on the label');
    expect(heavy.overhang).toBeLessThan(plain.overhang);
    expectClose(plain.most!, 0.34, { absolute: 1e-9 });
  });

  it('follows from the piece itself once it drooped', () => {
    const bench = start();
    // λ = 2 at 250 mm: the best overhang is 1.82 · 250 mm / ∛2.
    keep(bench, 'overhang', 250);
    keep(bench, 'tip_drop', Number((250 * droopShape(2).drop).toFixed(1)));
    const advice = overhangAdvice(trialOf(bench), 'b1')!;
    expect(advice.from).toBe('its own droop');
    expectClose(advice.best, (1.82 * 0.25) / Math.cbrt(2), { absolute: 0.003, because: 'rounded to 5 mm' });
  });

  it('is never more than the piece leaves, and learns from a droop that was too small or too deep', () => {
    const small = start();
    keep(small, 'overhang', 280);
    keep(small, 'tip_drop', 2);
    const longer = overhangAdvice(trialOf(small), 'b1')!;
    expect(longer.from).toBe('its own droop');
    expect(longer.best).toBeGreaterThan(0.8);
    expect(longer.overhang).toBe(longer.most);
    const deep = start();
    keep(deep, 'overhang', 300);
    keep(deep, 'tip_drop', 299);
    const shorter = overhangAdvice(trialOf(deep), 'b1')!;
    expect(shorter.from).toBe('its own droop');
    expect(shorter.overhang).toBeLessThan(0.16);
  });

  it('is none for a piece that is not on record', () => {
    expect(overhangAdvice(trialOf(start()), 'nothing')).toBeNull();
  });
});
