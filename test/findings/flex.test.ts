/** Bending, from rows as they are typed to the part of the findings that speaks of it. */
import { describe, expect, it } from 'vitest';
import { Findings } from '../../src/findings/schema.ts';
import { droopOfSet } from '../../src/methods/flex/droopWithSet.ts';
import { expectClose } from '../tolerance.ts';
import { Bench, codes } from './bench.ts';
import { C, cableOf, droop, finely, flexOf, G } from './bendBench.ts';

describe('a droop', () => {
  it('gives back the stiffness that it was made with', () => {
    const c = flexOf(droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03));
    expectClose(c.bending_stiffness!.value, 0.03, { relative: 2e-4, because: 'digits of the readings' });
    expect(c.bending_stiffness!.unit).toBe('N m2');
    expect(c.method).toBe('droop');
    expectClose(c.temperature_C!, 20, { absolute: 1e-9 });
    expectClose(c.bending_length!.value, 1000 * Math.cbrt(0.03 / 6), { relative: 2e-4 });
    expectClose(c.weight_per_metre!.value, 6, { relative: 1e-4 });
    expectClose(c.droops[0].lambda!, (6 * 0.027) / 0.03, { relative: 1e-3 });
    expect(c.droops[0].way).toBe('mean of both faces');
  });

  it.each([0.15, 0.3, -0.25])('a set of q = %f is solved for', (q) => {
    const c = flexOf(droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03, q));
    expectClose(c.bending_stiffness!.value, 0.03, { relative: 5e-4 });
    expect(c.droops[0].way).toBe('both faces solved');
    expectClose(c.droops[0].set_of_piece!, (1 - Math.cos(q)) / q, { relative: 2e-3 });
  });

  it('a large set is flagged, a small one is not', () => {
    expect(codes(droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03, 0.3).findings(), 'x')).toContain('droop-set');
    expect(codes(droop(cableOf(finely(), 'x', 6), 'x', 6, 0.03, 0.15).findings(), 'x')).not.toContain('droop-set');
  });

  it('too straight or too deep is refused with the overhang that would do', () => {
    const straight = droop(cableOf(finely(), 'x', 6), 'x', 6, 1, 0, 0.3);
    const c = flexOf(straight);
    expect(c.bending_stiffness).toBeNull();
    expectClose(c.droops[0].better_overhang_mm!, 1820 * Math.cbrt(1 / 6), { absolute: 6, because: 'rounded to 5 mm' });
    expect(c.droops[0].text).toContain('push it');
    expect(codes(straight.findings(), 'x')).toContain('droop-settles-nothing');
    const deep = flexOf(droop(cableOf(finely(), 'x', 6), 'x', 6, 0.004, 0, 0.3));
    expect(deep.bending_stiffness).toBeNull();
    expectClose(deep.droops[0].better_overhang_mm!, 1820 * Math.cbrt(0.004 / 6), { absolute: 6 });
  });

  it('without a weight says what to weigh; with a label that states one, leans on it and says so', () => {
    const bare = finely().cable('x', '2 AWG', 'OFC').piece('x-b', 'x', { kind: 'bend' });
    const c = flexOf(droop(bare, 'x', 6, 0.03));
    expect(c.bending_stiffness).toBeNull();
    expect(c.droops[0].text).toContain('weigh');
    expect(codes(bare.findings(), 'x')).toContain('weight-missing');
    const stated = finely().cable('x', '2 AWG', 'OFC', { claimed_mass: '612 g/m' }).piece('x-b', 'x', { kind: 'bend' });
    const leaning = flexOf(droop(stated, 'x', 0.612 * G, 0.03));
    expectClose(leaning.bending_stiffness!.value, 0.03, { relative: 1e-3 });
    expect(leaning.bending_stiffness!.condition).toContain('label');
    expect(leaning.bending_stiffness!.u / 0.03).toBeGreaterThan(0.02);
  });

  it('one way up only says so', () => {
    const b = cableOf(finely(), 'x', 6)
      .read('x-b', 'overhang', '300.0', 'mm', { set: 'd', ...C })
      .read('x-b', 'tip_drop', '160.0', 'mm', { set: 'd', position: 'up', ...C });
    expect(flexOf(b).droops[0].way).toBe('one face');
    expect(codes(b.findings(), 'x')).toContain('droop-one-face');
  });

  it('the gap between coming from above and from below widens the figure', () => {
    const of = (gap: number) => {
      const b = cableOf(finely(), 'x', 6).read('x-b', 'overhang', '300.0', 'mm', {
        set: 'd',
        instrument: 'rule',
        ...C,
      });
      for (const face of ['up', 'down'])
        for (const [from, sign] of [
          ['above', -1],
          ['below', 1],
        ] as const)
          b.read('x-b', 'tip_drop', (160 + (sign * gap) / 2).toFixed(1), 'mm', {
            set: 'd',
            instrument: 'rule',
            position: `${face}, from ${from}`,
            ...C,
          });
      return flexOf(b);
    };
    const [still, sticky] = [of(0), of(8)];
    expectClose(sticky.bending_stiffness!.value, still.bending_stiffness!.value, { relative: 1e-9 });
    expect(sticky.bending_stiffness!.u).toBeGreaterThan(2 * still.bending_stiffness!.u);
    expectClose(sticky.droops[0].gap_mm!, 8, { absolute: 1e-9 });
  });

  it('by chord angle says the same as by tip drop', () => {
    const { chordAngle } = droopOfSet((6 * 0.027) / 0.03, 0, 1);
    const b = cableOf(finely(), 'x', 6).read('x-b', 'overhang', '300.0000', 'mm', {
      set: 'a',
      instrument: 'rule',
      ...C,
    });
    for (const position of ['up', 'down'])
      b.read('x-b', 'chord_angle', ((chordAngle * 180) / Math.PI).toFixed(5), 'deg', { set: 'a', position, ...C });
    expectClose(flexOf(b).bending_stiffness!.value, 0.03, { relative: 2e-4 });
  });

  it('two temperatures give the cold stiffening, its common errors cancelled', () => {
    const b = cableOf(new Bench().carefulTools(), 'x', 6);
    droop(b, 'x', 6, 0.03, 0, 0.3, { temperature: '20', temperature_unit: 'C' }, 'warm');
    droop(b, 'x', 6, 0.045, 0, 0.34, { temperature: '0', temperature_unit: 'C' }, 'cold');
    const c = flexOf(b);
    expectClose(c.cold_stiffening!.ratio.value, 1.5, { relative: 1e-2 });
    expect(c.cold_stiffening!.cold_C).toBeCloseTo(0);
    expectClose(c.bending_stiffness!.value, 0.03, { relative: 5e-3, because: 'the headline is the warm one' });
    const single = c.bending_stiffness!.u / c.bending_stiffness!.value;
    expect(c.cold_stiffening!.ratio.u / c.cold_stiffening!.ratio.value).toBeLessThan(single);
  });
});

describe('a push', () => {
  /** Points of a run, forces in N, sets of one point each. */
  function push(b: Bench, run: string, points: readonly (readonly [number, number])[], position = 'loading'): Bench {
    points.forEach(([mm, N], i) => {
      const more = { set: `${run} ${i + 1}`, position, ...C };
      b.read('x-b', 'push_deflection', mm.toFixed(2), 'mm', { instrument: 'rule', ...more });
      b.read('x-b', 'push_force', N.toFixed(4), 'N', { instrument: 'gauge', ...more });
    });
    return b;
  }
  const piece = () =>
    cableOf(finely(), 'x', 6)
      .read('x-b', 'push_span', '200.0000', 'mm', { instrument: 'rule', set: 'span' })
      .read('x-b', 'outer_diameter', '10.00', 'mm');
  const slope = (EI: number) => (48 * EI) / 0.2 ** 3 / 1000;

  it('gives back the stiffness, shear added back, with slack taken up', () => {
    const k = slope(0.5);
    const c = flexOf(
      push(
        piece(),
        'first push',
        [1, 2, 3, 4].map((mm) => [mm, 0.3 + k * mm] as const),
      ),
    );
    const shear = (0.75 * 2.6) / 0.9 / 400;
    expectClose(c.bending_stiffness!.value, 0.5 * (1 + shear), { relative: 1e-3 });
    expect(c.method).toBe('push');
    expect(c.pushes[0]).toMatchObject({ state: 'first push', run: 'first push', points: 4, points_used: 4 });
    expectClose(c.pushes[0].span_in_diameters!, 20, { relative: 1e-6 });
  });

  it('leaves out the end where the strands begin to slide', () => {
    const k = slope(0.5);
    const bent = [1, 2, 3, 4, 5, 6].map((mm) => [mm, mm <= 3 ? k * mm : k * (3 + 0.5 * (mm - 3))] as const);
    const c = flexOf(push(piece(), 'p', bent));
    expect(c.pushes[0].points_used).toBeLessThan(5);
    expectClose(c.bending_stiffness!.value, 0.5, { relative: 0.12 });
    expect(c.pushes[0].text).toContain('bend away');
  });

  it('says how much was not given back, and keeps first push and worked in apart', () => {
    const k = slope(0.5);
    const b = push(
      piece(),
      'first push',
      [0, 2, 4].map((mm) => [mm, k * mm] as const),
    );
    push(
      b,
      'first push',
      [4, 2, 0].map((mm) => [mm, k * Math.max(mm - 1, 0)] as const),
      'unloading',
    );
    push(
      b,
      'worked in',
      [0, 2, 4].map((mm) => [mm, 0.8 * k * mm] as const),
    );
    const c = flexOf(b);
    expect(c.pushes.map((p) => p.state)).toEqual(['first push', 'worked in']);
    // Loading 8k (in mm); unloading by trapezoids (0 + k)/2 · 2 + (k + 3k)/2 · 2 = 5k.
    expectClose(c.pushes[0].lost_share!, 3 / 8, { relative: 1e-3 });
    expectClose(c.bending_stiffness!.value / c.pushes[0].bending_stiffness!.value, 0.8, { relative: 1e-3 });
  });

  it('lacking a span or points says so', () => {
    const few = push(piece(), 'p', [
      [1, 2],
      [2, 4],
    ]);
    expect(flexOf(few).pushes[0].bending_stiffness).toBeNull();
    expect(codes(few.findings(), 'x')).toContain('push-settles-nothing');
  });
});

describe('coils, spring-back and bounds', () => {
  it('are worked out where there is enough', () => {
    const b = cableOf(finely(), 'x', 6)
      .read('x-b', 'outer_diameter', '10.00', 'mm')
      .read('x-b', 'coil_turns', '1.5', '', C)
      .read('x-b', 'spring_back', '35', '%', C)
      .strands('x-b', 33.6, 665)
      .read('x-b', 'conductor_diameter', '8.30', 'mm');
    droop(b, 'x', 6, 0.03);
    const c = flexOf(b);
    expectClose(c.coil_ratio!.value, 400 / (2 * Math.PI * 1.5) / 10, { relative: 1e-3 });
    expectClose(c.spring_back!.value, 0.35, { relative: 1e-9 });
    expect(c.bounds!.slip).toBeGreaterThan(0.005);
    expect(c.bounds!.stick).toBeGreaterThan(50 * c.bounds!.slip);
    expect(c.bounds!.place).toBeGreaterThan(0);
    expect(c.bounds!.place).toBeLessThan(0.45);
    expect(c.bounds!.text).toContain('sliding freely');
  });
});

describe('judged pairs', () => {
  const IDS = ['a', 'b', 'c', 'd'];
  function field(): Bench {
    const b = new Bench();
    for (const id of IDS) b.cable(id, '2 AWG').piece(`${id}-1`, id, { kind: 'bend' });
    return b.piece('a-2', 'a', { kind: 'bend' });
  }
  /** Every pair by each judge, the earlier name the easier, sides changed from judge to judge. */
  function judged(b: Bench, judges: number): Bench {
    let n = 0;
    for (let j = 0; j < judges; j++)
      IDS.forEach((left, i) => {
        for (const right of IDS.slice(i + 1)) {
          const [l, r, result] = (j + n) % 2 === 0 ? [left, right, 'left'] : [right, left, 'right'];
          n++;
          b.say('judgement', { judgement: `j${n}`, left: `${l}-1`, right: `${r}-1`, result, by: `judge ${j}`, ...C });
        }
      });
    return b;
  }

  it('that all agree order the cables', () => {
    const f = judged(field(), 5).findings();
    const { judged: found } = f.flex!;
    expect(Findings.safeParse(f).error).toBeUndefined();
    const abilities = found!.cables.map((c) => c.ability);
    expect([...abilities].sort((x, y) => y - x)).toEqual(abilities);
    expect(found!.cables.every((c) => Number.isFinite(c.se) && c.se > 0)).toBe(true);
    expect(found!.cables[0].probability_best).toBeGreaterThan(0.8);
    expect(found!.cables[0].band).toBe(1);
    expect(Math.max(...found!.cables.map((c) => c.band!))).toBeGreaterThan(1);
    expect(found!.judges.every((j) => j.circular_triads === 0 && j.consistency === 1)).toBe(true);
    expect(found!.judges_agree!.w).toBeCloseTo(1);
    expect(found!.sentence).toContain('a bends most easily');
    expect(f.flex!.sentence).toContain('openly');
    const chances = found!.cables.map((c) => c.place_probability.reduce((x, y) => x + y, 0));
    for (const sum of chances) expectClose(sum, 1, { absolute: 1e-9 });
  });

  it('one round is too little to order by, and the sentence says so', () => {
    const { sentence } = judged(field(), 1).findings().flex!.judged!;
    expect(sentence).toContain('least to speak of an order');
  });

  it('of one cable with itself are left out and named', () => {
    const b = judged(field(), 3).say('judgement', { judgement: 'odd', left: 'a-1', right: 'a-2', result: 'left' });
    expect(b.findings().flex!.judged!.pairs).toBe(18);
    const warning = b.findings().warnings.find((w) => w.code === 'judged-against-itself');
    expect(warning?.text).toContain('odd');
  });

  it('that join no group to the other are named, and nothing is said across', () => {
    const b = field();
    for (let i = 0; i < 4; i++)
      b.say('judgement', { judgement: `p${i}`, left: 'a-1', right: 'b-1', result: 'left' }).say('judgement', {
        judgement: `q${i}`,
        left: 'c-1',
        right: 'd-1',
        result: 'left',
      });
    const f = b.findings();
    expect(f.flex!.judged!.groups).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
    expect(codes(f)).toContain('judgements-not-joined');
    expect(f.flex!.judged!.sentence).toContain('nothing is said across');
    for (const c of f.flex!.judged!.cables) {
      expect([c.probability_best, c.band, c.place_probability]).toEqual([null, null, []]);
      expect(c.cannot_be_told_from).toEqual(expect.arrayContaining(c.cable < 'c' ? ['c', 'd'] : ['a', 'b']));
    }
    expect(f.flex!.judged!.best_set).toEqual([]);
    expect(f.flex!.judged!.more_wanted).toBe(10);
    expect(f.flex!.judged!.sentence).toContain('8 answers, 1.3 for each pair of cables');
  });

  it('keep their chances when something else is read', () => {
    const more = judged(field(), 3).read('a-1', 'specimen_mass', '150.0', 'g');
    expect(more.findings().flex!.judged!.cables).toEqual(judged(field(), 3).findings().flex!.judged!.cables);
  });

  it('draw the same digits each time', () => {
    expect(judged(field(), 3).findings().flex).toEqual(judged(field(), 3).findings().flex);
  });
});

describe('several cables', () => {
  function three(temperatures: readonly string[]): Bench {
    const b = new Bench().carefulTools();
    ['a', 'b', 'c'].forEach((id, i) => {
      cableOf(b, id, 6);
      droop(b, id, 6, [0.03, 0.0302, 0.06][i], 0, [0.3, 0.3, 0.38][i], {
        temperature: temperatures[i],
        temperature_unit: 'C',
      });
    });
    return b;
  }

  it('are parted where the readings part them, and not where they do not', () => {
    const f = three(['20', '20.5', '21']).findings();
    const byId = new Map(f.flex!.cables.map((c) => [c.cable, c]));
    expect(byId.get('a')!.band).toBe(1);
    expect(byId.get('b')!.band).toBe(1);
    expect(byId.get('c')!.band).toBe(2);
    expect(byId.get('a')!.cannot_be_told_from).toEqual(['b']);
    expect(f.flex!.sentence).toBe('By droop, a and b bend most easily and are not parted; last c.');
    expect(codes(f)).not.toContain('flex-temperatures-apart');
  });

  it('more than 3 °C apart are flagged', () => {
    expect(codes(three(['20', '20', '24']).findings())).toContain('flex-temperatures-apart');
  });

  it('without a word on bending there is no such part', () => {
    expect(new Bench().cable('x', '2 AWG').findings().flex).toBeNull();
  });
});
