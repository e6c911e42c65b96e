import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { contentHash } from '../../../src/trial/content.ts';
import { fold } from '../../../src/trial/fold.ts';
import { read, sentences } from './files.ts';

const DEMO = new URL('../../../demo/', import.meta.url);

it('reads the invented trial without a word, and writes it back with the same content', () => {
  const names = readdirSync(DEMO).filter((name) => /\.(csv|json|md)$/.test(name));
  const files = Object.fromEntries(names.map((name) => [name, new Uint8Array(readFileSync(new URL(name, DEMO)))]));
  const reading = read(files);
  expect([sentences(reading), reading.notes]).toEqual([[], []]);
  const trial = fold(reading.entries);
  expect(trial.cables.length).toBeGreaterThan(3);
  expect(trial.remarks).toEqual([]);
  const again = fold(read(Object.fromEntries(writePackage(trial))).entries);
  expect(contentHash(again)).toBe(contentHash(trial));
  expect(again).toEqual(trial);
});
