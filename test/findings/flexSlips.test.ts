/** Slips, impossible readings and two days in one set: each named, the rest still computed. */
import { describe, expect, it } from 'vitest';
import type { FlexCable } from '../../src/findings/shapes/flex.ts';
import { expectClose } from '../tolerance.ts';
import { Bench, codes } from './bench.ts';
import { C, type Cells, cableOf, droop, finely, flexOf } from './bendBench.ts';

describe('one slip', () => {
  /** Five cables read three times either way up by a plain rule; the last of them with one drop of its own. */
  function field(slip: string | null): Bench {
    const b = new Bench().carefulTools();
    ['a', 'b', 'c', 'd', 'e'].forEach((id, i) => {
      cableOf(b, id, 6);
      b.read(`${id}-b`, 'overhang', '300.0', 'mm', { instrument: 'rule', set: 'droop', ...C });
      for (const position of ['up', 'down'])
        [0, 0.5, 1].forEach((off, n) => {
          const typed =
            slip !== null && id === 'e' && position === 'up' && n === 2 ? slip : (100 + 8 * i + off).toFixed(1);
          b.read(`${id}-b`, 'tip_drop', typed, 'mm', { instrument: 'rule', set: 'droop', position, ...C });
        });
    });
    return b;
  }
  const halves = (b: Bench) =>
    b
      .findings()
      .flex!.cables.map(({ bending_stiffness: m }) => (m ? (m.interval[1] - m.interval[0]) / 2 / m.value : null));
  const [sound] = halves(field(null));

  it('lower than its overhang is refused, and no other cable is any wider for it', () => {
    const found = halves(field('310.0'));
    expect(found[4]).toBeNull();
    for (const half of found.slice(0, 4)) expectClose(half!, sound!, { relative: 0.05 });
  });

  it('far from its repeats widens its own figure alone, and is named', () => {
    const b = field('190.0');
    const found = halves(b);
    for (const half of found.slice(0, 4)) expectClose(half!, sound!, { relative: 0.05 });
    expect(found[4]).toBeGreaterThan(5 * sound!);
    const [said] = b.findings().warnings.filter((w) => w.code === 'flex-scatter-apart');
    expect(said.cable).toBe('e');
    expect(said.text).toMatch(/e-b scatter \d+ times as much .* widens the ± of e alone/);
  });
});

describe('readings that cannot be', () => {
  it('an angle past plumb is refused, and said where a drop stands beside it', () => {
    const alone = cableOf(finely(), 'x', 6)
      .read('x-b', 'overhang', '300.0', 'mm', { set: 'd', ...C })
      .read('x-b', 'chord_angle', '95', 'deg', { set: 'd', position: 'up', ...C });
    expect(flexOf(alone).droops[0]).toMatchObject({ lambda: null, bending_stiffness: null });
    expect(flexOf(alone).droops[0].text).toContain('95°, is past plumb');
    const beside = droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03).read('x-b', 'chord_angle', '95', 'deg', {
      set: 'd1',
      ...C,
    });
    expectClose(flexOf(beside).bending_stiffness!.value, 0.03, { relative: 2e-4 });
    expect(codes(beside.findings(), 'x')).toContain('droop-angle-past-plumb');
  });

  it('a force that falls while the piece is pressed on gives no stiffness, and says where', () => {
    const b = cableOf(new Bench().carefulTools(), 'x', 6).read('x-b', 'push_span', '240.0', 'mm', {
      set: 'first push',
      ...C,
    });
    for (const [mm, force] of [
      ['2', '1.20'],
      ['4', '2.40'],
      ['6', '1.80'],
      ['8', '4.80'],
    ] as const)
      b.read('x-b', 'push_deflection', mm, 'mm', { set: 'first push', position: 'loading', ...C }).read(
        'x-b',
        'push_force',
        force,
        'N',
        { set: 'first push', position: 'loading', ...C },
      );
    expect(flexOf(b).bending_stiffness).toBeNull();
    expect(flexOf(b).pushes[0]).toMatchObject({ points_used: 0, bending_stiffness: null });
    expect(flexOf(b).pushes[0].text).toContain('falls from 2.4 N to 1.8 N while it is pressed on from 4 mm to 6 mm');
    expect(codes(b.findings(), 'x')).toContain('push-settles-nothing');
  });

  it('more than all of a bend does not spring back', () => {
    const b = cableOf(finely(), 'x', 6).read('x-b', 'spring_back', '150', '%', C);
    expect(flexOf(b).spring_back).toBeNull();
    expect(codes(b.findings(), 'x')).toContain('flex-spring-back-left-out');
  });

  it('a coil without an outer diameter, or tighter than the cable allows, says so', () => {
    const b = cableOf(finely(), 'x', 6).read('x-b', 'coil_diameter', '60.0', 'mm', { position: 'inside', ...C });
    expect(flexOf(b).cautions.join()).toContain('measure the outer diameter');
    b.piece('x-1', 'x').read('x-1', 'outer_diameter', '12.0', 'mm', C);
    expectClose(flexOf(b).coil_ratio!.value, 3, { relative: 1e-9 });
    const tight = cableOf(finely(), 'x', 6).piece('x-1', 'x').read('x-1', 'outer_diameter', '12.0', 'mm', C);
    tight.read('x-b', 'coil_diameter', '11', 'mm', { position: 'outside', ...C });
    expect(flexOf(tight).coil_ratio).toBeNull();
    expect(codes(tight.findings(), 'x')).toContain('flex-coil-left-out');
  });
});

describe('one set read on two days', () => {
  const day = (celsius: string): Cells => ({ temperature: celsius, temperature_unit: 'C' });
  it('is two droops, each at a temperature that somebody measured', () => {
    const b = droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03, 0, 0.3, day('20'));
    droop(b, 'x', 6, 0.027, 0, 0.3, day('25'));
    const c = flexOf(b);
    expect(c.droops.map((d) => d.temperature_range_C!.map(Math.round))).toEqual([
      [20, 20],
      [25, 25],
    ]);
    expectClose(c.bending_stiffness!.value, 0.03, { relative: 1e-3 });
    expectClose(c.temperature_C!, 20, { absolute: 1e-9 });
    expect(codes(b.findings(), 'x')).toContain('flex-own-temperatures-apart');
  });
});

describe('what lacks for an order', () => {
  it('is said of all where no cable has a stiffness', () => {
    const b = finely();
    for (const id of ['a', 'b', 'c'])
      droop(b.cable(id, '2 AWG', 'OFC').piece(`${id}-b`, id, { kind: 'bend' }), id, 6, 0.03);
    expect(b.findings().flex!.sentence).toBe(
      'Three cables were bent, and none has a stiffness yet: each of them lacks its weight per length. Weigh a piece of each and measure its length.',
    );
  });

  it('is said of those that lack it where one has a stiffness', () => {
    const b = droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03);
    droop(b.cable('y', '2 AWG', 'OFC').piece('y-b', 'y', { kind: 'bend' }), 'y', 6, 0.03);
    expect(b.findings().flex!.sentence).toMatch(
      /^Two cables were bent, and only one has a stiffness yet: y lacks its weight/,
    );
  });
});

describe('push beside droop', () => {
  function both(stiffer: number): FlexCable {
    const b = droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03).read('x-b', 'push_span', '240.0000', 'mm', {
      instrument: 'rule',
      set: 'first push',
      ...C,
    });
    for (const mm of [2, 4, 6, 8])
      b.read('x-b', 'push_deflection', mm.toFixed(4), 'mm', {
        instrument: 'rule',
        set: 'first push',
        position: 'loading',
        ...C,
      }).read('x-b', 'push_force', ((48 * 0.03 * stiffer * mm) / 1000 / 0.24 ** 3).toFixed(4), 'N', {
        instrument: 'gauge',
        set: 'first push',
        position: 'loading',
        ...C,
      });
    return flexOf(b);
  }
  it('says why they differ and which is quoted, or nothing where they agree', () => {
    const { push_over_droop: differ, method } = both(1.3);
    expectClose(differ!.ratio.value, 1.3, { relative: 1e-2 });
    expect(differ!.text).toMatch(/By first push it is 30 % stiffer than by droop.*friction.*by droop\.$/);
    expect(method).toBe('droop');
    expect(both(1.02).push_over_droop!.text).toBe('');
  });
});
