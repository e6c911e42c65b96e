import { describe, expect, it } from 'vitest';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { trialContent } from '../../../src/trial/content.ts';
import { fold } from '../../../src/trial/fold.ts';
import { entry, onePiece, reading } from '../../trial/entries.ts';

const NOW = '2026-11-25T12:00:00.000Z';
const text = new TextEncoder();

const brought = (files: ReadonlyMap<string, string>) =>
  readPackage(new Map([...files].map(([name, words]) => [name, text.encode(words)])), { now: NOW });

const ENTRIES = [
  ...onePiece(),
  entry('cable', { cable: 'twice', maker: 'Quill', claimed_size: '2 AWG', claimed_metal: 'OFC' }),
  entry('cable', { cable: 'sedge', maker: 'Sedge', claimed_size: '4 AWG', claimed_metal: 'OFC' }),
  entry('specimen', { specimen: 't1', cable: 'twice', cut_length: '300', kind: 'apart' }),
  entry('evidence', { cable: 'quill', look: 'magnet', seen: 'pulls', at: '2026-10-03T11:00:00Z' }),
  entry('evidence', { evidence: 'e2', cable: 'quill', look: 'magnet', seen: 'no pull', at: '2026-10-03T11:05:00Z' }),
  reading('r1', 'conductor_mass', '91.2', 'g', { at: '2026-10-03T11:10:00Z' }),
  entry('withdrawal', {
    withdrawal: 'w1',
    about: 'cable',
    which: 'twice',
    why: 'listed twice',
    at: '2026-10-03T12:00:00Z',
  }),
  entry('withdrawal', {
    withdrawal: 'w2',
    about: 'evidence',
    which: 'e2',
    why: 'wrong cable',
    at: '2026-10-03T12:01:00Z',
  }),
];

describe('a package of a trial with things put aside', () => {
  it('carries all rows and the acts, and reads back to the same trial', () => {
    const trial = fold(ENTRIES);
    const files = writePackage(trial);
    expect(
      files
        .get('cables.csv')!
        .split('\n')
        .map((line) => line.split(',')[0]),
    ).toEqual(['cable', 'quill', 'twice', 'sedge', '']);
    expect(files.get('withdrawals.csv')).toContain('listed twice');
    const { entries, refusals } = brought(files);
    expect(refusals).toEqual([]);
    const again = fold(entries);
    expect(trialContent(again)).toBe(trialContent(trial));
    expect(again.aside.map(({ kind, row, why }) => [kind, row.cable, why])).toEqual(
      trial.aside.map(({ kind, row, why }) => [kind, row.cable, why]),
    );
    expect(again.cables.map(({ cable }) => cable)).toEqual(['quill', 'sedge']);
    expect([...writePackage(again)]).toEqual([...files]);
  });

  it.each([
    [{ about: 'cable', why: 'x' }, 'which'],
    [{ about: 'house', which: 'a', why: 'x' }, 'about'],
    [{ about: 'cable', which: 'a' }, 'why'],
    [{ about: 'cable', which: 'a', why: 'x', act: 'forgotten' }, 'act'],
  ])('refuses the row %j', (row, column) => {
    const files = writePackage(
      fold([...ENTRIES, entry('withdrawal', { withdrawal: 'w3', ...(row as Record<string, string>) })]),
    );
    const names = ['withdrawal', 'act', 'about', 'which', 'why'] as const;
    const cells = names.map((name) => (name === 'withdrawal' ? 'w3' : ((row as Record<string, string>)[name] ?? '')));
    files.set('withdrawals.csv', `${names.join(',')}\n${cells.join(',')}\n`);
    expect(brought(files).refusals.map((refused) => refused.column)).toEqual([column]);
  });
});
