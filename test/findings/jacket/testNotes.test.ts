import { describe, expect, it } from 'vitest';
import { assayTable } from '../../../src/report/text/assayTable.ts';
import { Bench, codes } from '../bench.ts';

type Cells = Readonly<Record<string, string>>;

function bench(): Bench {
  const b = new Bench().carefulTools().cable('a', '2 AWG', 'OFC');
  for (const piece of ['a1', 'a2', 'a3']) b.piece(piece, 'a', { kind: 'abuse' });
  return b;
}

const scrape = (b: Bench, specimen: string, amount: string, outcome = 'failed') =>
  b.say('endurance', { specimen, test: 'scrape', amount, unit: 'strokes', outcome });
const soaked = (b: Bench, specimen: string, more: Cells = {}) =>
  b.say('endurance', { specimen, test: 'fluid: diesel', amount: '20', unit: 'h', outcome: 'survived', ...more });

describe('what has to be read beside a result', () => {
  it('names pieces that another test had used, beside the later test, in the warnings and in the terminal', () => {
    const b = bench();
    scrape(b, 'a1', '100');
    scrape(b, 'a2', '120');
    soaked(b, 'a2', { amount_by: 'clock', temperature: '21.5', temperature_unit: 'C' });
    soaked(b, 'a3', { amount_by: 'clock', temperature: '21.5', temperature_unit: 'C' });
    const found = b.findings();
    const [first, later] = found.jacket!.endurance;
    expect(first.notes).toEqual([]);
    expect(later.notes).toEqual([
      'a2 had been through the scrape test before: a used jacket may fail sooner, so that piece does not compare with fresh ones.',
      'The hours were clocked.',
    ]);
    expect(codes(found)).toContain('endurance-piece-used-before');
    const lines = assayTable(found, { width: 100, ascii: false });
    expect(lines).toContain('Fluid: diesel, 20 h, pieces at 21.5 °C');
    expect(lines.replace(/\s+/g, ' ')).toContain('a2 had been through the scrape test before');
  });

  it('says of pieces that were all used before that they lean on both tests', () => {
    const b = bench();
    scrape(b, 'a1', '100');
    soaked(b, 'a1', { amount_by: 'clock' });
    expect(b.findings().jacket!.endurance[1].notes[0]).toMatch(/^Every piece had been through the scrape test before/);
  });

  it.each([
    [['planned', 'planned'], ['The hours are as planned; the clock of the test did not run that long.']],
    [['planned', 'clock'], ['The hours are 1 of 2 clocked and 1 of 2 as planned.']],
    [['', ''], ['The hours are as written down, without a word on how they are known.']],
  ])('says how hours are known: %j', (how, notes) => {
    const b = bench();
    how.forEach((amount_by, i) => {
      soaked(b, `a${i + 1}`, amount_by === '' ? {} : { amount_by });
    });
    expect(b.findings().jacket!.endurance[0].notes).toEqual(notes);
  });

  it('asks for the name of a fluid', () => {
    const b = bench();
    b.say('endurance', { specimen: 'a1', test: 'fluid', amount: '20', unit: 'h', outcome: 'survived' });
    expect(codes(b.findings())).toContain('endurance-fluid-not-named');
    expect(codes(soaked(bench(), 'a1').findings())).not.toContain('endurance-fluid-not-named');
  });

  it('takes ten days for 240 hours', () => {
    const b = bench();
    const heat = (specimen: string, amount: string, unit: string) =>
      b.say('endurance', { specimen, test: 'heat ageing', amount, unit, outcome: 'survived' });
    heat('a1', '240', 'h');
    heat('a2', '10', 'd');
    const { endurance } = b.findings().jacket!;
    expect(endurance.map((t) => [t.exposure, t.unit, t.cables[0].n])).toEqual([[240, 'h', 2]]);
  });
});
