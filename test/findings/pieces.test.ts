/** What is said of a piece beside its area: strands, masses that close, fittings, walls, what is missing. */
import { describe, expect, it } from 'vitest';
import { controlGap } from '../../src/findings/controlGap.ts';
import { expectClose } from '../tolerance.ts';
import { Bench, claimOf, codes, gramsPerMm, milliohmsPerMm, oneCable, SOLID } from './bench.ts';

describe('strands', () => {
  const counted = (value: string, claimed = '') =>
    oneCable('2 AWG', 'OFC', claimed ? { claimed_strands: claimed } : {})
      .read('p', 'strand_count', value, '')
      .of('x');

  it.each([
    ['37', '37', 'agrees'],
    ['37', '49', 'fewer than it says'],
    ['49', '37', 'more than it says'],
    ['660', '665', 'agrees'],
    ['600', '665', 'fewer than it says'],
    ['720', '665', 'more than it says'],
  ])('%s counted, %s on the label: %s', (count, label, words) => {
    expect(counted(count, label).strands_sentence).toContain(`the label says ${label}: ${words}`);
  });

  it('a few are a bare number, hundreds a range', () => {
    expect(counted('37').strands_sentence).toMatch(/^37 strands \(counted whole\); the label does not say how many\.$/);
    expect(counted('1').strands_sentence).toMatch(/^1 strand /);
    const { strand_count, strands_sentence } = counted('1064', '1064');
    const [low, high] = strand_count!.interval;
    expect(low).toBeLessThan(1064);
    expect(high).toBeGreaterThan(1064);
    expect(strands_sentence).toMatch(/^10\d\d to 10\d\d strands .*the label says 1064: agrees\.$/);
  });

  it('bundles times strands in one, the spread of counted bundles being the doubt', () => {
    const bench = (inBundle: number[]) =>
      inBundle.reduce(
        (b, n, i) => b.read('p', 'strands_in_bundle', String(n), '', { position: `bundle ${i + 1}` }),
        oneCable('1/0 AWG', 'OFC', { claimed_strands: '1064' }).read('p', 'bundle_count', '19', ''),
      );
    const even = bench([56, 56, 56]).of('x');
    const uneven = bench([52, 60, 56]).of('x');
    expectClose(even.strand_count!.value, 1064, { absolute: 1e-9 });
    expectClose(uneven.strand_count!.value, 1064, { absolute: 1e-9 });
    expect(uneven.strand_count!.u).toBeGreaterThan(even.strand_count!.u);
    expect(even.strands_sentence).toContain('bundles × strands in one bundle');
  });

  it('bundles of bundles multiply level by level, and a centre bundle counts for itself', () => {
    const nested = oneCable()
      .read('p', 'bundle_count', '7', '', { set: 'outer' })
      .read('p', 'bundle_count', '19', '', { set: 'inner' })
      .read('p', 'strands_in_bundle', '16', '')
      .of('x');
    expectClose(nested.strand_count!.value, 7 * 19 * 16, { absolute: 1e-9 });
    const centred = oneCable()
      .read('p', 'bundle_count', '7', '')
      .read('p', 'strands_in_bundle', '95', '')
      .read('p', 'strands_in_bundle', '88', '', { position: 'centre' })
      .of('x');
    expectClose(centred.strand_count!.value, 6 * 95 + 88, { absolute: 1e-9 });
  });

  it('count by weight: whole conductor over counted strands of the same piece', () => {
    const c = oneCable('2 AWG', 'OFC', { claimed_strands: '665' })
      .weigh('p', 33.6)
      .read('p', 'strand_sample_mass', ((gramsPerMm(33.6) * 300 * 95) / 665).toFixed(2), 'g', { instrument: 'scale' })
      .read('p', 'strand_sample_count', '95', '')
      .of('x');
    expectClose(c.strand_count!.value, 665, { relative: 0.002 });
    expect(c.strands_sentence).toContain('by weight');
  });

  it('ten thin strands are too few for a scale of ±0.03 g, and the number that would do is named', () => {
    // Computed independently [calc] in the project's notes: ten strands of 0.127 mm and 150 mm weigh 0.17 g, ±0.03 g is 18 %, and
    // for 1 % it takes about 180.
    const { warnings } = oneCable()
      .read('p', 'strand_sample_mass', '0.17', 'g', { instrument: 'scale' })
      .read('p', 'strand_sample_count', '10', '')
      .read('p', 'strand_sample_length', '150', 'mm')
      .findings();
    const said = warnings.find((w) => w.code === 'too-few-strands-weighed')!.text;
    expect(said).toMatch(/10 strands weigh 0\.17 g, which the pocket scale knows to 18 %/);
    expectClose(Number(/about (\d+) strands/.exec(said)![1]), 180, { relative: 0.03 });
  });

  it('a whole bundle is enough: no warning', () => {
    const bench = oneCable()
      .read('p', 'strand_sample_mass', '13.10', 'g', { instrument: 'scale' })
      .read('p', 'strand_sample_count', '95', '')
      .read('p', 'strand_sample_length', '300', 'mm');
    expect(codes(bench.findings())).not.toContain('too-few-strands-weighed');
  });

  it('a caliper on a thin strand cannot decide, and it is said; a micrometer can', () => {
    const bench = (tool: string) =>
      oneCable()
        .tool('caliper', 'digital caliper', '0.01', 'mm', { max_error: '0.02' })
        .read('p', 'strand_diameter', '0.200', 'mm', {
          instrument: tool,
        });
    const said = bench('caliper')
      .findings()
      .warnings.find((w) => w.code === 'tool-cannot-decide')!.text;
    // ±0.02 mm on 0.20 mm is 20 % of the area: computed independently [calc] in the project's notes.
    expect(said).toContain('± 20 % of the area');
    expect(codes(bench('micrometer').findings())).not.toContain('tool-cannot-decide');
  });
});

describe('masses', () => {
  const apart = (whole: number, more: [string, number][] = []) =>
    more.reduce(
      (b, [quantity, grams]) => b.read('p', quantity, grams.toFixed(2), 'g', { instrument: 'scale' }),
      oneCable()
        .weigh('p', 33.6)
        .read('p', 'specimen_mass', whole.toFixed(2), 'g', { instrument: 'scale' })
        .read('p', 'jacket_mass', '30.00', 'g', { instrument: 'scale' }),
    );
  const conductor = Number((gramsPerMm(33.6) * 300).toFixed(2));

  it('close when the parts weigh what the whole weighs', () => {
    const [m] = apart(conductor + 30).of('x').masses;
    expect(m.closes).toBe(true);
    expect(m.text).toMatch(/The sum closes\.$/);
    expect(codes(apart(conductor + 30).findings())).not.toContain('masses-do-not-close');
  });

  it('do not close when something is missing, with how much', () => {
    const bench = apart(conductor + 32);
    const [m] = bench.of('x').masses;
    expect(m.closes).toBe(false);
    expectClose(m.gap_g, 2, { absolute: 0.001 });
    expect(m.text).toContain('2.00 g are missing from the parts');
    expect(m.text).toContain('strands lost in stripping, or something not weighed');
    expect(codes(bench.findings(), 'x')).toContain('masses-do-not-close');
  });

  it('close again once the separator and the lost strands are weighed', () => {
    const parts: [string, number][] = [
      ['separator_mass', 1.5],
      ['strands_lost', 0.5],
    ];
    expect(apart(conductor + 32, parts).of('x').masses[0].closes).toBe(true);
  });

  it('parts that weigh more than the whole are to be weighed again', () => {
    const [m] = apart(conductor + 28).of('x').masses;
    expect(m.closes).toBe(false);
    expect(m.text).toContain('weigh them again');
  });

  it('jacket that will not come off is taken off the conductor, lost strands are added to it', () => {
    const mass = (more: [string, number][]) => apart(conductor + 30, more).of('x').mass_per_metre!.value;
    expect(mass([['residue', 1]])).toBeLessThan(mass([]));
    expect(mass([['strands_lost', 1]])).toBeGreaterThan(mass([]));
  });

  it('conductor by difference, when only the whole and the jacket were weighed', () => {
    const c = oneCable()
      .read('p', 'conductor_length', '300.0', 'mm', { instrument: 'rule' })
      .read('p', 'specimen_mass', (conductor + 30).toFixed(2), 'g', { instrument: 'scale' })
      .read('p', 'jacket_mass', '30.00', 'g', { instrument: 'scale' })
      .of('x');
    expectClose(c.mass_per_metre!.value, gramsPerMm(33.6) * 1000, { relative: 0.001 });
    expect(c.residuals[0].text).toContain('by difference');
  });
});

describe('fittings, wall and section', () => {
  const bench = () =>
    oneCable()
      .everything('p', 33.6)
      .read('p', 'conductor_diameter', '8.30', 'mm')
      .read('p', 'outer_diameter', '12.10', 'mm')
      .say('fitting', { fitting: 'lug-9', kind: 'lug', bore: '9', unit: 'mm', tried_with: 'x', tried: 'goes in' })
      .say('fitting', { fitting: 'lug-8', kind: 'lug', bore: '8', unit: 'mm' })
      .say('fitting', { fitting: 'lug-12', kind: 'lug', bore: '12', unit: 'mm' })
      .say('fitting', { fitting: 'gland', kind: 'gland', bore: '12', unit: 'mm' });

  it('enters, is too wide, fills too little, or is not crimped at all', () => {
    const fit = Object.fromEntries(
      bench()
        .of('x')
        .fit.map((f) => [f.fitting, f]),
    );
    expect(fit['lug-9']).toMatchObject({ enters: true, fills: true, tried: 'goes in' });
    expect(fit['lug-9'].text).toMatch(
      /^The bundle enters the 9\.0 mm lug; metal takes 5\d % of the bore; tried: goes in\.$/,
    );
    expect(fit['lug-8']).toMatchObject({ enters: false, tried: null });
    expect(fit['lug-8'].text).toContain('wider than');
    expect(fit['lug-12']).toMatchObject({ enters: true, fills: false });
    expect(fit['lug-12'].text).toContain('crimps commonly want about 40 %');
    expect(fit.gland.fills).toBeNull();
  });

  it('without the bundle: the fit is left open and what is needed is said', () => {
    const { fit } = oneCable()
      .everything('p', 33.6)
      .say('fitting', { fitting: 'l', kind: 'lug', bore: '9', unit: 'mm' })
      .of('x');
    expect(fit[0].enters).toBeNull();
    expect(fit[0].text).toContain('the smallest hole it passes');
  });

  it('wall from the two diameters, else from readings, with the least and the evenness', () => {
    expectClose(bench().of('x').wall!.mean.value, 1.9, { absolute: 1e-9 });
    const read = ['1.80', '1.95', '2.00', '1.60', '1.85', '1.90'].reduce(
      (b, v) => b.read('p', 'wall_thickness', v, 'mm'),
      bench(),
    );
    const { wall } = read.of('x');
    expectClose(wall!.mean.value, 1.85, { absolute: 1e-9 });
    expectClose(wall!.least!.value, 1.6, { absolute: 1e-9 });
    expectClose(wall!.concentricity!.value, 0.8, { absolute: 1e-9 });
  });

  it('metal as a share of the cut face', () => {
    const share = bench().of('x').metal_of_section!;
    expectClose(share.value, 33.6 / ((Math.PI / 4) * 12.1 ** 2), { relative: 0.01 });
  });
});

describe('what is missing', () => {
  it('is named as long as it is, and no longer', () => {
    const text = (b: Bench) => b.of('x').missing.join(' ');
    expect(text(oneCable())).toMatch(/No conductor was weighed.*No resistance was read.*No outer diameter/);
    expect(text(oneCable().weigh('p', 33.6))).not.toMatch(/No conductor was weighed/);
    const full = oneCable().everything('p', 33.6).read('p', 'outer_diameter', '12.1', 'mm');
    expect(full.of('x').missing).toEqual([]);
  });

  it('a length that was cut to but not measured stands in, within 1 mm', () => {
    const bench = new Bench()
      .carefulTools()
      .cable('x', '2 AWG', 'OFC')
      .piece('p', 'x', { cut_length: '300' })
      .read('p', 'conductor_mass', (gramsPerMm(33.6) * 300).toFixed(2), 'g', { instrument: 'scale' });
    expect(bench.of('x').missing.join(' ')).toContain('the length it was cut to stands in');
    expect(bench.of('x').mass_per_metre!.u).toBeGreaterThan(oneCable().weigh('p', 33.6).of('x').mass_per_metre!.u);
  });
});

describe('the control piece', () => {
  const control = (massTimes: number) =>
    new Bench()
      .carefulTools()
      .cable('wire', '12 AWG', 'copper', { role: 'control' })
      .cable('x', '2 AWG', 'OFC')
      .piece('w', 'wire')
      .piece('p', 'x')
      .weigh('w', 3.31, SOLID, 900, massTimes)
      .read('w', 'resistance', (milliohmsPerMm(3.31, SOLID) * 1000).toFixed(3), 'mohm', {
        instrument: 'meter',
        at_length: '1000',
        temperature: '20.0',
      })
      .everything('p', 33.6)
      .findings();

  it('plain copper wire comes out as copper: the tools agree', () => {
    const { control: found, warnings, cables } = control(1);
    expect(found).toHaveLength(1);
    expect(found[0].agrees).toBe(true);
    expect(found[0].sentence).toMatch(/^Our tools said copper for copper/);
    expectClose(found[0].mass_resistivity.value, 0.15328, { relative: 0.01 });
    expect(warnings.map((w) => w.code)).not.toContain('control-disagrees');
    expect(warnings.map((w) => w.code)).not.toContain('no-control-piece');
    expect(cables.find((c) => c.cable === 'wire')!.sentence).toContain('not compared');
  });

  it('a tenth too much on the scale: the tools do not agree, and it is said before anything else', () => {
    const { control: found, warnings } = control(1.1);
    expect(found[0].agrees).toBe(false);
    expect(found[0].distance).toBeGreaterThan(2.5);
    expect(warnings.find((w) => w.code === 'control-disagrees')?.text).toContain(
      'Check scale, rule, meter and thermometer',
    );
  });

  it('is asked for where several cables are compared without one', () => {
    const bench = oneCable().cable('y', '2 AWG', 'OFC').everything('p', 33.6);
    expect(codes(bench.findings())).toContain('no-control-piece');
    expect(codes(oneCable().everything('p', 33.6).findings())).not.toContain('no-control-piece');
  });

  it.each<[string, (b: Bench) => Bench, string]>([
    ['nothing', (b) => b, 'is neither weighed nor ohmed yet'],
    ['ohms alone', (b) => b.ohm('w', 3.31, SOLID), 'is not weighed yet'],
    ['a weight alone', (b) => b.weigh('w', 3.31, SOLID, 900), 'is not ohmed yet'],
    [
      'ohms with no contact distance',
      (b) => b.read('w', 'resistance', '5.2', 'mohm', { instrument: 'meter', temperature: '20.0' }),
      'is ohmed, but the distance between the voltage contacts is missing, and it is not weighed yet',
    ],
  ])('with %s on it says what it lacks, and is not said to be missing', (_, read, lacks) => {
    const found = read(
      oneCable().cable('wire', '12 AWG', 'copper', { role: 'control' }).piece('w', 'wire').everything('p', 33.6),
    ).findings();
    expect(found.control).toHaveLength(0);
    expect(codes(found)).not.toContain('no-control-piece');
    expect(found.warnings.find(({ code }) => code === 'control-not-complete')?.text).toBe(
      `The control piece ${lacks}, so it does not show yet whether scale, rule, meter and thermometer agree.`,
    );
    expect(controlGap(found.cables)).toContain(lacks);
  });

  it('makes no claim of its own on strands', () => {
    expect(claimOf(oneCable().everything('p', 33.6).of('x'), 'strand count')).toBeUndefined();
  });
});
