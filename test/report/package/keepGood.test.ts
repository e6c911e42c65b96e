import { describe, expect, it } from 'vitest';
import { fold } from '../../../src/trial/fold.ts';
import { GOOD, read, sentences } from './files.ts';

describe('the good rows, when they are asked for', () => {
  const files = {
    ...GOOD,
    'cables.csv': 'cable,claimed_size\nquill,2 AWG\nsaltmarsh,\n',
    'specimens.csv': 'specimen,cable,cut_from\nq1,quill,\ns1,saltmarsh,\ns2,quill,s1\n',
  };

  it('come in without the refused ones and what hangs on them', () => {
    const reading = read(files, { keepGood: true });
    expect(sentences(reading)).toEqual([
      'cables.csv, line 3, claimed_size: found nothing; expected size exactly as printed on the label.',
      'specimens.csv, line 3, cable: found "saltmarsh", whose own row in cables.csv was refused; expected a name that cables.csv describes.',
      'specimens.csv, line 4, cut_from: found "s1", whose own row in specimens.csv was refused; expected a name that specimens.csv describes.',
      'readings.csv, line 3, specimen: found "s1", whose own row in specimens.csv was refused; expected a name that specimens.csv describes.',
    ]);
    const trial = fold(reading.entries);
    expect(trial.cables.map(({ cable }) => cable)).toEqual(['quill']);
    expect(trial.specimens.map(({ specimen }) => specimen)).toEqual(['q1']);
    expect(trial.readings.map((one) => one.reading)).toEqual(['r1']);
  });

  it('do not hang on a table that is missing', () => {
    const { 'specimens.csv': _, ...without } = GOOD;
    const reading = read(without, { keepGood: true });
    expect(sentences(reading)).toEqual([
      'specimens.csv: found no such file, or no rows in it; expected a row for each specimen that readings.csv names.',
    ]);
    expect(new Set(reading.entries.map(({ kind }) => kind))).toEqual(new Set(['trial', 'cable', 'instrument']));
  });

  it('keep their ids when the others are put right later', () => {
    const before = read(files, { keepGood: true }).entries.map(({ id }) => id);
    const after = read({ ...files, 'cables.csv': 'cable,claimed_size\nquill,2 AWG\nsaltmarsh,2 AWG\n' });
    expect(after.refusals).toEqual([]);
    expect(after.entries.map(({ id }) => id)).toEqual(expect.arrayContaining(before));
  });
});
