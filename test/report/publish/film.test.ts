/** What the filming clock says, as a cue sheet, chapters and subtitles; and what to film of each method. */
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { METHODS } from '../../../src/report/publish/cards/methods.ts';
import {
  chapterLines,
  cueSheet,
  cuesOf,
  secondsOf,
  subtitles,
  timecodeText,
} from '../../../src/report/publish/film/cues.ts';
import { SHOTS } from '../../../src/report/publish/film/shotLists.ts';
import { fold } from '../../../src/trial/fold.ts';
import { Bench } from '../../findings/bench.ts';

function filmed() {
  const b = new Bench().carefulTools().cable('x', '2 AWG', 'OFC').piece('p', 'x');
  const read = (reading: string, quantity: string, value: string, unit: string, timecode: string) =>
    b.say('reading', {
      reading,
      specimen: 'p',
      quantity,
      value,
      unit,
      instrument: 'scale',
      footage: '=take 1',
      timecode,
    });
  read('a', 'conductor_mass', '95.6', 'g', '1:02:31');
  read('b', 'conductor_mass', '95.7', 'g', '1:02:33');
  read('c', 'jacket_mass', '20', 'g', '12:05');
  read('d', 'jacket_mass', '21', 'g', '12:09');
  b.say('strike', { reading: 'd', why: 'wrong piece' });
  b.say('note', {
    note: 'n',
    about: 'specimen',
    which: 'p',
    text: '<i>a strand fell</i>\nhere',
    timecode: '12:07',
    footage: '=take 1',
  });
  return fold(b.entries);
}

describe('cues', () => {
  const cues = cuesOf(filmed());

  it.each([
    ['12:31', 751],
    ['1:02:31', 3751],
    ['0:00', 0],
    ['12:3', null],
    ['', null],
    ['noon', null],
  ])('reads %s', (typed, seconds) => expect(secondsOf(typed)).toBe(seconds));

  it('gives seconds back as they are typed', () => {
    for (const s of [0, 59, 60, 751, 3599, 3600, 3751, 36_000]) expect(secondsOf(timecodeText(s))).toBe(s);
  });

  it('are in the order of the recording, without what was struck', () => {
    expect(cues.map(({ at }) => at)).toEqual([725, 727, 3751, 3753]);
  });

  it('are a table in which no cell runs', () => {
    const rows = Papa.parse<string[]>(cueSheet(cues).trim()).data;
    expect(rows[0]).toEqual(['footage', 'timecode', 'what', 'read']);
    expect(rows[1]![0]).toBe("'=take 1");
    expect(rows).toHaveLength(5);
  });

  it('make a chapter wherever something else begins, the first at 0:00', () => {
    expect(
      chapterLines(cues)
        .split('\n')
        .map((line) => line.split(' ')[0]),
    ).toEqual(['0:00', '12:05', '12:07', '1:02:31']);
    expect(chapterLines([])).toBe('');
  });

  it('make subtitles that end before the next begins and hold no markup', () => {
    const blocks = subtitles(cues).trim().split('\n\n');
    expect(blocks[0]).toMatch(/^1\n00:12:05,000 --> 00:12:07,000\nMass of the jacket of p: 20\sg$/);
    expect(blocks[1]).toBe('2\n00:12:07,000 --> 00:12:11,000\nNote: ‹i›a strand fell‹/i› here');
    expect(blocks[3]).toContain('01:02:33,000 --> 01:02:37,000');
  });
});

it('every method has its shots', () => {
  for (const { method } of METHODS) expect(SHOTS[method]!.length, method).toBeGreaterThan(1);
});
