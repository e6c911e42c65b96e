import { describe, expect, it } from 'vitest';
import { changedTables } from '../../../src/report/package/changedTables.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { fold } from '../../../src/trial/fold.ts';
import { onePiece, reading } from '../../trial/entries.ts';
import { bytes, NOW } from './files.ts';

const files = writePackage(fold([...onePiece(), reading('r1', 'conductor_mass', '93.1', 'g')]));
const descriptor = files.get('datapackage.json')!;

/** The files as they are written again after somebody changed one of them. */
function rewritten(change: (files: Map<string, string>) => void): Map<string, string> {
  const copy = new Map(files);
  change(copy);
  return writePackage(fold(readPackage(bytes(Object.fromEntries(copy)), { now: NOW }).entries));
}

const edit = (file: string, from: string | RegExp, to: string) => (copy: Map<string, string>) => {
  const text = copy.get(file)!.replace(from, to);
  expect(text).not.toBe(copy.get(file));
  copy.set(file, text);
};

describe('which tables were changed after they were written', () => {
  it('none when nothing was', () => {
    expect(
      changedTables(
        descriptor,
        rewritten(() => {}),
      ),
    ).toEqual([]);
  });

  it('none when another program saved one anew', () => {
    expect(changedTables(descriptor, rewritten(edit('readings.csv', /\n/g, '\r\n')))).toEqual([]);
    expect(changedTables(descriptor, rewritten(edit('readings.csv', '93.1', '"93.1"')))).toEqual([]);
  });

  it('the one with another cell', () => {
    expect(changedTables(descriptor, rewritten(edit('readings.csv', '93.1', '93.2')))).toEqual(['readings.csv']);
  });

  it('one that is gone, and one that is new', () => {
    expect(
      changedTables(
        descriptor,
        rewritten((copy) => copy.delete('readings.csv')),
      ),
    ).toEqual(['readings.csv']);
    const more = rewritten((copy) => copy.set('plan.csv', 'setting,value\nmethods,assay\n'));
    expect(changedTables(descriptor, more)).toEqual(['plan.csv']);
  });

  it.each([
    ['no JSON', 'hello'],
    ['nothing', '{}'],
    ['no list', '{"resources": 3}'],
    ['a table without a hash', '{"resources": [{"path": "cables.csv"}]}'],
    ['a hash of another kind', '{"resources": [{"path": "cables.csv", "hash": "d41d8cd98f00b204e9800998ecf8427e"}]}'],
  ])('nobody can tell when the descriptor holds %s', (_, text) => {
    expect(changedTables(text, files)).toBeNull();
  });
});
