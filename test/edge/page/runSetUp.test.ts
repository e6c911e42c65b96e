import { afterEach, describe, expect, it, vi } from 'vitest';
import { wrongSetUp } from '../../../src/edge/page/store/jacket/runRow.ts';
import {
  addStrokes,
  freshRun,
  hoursBy,
  type Run,
  readRun,
  roomFor,
} from '../../../src/edge/page/store/jacket/runState.ts';
import { inUnitOf, setUpInUnits } from '../../../src/edge/page/store/jacket/setUpUnits.ts';
import { mindLine } from '../../../src/methods/jacket/protocols/mindLine.ts';
import { PROTOCOLS, protocolOf } from '../../../src/methods/jacket/protocols/protocols.ts';

const WORDS = { exposure: 'How much', stress: 'Load', every: 'Looked at every', stopAt: 'Ended at' };
const of = (name: string, part: Partial<Run> = {}): Run => ({ ...freshRun(protocolOf(name)), ...part });

afterEach(() => vi.unstubAllGlobals());

describe('figures of a set-up with a unit behind them', () => {
  it.each([
    ['7', 'N', '7'],
    ['2 lbf', 'N', '8.89644'],
    ['1.5 lb', 'N', '6.67233'],
    ['1 kg', 'N', '9.80665'],
    ['10 d', 'h', '240'],
    ['90 min', 'h', '1.5'],
    ['2 min', 's', '120'],
    ['1/8 in', 'mm', '3.175'],
    ['572 F', 'C', '300'],
    ['300 strokes', 'strokes', '300'],
    ['', 'N', ''],
  ])('%s where %s is kept is %s', (text, unit, number) => {
    expect(inUnitOf(text, unit, 'Load')).toEqual({ ok: true, text: number });
  });

  it.each([
    ['thick', 'mm', 'Load: found "thick"; expected a number in mm. One in mm, cm or in is converted.'],
    ['7 stone', 'N', 'Load: found "7 stone"; expected a number in N. One in kgf, gf or lbf is converted.'],
    ['7 mm', 'N', 'Load: found "7 mm"; expected a number in N. One in kgf, gf or lbf is converted.'],
    ['5 min', 'strokes', 'Load: found "5 min"; expected a plain number of strokes.'],
  ])('%s where %s is kept says what to type', (text, unit, sentence) => {
    expect(inUnitOf(text, unit, 'Load')).toEqual({ ok: false, sentence });
  });

  it('keeps an exposure of one’s own in hours, whatever it was counted in', () => {
    const run = of('heat ageing', { unit: 'days', exposure: '10' });
    expect(setUpInUnits(run, WORDS)).toMatchObject({ changed: { unit: 'h', exposure: '240' }, wrong: [] });
  });

  it('says everything that cannot be, and each once', () => {
    // A device names itself by what points at its screen.
    vi.stubGlobal('matchMedia', () => ({ matches: false }));
    const typed = of('scrape', { stress: '-7', stressUnit: 'N', stopAt: 'many', temperature: 'hot' });
    const { changed, wrong } = setUpInUnits(typed, WORDS);
    const all = [...wrong, ...wrongSetUp({ ...typed, ...changed })];
    expect(all.map((sentence) => sentence.split(',')[0]!.split(';')[0])).toEqual([
      'Ended at: found "many"',
      expect.stringMatching(/^Load: found "-7/),
      expect.stringMatching(/^Temperature: found "hot/),
    ]);
    const sound = { ...typed, stress: '7', stopAt: '300', temperature: '20' };
    expect([setUpInUnits(sound, WORDS).wrong, wrongSetUp(sound)]).toEqual([[], []]);
    // One that stops at an end says what is wrong beside it once, and not for each of its two rows.
    expect(wrongSetUp({ ...sound, stress: '-7' })).toHaveLength(1);
    const once = of('fluid', { test: 'fluid: diesel', exposure: 'long', temperature: 'hot' });
    const asked = setUpInUnits(once, WORDS);
    expect([...asked.wrong, ...wrongSetUp({ ...once, ...asked.changed })]).toEqual([
      expect.stringMatching(/^How much: found "long"/),
      expect.stringMatching(/^Temperature: found "hot/),
    ]);
  });
});

describe('a count with an end fixed beforehand', () => {
  it('stops there', () => {
    let run = addStrokes(of('scrape', { stopAt: '300' }), 295);
    expect(roomFor(run, 10)).toBe(5);
    run = addStrokes(run, roomFor(run, 10));
    expect([roomFor(run, 1), roomFor(run, 10)]).toEqual([0, 0]);
    expect(roomFor({ ...run, stopAt: '' }, 10)).toBe(10);
  });
});

describe('the hours of an exposure', () => {
  const HOUR = 3_600_000;
  it.each([
    ['clock at nothing', { ran: 0 }, null],
    ['clock too short', { ran: 3 * HOUR }, null],
    ['clock ran', { ran: 20 * HOUR }, 'clock'],
    ['known otherwise', { ran: 0, hoursKnown: 'planned' }, 'planned'],
  ] as const)('%s', (_, part, by) => {
    expect(hoursBy(of('fluid', { exposure: '20', ...part }), 0)).toBe(by);
  });
});

describe('a run', () => {
  it('starts with no temperature, and one kept before there was that word is read all the same', () => {
    expect(freshRun(protocolOf('scrape')).temperature).toBe('');
    const { temperature: _, hoursKnown: __, ...old } = { ...of('scrape'), counted: 7 };
    expect(readRun(JSON.stringify(old))).toMatchObject({ counted: 7, temperature: '', hoursKnown: '' });
  });

  it('has a line of cautions for every described test and for one’s own', () => {
    for (const { name } of PROTOCOLS) expect(mindLine(name), name).not.toBe(mindLine('dog bites'));
    expect(mindLine('dog bites')).toMatch(/never from a vehicle battery/);
    expect(mindLine('fluid: diesel')).toMatch(/gloves/);
  });
});
