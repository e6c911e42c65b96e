import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../src/findings/findings.ts';
import { quickEntries, type SixFields } from '../../src/findings/quick.ts';
import { fold } from '../../src/trial/fold.ts';

const BLANK: SixFields = { label: '', mass: '', length: '', ohms: '', contacts: '', temperature: '' };

function answer(fields: Partial<SixFields>) {
  let n = 0;
  const newId = () => `00000000-0000-7000-8000-${(++n).toString(16).padStart(12, '0')}`;
  const entries = quickEntries({ ...BLANK, ...fields }, { trial: 'one', at: '2026-11-02T09:00:00Z', newId });
  const findings = findingsOf(fold(entries), { draws: 0 });
  return { findings, cable: findings.cables[0] };
}

const HONEST = {
  label: '1/0 AWG OFC',
  mass: '515 g',
  length: '1000 mm',
  ohms: '0.3170 mohm',
  contacts: '1000 mm',
  temperature: '20 C',
};

describe('readings that contradict each other grossly', () => {
  it.each([
    ['milliohms typed as ohms', { ohms: '0.3170 ohm' }, 'resistance', /milliohms entered as ohms/],
    ['millimetres typed as inches', { contacts: '1000 in' }, 'resistance', /inches/],
    ['a slipped decimal', { ohms: '3.170 mohm' }, 'resistance', /slipped decimal/],
  ])('%s: nothing is judged, and the slip is named', (_, slip, recheck, words) => {
    const { cable, findings } = answer({ ...HONEST, ...slip });
    expect(cable.conductor_area).toBeNull();
    expect(cable.claims.length).toBeGreaterThan(2);
    for (const claim of cable.claims) expect(claim.outcome, claim.reading).toBe('not settled');
    expect(cable.consistency?.recheck).toBe(recheck);
    expect(cable.sentence).toMatch(/^The readings contradict each other: /);
    expect(cable.sentence).toMatch(words);
    expect(cable.next_reading?.reading).toBe(recheck);
    expect(findings.sentence).not.toContain('Nothing has been measured');
  });

  it('leaves the honest cable alone', () => {
    const { cable } = answer(HONEST);
    expect(cable.claims[0]).toMatchObject({ reading: 'copper held', outcome: 'meets' });
    expect(cable.sentence).not.toContain('contradict');
  });

  it('is not called for a poor clamp: that is weighed, and the finding stands', () => {
    const { cable } = answer({ ...HONEST, ohms: '0.400 mohm' });
    expect(cable.conductor_area).not.toBeNull();
  });
});

describe('lengths typed without their zeros', () => {
  it('1 m is taken as read to 5 mm, and it is said', () => {
    const fine = answer(HONEST).cable;
    const coarse = answer({ ...HONEST, length: '1 m', contacts: '1 m' }).cable;
    const width = (c: typeof fine) => c.conductor_area!.interval[1] - c.conductor_area!.interval[0];
    expect(width(coarse)).toBeLessThan(1.5 * width(fine));
    expect(coarse.assumed.join(' ')).toContain('"1 m" was taken as read to 5 mm');
    expect(fine.assumed.join(' ')).not.toContain('taken as read');
  });
});

describe('what one cable is said to be', () => {
  it('a vague label: the copper of an AWG cable of that number', () => {
    const { cable } = answer({ ...HONEST, label: '4 ga', mass: '54 g', length: '300 mm', ohms: '', contacts: '' });
    expect(cable.sentence).toContain('of the copper that an AWG cable of that number holds');
  });

  it('far more than a label can mean: the readings are questioned, not praised', () => {
    const { cable } = answer({ ...BLANK, label: '1/0 AWG OFC', mass: '515 g', length: '100 mm' });
    expect(cable.sentence).toContain('check the mass (a tenth of it?) first');
  });

  it.each([
    [
      'contacts too near, no mass read',
      { ohms: '0.76 mohm', contacts: '1 3/8 in' },
      'check the length between the voltage contacts, 35 mm, first.',
    ],
    ['ounces typed for grams', { mass: '3.37 g', length: '300 mm' }, 'check the mass (ounces for grams?) first.'],
    [
      'nothing that one slip explains',
      { mass: '18 g', length: '300 mm' },
      'check the mass and the length that was weighed, and their units.',
    ],
  ])('far less, by %s: only what was used is named', (_what, typed, words) => {
    const { sentence } = answer({ ...BLANK, label: '2 AWG OFC', ...typed }).cable;
    expect(sentence).toContain(words);
    if (!('mass' in typed)) expect(sentence).not.toMatch(/mass|weigh/);
    if (!('ohms' in typed)) expect(sentence).not.toMatch(/ohms|contacts/);
  });

  it('clad metal has no size that it meets, but a copper gauge that it conducts like', () => {
    const { cable } = answer({ ...HONEST, label: '2 AWG OFC', mass: '122 g', ohms: '0.80 mohm' });
    expect(cable.metal_found).toBe('copper-clad aluminium');
    expect(cable.nearest_size_met).toBeNull();
    expect(cable.conducts_like).toMatch(/^conducts like about [34]\.\d AWG copper$/);
  });

  it('a resistance between two limits: both limits are shown and no chance is given', () => {
    const { cable } = answer({ ...HONEST, label: '1/0 AWG OFC', mass: '495 g', ohms: '0.340 mohm' });
    const claim = cable.claims.find((c) => c.reading === 'AWG by resistance')!;
    expect(claim.asks).toMatch(/^≤ 0\.329 to 0\.352 mΩ\/m, by construction$/);
    expect(claim).toMatchObject({ outcome: 'not settled', probability_met: null });
  });
});
