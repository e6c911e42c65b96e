import { describe, expect, it } from 'vitest';
import { questionOf } from '../../../src/edge/cli/runOptions.ts';
import { ampsOpened, ampsText } from '../../../src/edge/page/store/amps/ampsAddress.ts';
import { isAtStop, missingBefore } from '../../../src/edge/page/store/amps/heatingStop.ts';
import { behind } from '../../../src/edge/page/store/amps/logShift.ts';
import {
  type AnswerName,
  answersFrom,
  FIRST_ANSWERS,
  type RunAnswers,
} from '../../../src/edge/page/store/amps/runAnswers.ts';
import {
  nominalFor,
  overloadFrom,
  questionFrom,
  takenFrom,
  withRating,
} from '../../../src/edge/page/store/amps/runQuestion.ts';
import { following, understood, unreadable, withUnit } from '../../../src/edge/page/store/amps/runTyped.ts';
import { typedNumber } from '../../../src/edge/page/store/amps/typedNumber.ts';
import { nominalSizes } from '../../../src/methods/current/runCheck/nominal.ts';
import { overloadProblems, runProblems, smallOverload } from '../../../src/methods/current/runCheck/problems.ts';

const asked = (part: Partial<RunAnswers>): RunAnswers => ({ ...FIRST_ANSWERS, ...part });

describe('what is answered about a run', () => {
  it('is a question that can be answered as it stands at first', () => {
    expect(unreadable(FIRST_ANSWERS)).toEqual([]);
    expect(runProblems(questionFrom(FIRST_ANSWERS))).toEqual([]);
  });

  it.each<[string, Partial<RunAnswers>, (q: ReturnType<typeof questionFrom>) => number, number]>([
    ['metres', { length: '4,5' }, (q) => q.length, 4.5],
    ['feet', { length: '16', lengthUnit: 'ft' }, (q) => q.length, 4.8768],
    ['surroundings', { ambient: '80' }, (q) => q.surroundings.ambient, 353.15],
    ['surroundings below zero', { ambient: '−20' }, (q) => q.surroundings.ambient, 253.15],
    ['surroundings not known', { ambient: '' }, (q) => q.surroundings.ambient, 313.15],
    ['volts that may be lost', { drop: '0.63' }, (q) => q.allowedDrop, 0.05],
    ['per cent that may be lost', { drop: '3', dropUnit: '%' }, (q) => q.allowedDrop, 0.03],
    ['loss not known', { drop: '' }, (q) => q.allowedDrop, 0.5 / 12.6],
    ['watts with their efficiency', { load: 'W', steady: '600', efficiency: '80' }, (q) => q.load.efficiency, 0.8],
    ['watts without: nine tenths', { load: 'W', steady: '600' }, (q) => q.load.efficiency, 0.9],
    ['a peak whose length nobody knows', { peak: '150' }, (q) => q.load.peak!.seconds, 30],
    ['a peak whose share nobody knows', { peak: '150' }, (q) => q.load.peak!.share, 0.2],
    ['a joint of one’s own', { joint0: '2', ohms0: '0,25' }, (q) => q.joints[0]!.ohms, 0.00025],
    ['a joint as usual', { joint0: '2' }, (q) => q.joints[0]!.count, 2],
    ['peak', { peak: '150', peakSeconds: '5' }, (q) => q.load.peak!.seconds, 5],
    ['source', { supplyOhms: '4' }, (q) => q.supply.ohms.high, 0.004],
  ])('reads %s', (_what, part, of, wanted) => {
    expect(of(questionFrom(asked(part)))).toBeCloseTo(wanted, 9);
  });

  it('takes a range for the ohms of a body that nobody measured, and the measured ones where they are', () => {
    expect(questionFrom(asked({ back: 'body' })).back).toEqual({ kind: 'body unknown', low: 0.0003, high: 0.005 });
    expect(questionFrom(asked({ back: 'body', backOhms: '1.2' })).back).toEqual({
      kind: 'body measured',
      ohms: 0.0012,
    });
    expect(questionFrom(asked({ back: 'other', backSize: '4 AWG' })).back).toMatchObject({
      kind: 'other cable',
      length: 4,
    });
  });

  it('lets a measured drop stand only where one was typed', () => {
    expect(questionFrom(FIRST_ANSWERS).measured).toBeNull();
    expect(questionFrom(asked({ plus: '0.3', measuredAt: '80', installed: 'quill' })).measured).toEqual({
      plus: 0.3,
      minus: 0,
      current: 80,
      cable: 'quill',
    });
    expect(runProblems(questionFrom(asked({ plus: '0.3' }))).join(' ')).toContain('measured at 0 A');
  });

  it.each<[Partial<RunAnswers>, string]>([
    [{ source: 'mains' }, 'is fed from the mains; expected is direct current'],
    [{ resting: '61' }, 'has 61 V at rest; expected is direct current of at most 60 V'],
    [{ charging: '72' }, 'has 72 V while it charges, of 12.6 V at rest; expected is'],
    [{ length: '-2' }, 'a length above zero'],
    [{ steady: '0' }, 'The load is 0'],
    [{ peak: '10' }, 'swapped'],
    [{ drop: '20' }, 'above 0 and below 100 %'],
  ])('is refused in a sentence: %j', (part, words) => {
    expect(runProblems(questionFrom(asked(part))).join(' ')).toContain(words);
  });

  it('names what cannot be read, and what is blank and needed', () => {
    expect(unreadable(asked({ steady: 'lots', length: '' }))).toEqual([
      'The steady load is "lots"; a number was expected.',
      'The length is blank; a number is needed.',
    ]);
    expect(typedNumber('')).toBeNaN();
  });

  it.each<[AnswerName, string, Partial<RunAnswers>]>([
    ['steady', '2000W', { steady: '2000', load: 'W' }],
    ['steady', '1,5 kW', { steady: '1500', load: 'W' }],
    ['peak', '400 A', { peak: '400' }],
    ['peak', '400 W', { peak: '400 W' }],
    ['backLength', '16 ft', { backLength: '4.8768' }],
    ['length', '5 ft 6 in', { length: '5.5', lengthUnit: 'ft' }],
    ['resting', '12800 mV', { resting: '12.8' }],
    ['ambient', '104 °F', { ambient: '40' }],
    ['efficiency', '85%', { efficiency: '85' }],
    ['peakSeconds', '2 min', { peakSeconds: '120' }],
    ['ohms1', '0,4 mΩ', { ohms1: '0.4' }],
    ['layerThickness', '1 cm', { layerThickness: '10' }],
    ['overload', '250A', { overload: '250' }],
    ['length', '16 ft', { length: '16', lengthUnit: 'ft' }],
    ['length', '16′', { length: '16', lengthUnit: 'ft' }],
    ['length', '450 cm', { length: '4.5', lengthUnit: 'm' }],
    ['drop', '3 %', { drop: '3', dropUnit: '%' }],
    ['resting', '12.8 V', { resting: '12.8' }],
    ['ambient', '−20 °C', { ambient: '-20' }],
    ['steady', 'lots', { steady: 'lots' }],
    ['length', '16 A', { length: '16 A' }],
    ['steady', '80', { steady: '80' }],
  ])('takes the unit behind a figure: %s %s', (name, typed, wanted) => {
    expect(withUnit(FIRST_ANSWERS, name, typed)).toEqual(wanted);
  });

  it('keeps what other answers mean when a unit comes with one of them', () => {
    expect(withUnit(asked({ backLength: '3.048' }), 'length', '16 ft')).toEqual({
      length: '16',
      lengthUnit: 'ft',
      backLength: '10',
    });
    expect(withUnit(asked({ lengthUnit: 'ft' }), 'backLength', '3.048 m')).toEqual({ backLength: '10' });
  });

  it('understands a unit while the form still shows it', () => {
    const typed = asked({ steady: '2 kW', length: '16 ft', ambient: '104 F' });
    expect(unreadable(understood(typed))).toEqual([]);
    expect(questionFrom(understood(typed))).toEqual(
      questionFrom(asked({ steady: '2000', load: 'W', length: '16', lengthUnit: 'ft', ambient: '40' })),
    );
    expect(understood(FIRST_ANSWERS)).toBe(FIRST_ANSWERS);
  });

  it.each<[Partial<RunAnswers>, string]>([
    [
      { steady: '1,200' },
      'The steady load is "1,200", which may mean 1.200 or 1200; a number was expected. Type 1.200 or 1200.',
    ],
    [{ length: '16 A' }, 'The length is "16 A" (a current); a number was expected.'],
    [
      { resting: '12 horses' },
      'The supply at rest is "12 horses", whose unit "horses" is not known; a number was expected. Units understood here: V, mV, µV.',
    ],
    [{ overload: 'much' }, 'The overload is "much"; a number was expected.'],
    [
      { drop: '1 2' },
      'What may be lost is "1 2", two numbers; a number was expected. Type one number, without gaps between its digits.',
    ],
  ])('says what was found of %j', (part, sentence) => {
    expect(unreadable(understood(asked(part)))).toEqual([sentence]);
  });

  it('asks about an overload only where one was typed', () => {
    expect(overloadFrom(FIRST_ANSWERS)).toBeNull();
    expect(overloadFrom(asked({ overload: '250' }))).toBe(250);
    expect(overloadProblems(null)).toEqual([]);
    expect(overloadProblems(250)).toEqual([]);
    expect(overloadProblems(-3)[0]).toBe('The overload is −3 A; expected are amps above 0 and up to 10000.');
  });

  it.each<[Partial<RunAnswers>, number, string]>([
    [{}, 50, 'The overload of 50 A lies below the 80 A that the load itself draws; expected is more than that.'],
    [
      { peak: '150' },
      120,
      'The overload of 120 A lies below the 150 A that the load itself draws at its peak; expected is more than that.',
    ],
    // 2000 W at 90 % from 14.2 V with nothing lost.
    [
      { load: 'W', steady: '2000' },
      150,
      'The overload of 150 A lies below the 156.5 A or more that the load itself draws; expected is more than that.',
    ],
    [{}, 80, ''],
    [{ load: 'W', steady: '2000' }, 157, ''],
  ])('an overload below the load is none: %j, %d A', (part, amps, sentence) => {
    expect(smallOverload(amps, questionFrom(asked(part))).join(' ')).toBe(sentence);
    expect(smallOverload(null, questionFrom(asked(part)))).toEqual([]);
  });

  it('moves the charging volts that stood there with the volts at rest, and leaves those of the person', () => {
    expect(following(asked({}), { resting: '24' })).toEqual({ resting: '24', charging: '28.4' });
    expect(following(asked({ resting: '24', charging: '28.4' }), { resting: '12.6' }).charging).toBe('14.2');
    expect(following(asked({ charging: '13.8' }), { resting: '24' })).toEqual({ resting: '24' });
    expect(following(asked({}), { resting: '72' })).toEqual({ resting: '72' });
    expect(following(asked({ charging: '' }), { resting: '24' })).toEqual({ resting: '24' });
  });

  it('names what was left to the usual, and nothing else', () => {
    expect(takenFrom(asked({ ambient: '30', drop: '0.4', charging: '14.4', ohms0: '0.2' }))).toEqual([]);
    expect(takenFrom(asked({ load: 'W', peak: '900' }))).toContain('an efficiency of 90 %');
  });

  it('asks the same at first as the terminal does without options', () => {
    const page = questionFrom(FIRST_ANSWERS);
    const terminal = questionOf({
      cable: [],
      load: '80A',
      length: '4m',
      supply: '12.6',
      supplyOhms: '2-8',
      return: 'same',
      bundle: '1',
      sizes: 'awg',
      json: false,
      ascii: false,
    });
    const ohms = (q: typeof page) => q.joints.reduce((sum, j) => sum + j.count * j.ohms, 0);
    expect(ohms(terminal)).toBeCloseTo(ohms(page), 12);
    expect({ ...terminal, joints: [] }).toEqual({ ...page, joints: [] });
    const watts = { ...FIRST_ANSWERS, load: 'W', peak: '900' };
    expect(questionFrom(watts).load).toMatchObject({ efficiency: 0.9, peak: { share: 0.2, seconds: 30 } });
  });

  it('outlasts a reload, and damage to what was kept', () => {
    expect(answersFrom(JSON.stringify(asked({ steady: '95' }))).steady).toBe('95');
    for (const damaged of [undefined, '{', '[]', '"x"', '{"steady": 5, "other": "x"}'])
      expect(answersFrom(damaged)).toEqual(FIRST_ANSWERS);
  });

  it('rates all cables alike where a rating is stated, and nominal sizes as the lowest of them', () => {
    const [cable] = nominalSizes('awg', 378.15);
    expect(withRating([cable!], asked({ rating: '90' }))[0]!.rating).toBeCloseTo(363.15, 9);
    expect(nominalFor([cable!], asked({}))[0]!.rating).toBe(333.15);
    expect(nominalFor([{ ...cable!, rating: 323.15 }], asked({ sizes: 'mm2' }))[0]!.rating).toBe(323.15);
    expect(nominalFor([cable!], asked({ sizes: 'none' }))).toEqual([]);
  });
});

describe('the address in Amps', () => {
  it.each(['run', 'log', 'heat', 'cable:x', 'quill', 'Ärmel & Söhne', '#'])(
    'keeps a cable called %s apart',
    (cable) => {
      expect(ampsOpened(ampsText({ what: 'cable', cable }))).toEqual({ what: 'cable', cable });
    },
  );

  it('opens what it names', () => {
    expect(ampsOpened('run')).toEqual({ what: 'run' });
    expect(ampsOpened(null)).toEqual({ what: 'nothing' });
    expect(ampsText({ what: 'log' })).toBe('log');
  });
});

describe('a second log of a piece', () => {
  const rows = [{ time_s: '0' }, { time_s: '30.5' }];
  it('stays as it is where nothing is on record', () => {
    expect(behind(rows, [])).toEqual({ rows, shift: 0 });
  });

  it('begins more than an hour behind the first', () => {
    const { rows: moved, shift } = behind(rows, [0, 1800.2]);
    expect(moved.map((r) => Number(r.time_s))).toEqual([5401, 5431.5]);
    expect(shift).toBe(5401);
  });
});

describe('before the current comes on', () => {
  const ready = { specimen: 'a', current: '100', ambient: '20', stop: '60', started: '', shift: '0' };
  it('nothing is missing once all is chosen, the stop included', () => {
    expect(missingBefore(ready)).toEqual([]);
  });

  it.each([
    [{ specimen: '' }, 'which piece is under current'],
    [{ current: '0' }, 'a current above 0 A'],
    [{ stop: '' }, 'the temperature at which you stop'],
    [{ stop: '15' }, 'a stop temperature above the surroundings'],
    [{ stop: '400' }, 'a stop temperature of 150 °C at most'],
  ])('%j is missing', (part, words) => {
    expect(missingBefore({ ...ready, ...part })).toEqual([words]);
  });

  it('the stop is reached at its own figure', () => {
    expect(isAtStop(ready, 59.9)).toBe(false);
    expect(isAtStop(ready, 60)).toBe(true);
  });
});
