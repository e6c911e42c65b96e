import { describe, expect, it } from 'vitest';
import { demoFolder } from '../../../src/edge/files/projectRoot.ts';
import { readFolder } from '../../../src/edge/files/readFolder.ts';
import { doubtful } from '../../../src/findings/bench/doubts.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { fold } from '../../../src/trial/fold.ts';
import { entry } from '../../trial/entries.ts';
import { cable, trialOf } from '../plan/trials.ts';

const piece = (name: string, of: string) =>
  entry('specimen', { specimen: name, cable: of, kind: 'apart', cut_length: '300' });
const mass = (reading: string, value: string, specimen = 'a1', more = {}) =>
  entry('reading', { reading, specimen, quantity: 'conductor_mass', value, unit: 'g', ...more });
const answer = (which: string) => entry('note', { note: `n-${which}`, about: 'reading', which, answers: 'ten-times' });
const open = (...said: Entry[]) =>
  doubtful(trialOf(cable('harrow'), cable('sedge'), piece('a1', 'harrow'), piece('s1', 'sedge'), ...said)).flatMap(
    (each) => {
      const question = each.ask();
      return question === null ? [] : [`${each.reading.reading}: ${question.code}`];
    },
  );

describe('open doubts', () => {
  const first = mass('m1', '147.3');
  const slip = mass('m2', '1473');
  const [off, second, third] = [mass('m1', '125'), mass('m2', '147.3'), mass('m3', '147.5')];
  const cases: { what: string; said: Entry[]; open: string[] }[] = [
    { what: 'nothing read', said: [], open: [] },
    { what: 'sound repeats', said: [first, mass('m2', '147.31')], open: [] },
    { what: 'a slip after a sound one', said: [first, slip], open: ['m2: ten-times'] },
    { what: 'the same, answered', said: [first, slip, answer('m2')], open: [] },
    { what: 'another reading answered', said: [first, slip, answer('m1')], open: ['m2: ten-times'] },
    {
      what: 'a note about it that answers nothing',
      said: [first, slip, entry('note', { note: 'n', about: 'reading', which: 'm2', text: 'odd' })],
      open: ['m2: ten-times'],
    },
    { what: 'struck out', said: [first, slip, entry('strike', { reading: 'm2', why: 'digits' })], open: [] },
    { what: 'the first of three off', said: [off, second, third], open: ['m2: differ'] },
    {
      what: 'the first of three off and struck out',
      said: [off, second, third, entry('strike', { reading: 'm1', why: 'digits' })],
      open: [],
    },
    {
      what: 'measured again',
      said: [first, slip, mass('m3', '147.3', 'a1', { replaces: 'm2', why: 'slip' })],
      open: [],
    },
    { what: 'a piece of another cable', said: [first, mass('m2', '1473', 's1')], open: ['m2: ten-times'] },
  ];
  it.each(cases)('$what', ({ said, open: wanted }) => {
    expect(open(...said)).toEqual(wanted);
  });

  it('are few in a sound trial: all readings of the demo agree with their tools', () => {
    const { entries } = readPackage(readFolder(demoFolder()), { now: '2026-11-25T00:00:00.000Z' });
    const codes = doubtful(fold(entries)).map((each) => each.ask()?.code);
    expect(codes.length).toBeGreaterThan(100);
    expect(codes.filter((code) => code === 'differ')).toEqual([]);
  });

  it('ask anew only about what an earlier reading or a label may have changed', () => {
    const described = [cable('harrow'), piece('a1', 'harrow')];
    const keys = (...said: Entry[]) => doubtful(trialOf(...described, ...said)).map(({ key }) => key);
    const [a, b] = keys(first, slip);
    expect(keys(first, slip, mass('m3', '147'))).toMatchObject([a, b, expect.anything()]);
    const struck = keys(first, slip, entry('strike', { reading: 'm1', why: 'digits' }));
    expect(struck).toHaveLength(1);
    expect(struck[0]).not.toBe(b);
  });
});
