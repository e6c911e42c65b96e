import { describe, expect, it } from 'vitest';
import { type Bench, cableOf, gramsPerMm, oneCable } from './bench.ts';

/** A piece cut to 730 mm, weighed right, and ohmed; the length of its conductor is typed as given. */
function piece(length: string, unit: string): Bench {
  return oneCable('2 AWG', 'OFC')
    .piece('q', 'x', { code: 'KR', cut_length: '730' })
    .read('q', 'conductor_length', length, unit, { instrument: 'rule' })
    .read('q', 'conductor_mass', (gramsPerMm(33.6) * 730).toFixed(2), 'g', { instrument: 'scale' });
}

describe('a length that is not that of its piece', () => {
  it('is named, and not the weight that was right', () => {
    const findings = piece('1 3/8', 'in').ohm('p', 33.6).findings();
    const cable = cableOf(findings, 'x');
    expect(cable.sentence).toContain('length of the bare conductor, 35 mm, on a piece that was cut to 730 mm (KR)');
    expect(cable.sentence).not.toContain('mass');
    expect(cable.next_reading).toMatchObject({ reading: 'conductor_length' });
    expect(findings.warnings.map(({ code }) => code)).toContain('length-not-of-the-piece');
  });

  it('is not called so when it is', () => {
    const findings = piece('729.5', 'mm').ohm('p', 33.6).findings();
    expect(findings.warnings.map(({ code }) => code)).not.toContain('length-not-of-the-piece');
    expect(cableOf(findings, 'x').conductor_area?.value).toBeCloseTo(33.6, 0);
  });
});

describe('ohms without the distance between the contacts', () => {
  it('are not told as never read', () => {
    const findings = oneCable().read('p', 'resistance', '0.5', 'mohm', { instrument: 'meter' }).findings();
    const cable = cableOf(findings, 'x');
    expect(cable.missing.join(' ')).toContain('how far apart the voltage contacts stood');
    expect(cable.missing.join(' ')).not.toContain('No resistance was read');
    expect(findings.warnings.map(({ text }) => text).join(' ')).not.toContain('at_length');
  });
});

describe('advice on how much to let hang free', () => {
  const bent = (overhang: string, drop: string, unit = 'mm') =>
    oneCable('2 AWG', 'OFC', { mass_per_metre: '400 g/m' })
      .weigh('p', 33.6)
      .read('p', 'specimen_mass', '120', 'g')
      .piece('b', 'x', { kind: 'bend', cut_length: '370' })
      .read('b', 'overhang', overhang, unit, { set: '1' })
      .read('b', 'tip_drop', drop, 'mm', { set: '1' })
      .findings().flex!.cables[0]!.droops[0]!;

  it('never asks for more than the piece has', () => {
    const droop = bent('320', '1');
    expect(droop.better_overhang_mm).toBeNull();
    expect(droop.text).toContain('too short');
  });

  it('is not given where a reading cannot be of this piece', () => {
    expect(bent('9999', '30', 'in')).toMatchObject({ better_overhang_mm: null, bending_stiffness: null });
    expect(bent('9999', '30', 'in').text).toContain('more than the piece is long (370 mm)');
    expect(bent('300', '900').text).toContain('further than the 300 mm');
  });
});
