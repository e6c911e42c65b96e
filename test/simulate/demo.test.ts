import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { metalArea } from '../../demo/make/benchDay.ts';
import { demoFiles, demoTables } from '../../demo/make/demoTrial.ts';
import { TRUTHS } from '../../demo/make/truths.ts';

const folder = join(import.meta.dirname, '../../demo');
/** mm² of 2 AWG: ASTM B258, diameter 0.2576 in. */
const TWO_AWG = 33.63;

describe('the demonstration trial', () => {
  it('is in the repository exactly as its generator writes it', () => {
    for (const [name, text] of demoFiles()) expect(readFileSync(join(folder, name), 'utf8'), name).toBe(text);
  });

  it('says that it is invented, in the trial and beside it', () => {
    expect(readFileSync(join(folder, 'trial.csv'), 'utf8')).toContain('invented');
    expect(readFileSync(join(folder, 'README.md'), 'utf8')).toContain('Everything in this folder is invented');
  });

  it('holds the cables that its story needs', () => {
    const share = new Map(TRUTHS.map((truth) => [truth.id, (metalArea(truth) * 1e6) / TWO_AWG]));
    const wanted: [string, number, number][] = [
      ['brackenfell', 1.02, 1.05],
      ['nine-elms', 1.0, 1.03],
      ['tollgate', 0.98, 1.02],
      ['harrow-sedge', 0.975, 0.995],
      ['quill', 0.83, 0.88],
      ['saltmarsh', 0.77, 0.81],
    ];
    for (const [id, low, high] of wanted) {
      expect(share.get(id), `${id}: share of 2 AWG`).toBeGreaterThan(low);
      expect(share.get(id), `${id}: share of 2 AWG`).toBeLessThan(high);
    }
  });

  it('cuts no more from a cable than was bought', () => {
    const { cables = [], specimens = [] } = demoTables();
    for (const { cable, bought_length } of cables) {
      const cut = specimens.filter((each) => each.cut_from === `${cable}-whole`);
      const millimetres = cut.reduce((sum, each) => sum + Number(each.cut_length), 0);
      expect(cut.length, cable).toBeGreaterThan(0);
      expect(millimetres, cable).toBeLessThan(Number(bought_length) * 1000);
    }
  });

  it('refers only to things that it describes', () => {
    const tables = demoTables();
    const ids = (rows: readonly Record<string, string>[] | undefined, column: string) =>
      new Set(rows?.map((each) => each[column]));
    const specimens = ids(tables.specimens, 'specimen');
    const instruments = ids(tables.instruments, 'instrument').add('');
    for (const reading of tables.readings ?? []) {
      expect(specimens, reading.reading).toContain(reading.specimen);
      expect(instruments, reading.reading).toContain(reading.instrument);
    }
    for (const { judgement, left, right } of tables.judgements ?? []) {
      expect(specimens, judgement).toContain(left);
      expect(specimens, judgement).toContain(right);
    }
    for (const specimen of tables.specimens ?? []) {
      expect(ids(tables.cables, 'cable'), specimen.specimen).toContain(specimen.cable);
      if (specimen.cut_from !== '') expect(specimens, specimen.specimen).toContain(specimen.cut_from);
    }
  });
});
