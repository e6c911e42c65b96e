import { describe, expect, it } from 'vitest';
import { awgArea } from '../../src/units/gauge.ts';
import { readSizeText, type SizeClaim } from '../../src/units/sizeText.ts';
import { expectClose } from '../tolerance.ts';

function read(text: string): SizeClaim {
  const outcome = readSizeText(text);
  if (!outcome.ok) throw new Error(`"${text}" was refused: found ${outcome.found}`);
  return outcome.value;
}

type GaugeRow = readonly [text: string, system: 'AWG' | 'gauge', awg: number, atLeast?: boolean];

const GAUGES: readonly GaugeRow[] = [
  ['2 AWG', 'AWG', 2],
  ['2AWG', 'AWG', 2],
  ['2-AWG', 'AWG', 2],
  ['AWG 2', 'AWG', 2],
  ['AWG2', 'AWG', 2],
  ['#2 AWG', 'AWG', 2],
  ['No. 2 AWG', 'AWG', 2],
  ['1/0 AWG', 'AWG', 0],
  ['1 / 0 awg', 'AWG', 0],
  ['1/O AWG', 'AWG', 0],
  ['0 AWG', 'AWG', 0],
  ['00 AWG', 'AWG', -1],
  ['4/0 AWG', 'AWG', -3],
  ['16 AWG', 'AWG', 16],
  ['true AWG 2', 'AWG', 2],
  ['2 true AWG', 'AWG', 2],
  ['2 full AWG', 'AWG', 2],
  ['1/0 true spec', 'AWG', 0],
  ['4 gauge full spec', 'AWG', 4],
  ['Full-spec 4 ga', 'AWG', 4],
  ['0 gauge, true AWG', 'AWG', 0],
  ['4 gauge (4 AWG)', 'AWG', 4],
  ['true spec 2', 'AWG', 2],
  ['oversized 2 AWG', 'AWG', 2, true],
  ['2 AWG minimum', 'AWG', 2, true],
  ['≥ 2 AWG', 'AWG', 2, true],
  ['2 AWG welding cable', 'AWG', 2],
  ['2 AWG, 665/30', 'AWG', 2],
  ['2 AWG (665 x 30 AWG)', 'AWG', 2],
  ['2 AWG 12 mm OD', 'AWG', 2],
  ['12 V 2 AWG', 'AWG', 2],
  ['#2', 'gauge', 2],
  ['2 gauge', 'gauge', 2],
  ['2 GA.', 'gauge', 2],
  ['4g', 'gauge', 4],
  ['0 ga', 'gauge', 0],
  ['0 gauge', 'gauge', 0],
  ['1/0 gauge', 'gauge', 0],
  ['16 gauge', 'gauge', 16],
  ['gauge 4', 'gauge', 4],
  ['size 2', 'gauge', 2],
  ['SAE 2', 'gauge', 2],
  ['2', 'gauge', 2],
  ['0', 'gauge', 0],
  ['00', 'gauge', -1],
  ['000', 'gauge', -2],
  ['0000', 'gauge', -3],
  ['2/0', 'gauge', -1],
  ['3/0', 'gauge', -2],
  ['4/0', 'gauge', -3],
  ['4/0 cable', 'gauge', -3],
  ['oversized 0 gauge', 'gauge', 0, true],
  ['over-sized 4 ga', 'gauge', 4, true],
  ['2 gauge low spec', 'gauge', 2],
];

describe('readSizeText', () => {
  it.each(GAUGES.map((row) => ({ text: row[0], row })))('$text', ({ row: [text, system, awg, atLeast = false] }) => {
    const claim = read(text);
    expect(claim).toMatchObject({ system, awg, atLeast, vague: system === 'gauge', also: [] });
    expectClose(claim.area!, awgArea(awg), { relative: 1e-15 });
  });

  it.each([
    ['250 kcmil', 'kcmil', 126.6768697743744, false],
    ['250 MCM', 'kcmil', 126.6768697743744, false],
    ['66,360 cmil', 'kcmil', 33.62510831, false],
    ['211600 circular mils', 'kcmil', 107.2193025770305, false],
    ['35 mm2', 'mm2', 35, false],
    ['35mm²', 'mm2', 35, false],
    ['35 mm ²', 'mm2', 35, false],
    ['16 sq mm', 'mm2', 16, false],
    ['16 sq. mm', 'mm2', 16, false],
    ['16 SQMM', 'mm2', 16, false],
    ['16 square millimetres', 'mm2', 16, false],
    ['2,5 mm2', 'mm2', 2.5, false],
    ['35 mm', 'mm2', 35, true],
    ['35mm cable', 'mm2', 35, true],
  ] as const)('%s → %s, %s mm²', (text, system, mm2, vague) => {
    const claim = read(text);
    expect(claim).toMatchObject({ system, awg: null, vague, also: [] });
    expectClose(claim.area! * 1e6, mm2, { relative: 1e-9 });
  });

  it('counts the first of two sizes, keeps both and says so', () => {
    const claim = read('50mm2 / 1/0 AWG');
    expect(claim).toMatchObject({ system: 'mm2', area: 50e-6 });
    expect(claim.also).toMatchObject([{ system: 'AWG', awg: 0 }]);
    expect(claim.readAs).toMatch(/also says 1\/0 AWG.*first size counts/);
    for (const text of ['1/0AWG/50mm2', '1/0 AWG (50 mm²)', 'AWG 1/0 50mm2']) {
      expect(read(text), text).toMatchObject({ system: 'AWG', awg: 0, also: [{ system: 'mm2', area: 50e-6 }] });
    }
    expect(read('1/0 gauge 8 AWG')).toMatchObject({ system: 'gauge', awg: 0, also: [{ system: 'AWG', awg: 8 }] });
  });

  it('keeps the words beside the size', () => {
    expect(read('Oversized 0 gauge TRUE SPEC welding cable').words).toEqual([
      'oversized',
      'true spec',
      'welding',
      'cable',
    ]);
    expect(read('2 AWG').words).toEqual([]);
  });

  it('says how the text was understood, without negative gauges', () => {
    expect(read('0 AWG').readAs).toBe('1/0 AWG, 53.48 mm² nominal');
    expect(read('4/0').readAs).toMatch(/^gauge 4\/0; the label does not name a standard/);
    expect(read('oversized 2 AWG').readAs).toMatch(/^at least 2 AWG/);
    expect(read('35 mm').readAs).toMatch(/does not say square/);
  });

  it.each([
    '',
    '  ',
    'hello',
    '35',
    '250',
    '2.5 AWG',
    '99 AWG',
    '5/0',
    '0/0',
    '12 V',
    '1064 strands',
    '-2',
    'thick',
    'x'.repeat(200),
  ])('refuses "%s" with examples', (text) => {
    const outcome = readSizeText(text);
    expect(outcome).toMatchObject({ ok: false, expected: expect.stringMatching(/2 AWG.*35 mm².*250 kcmil/) });
  });

  it.each([
    '40 000 mm2',
    '40 000 mm²',
    '40,000 mm2',
    '40000 mm2',
    '1 200 sq mm',
    '1500 mm²',
    '3000 kcmil',
    '3 000 MCM',
    '9 000 000 cmil',
  ])('asks whether "%s" can be, and takes no part of it for a size', (text) => {
    const outcome = readSizeText(text);
    expect(outcome).toMatchObject({ ok: false, advice: expect.stringMatching(/so much\?.*1000 mm² or 2000 kcmil/) });
  });

  it('reads digits in groups of three as one number', () => {
    expect(read('1 000 kcmil').readAs).toMatch(/^1000 kcmil/);
    expect(read('1 000 mm2')).toMatchObject({ system: 'mm2', also: [] });
    expect(read('1/0 100 mm2')).toMatchObject({ awg: 0, also: [{ system: 'mm2' }] });
    expect(read('66 360 cmil')).toMatchObject({ system: 'kcmil' });
  });

  it('asks nothing of a size that was read', () => {
    expect(read('2 AWG, 40 000 mm2').readAs).toMatch(/^2 AWG/);
    const outcome = readSizeText('hello');
    expect(outcome.ok ? '' : outcome.advice).toBeUndefined();
  });

  it('tells why a bare large number is not read', () => {
    const outcome = readSizeText('35');
    expect(outcome.ok ? '' : outcome.advice).toMatch(/gauge, mm² or kcmil/);
  });
});
