import { describe, expect, it } from 'vitest';
import { acrossOf } from '../../../src/findings/across/across.ts';
import { linksOn } from '../../../src/findings/across/links.ts';
import { lotsOverTime } from '../../../src/findings/across/lots.ts';
import { nameWithin, quantityOf } from '../../../src/findings/across/quantities.ts';
import { expectClose } from '../../tolerance.ts';
import { figure, line } from './lines.ts';

const area = quantityOf('area');
const control = (trial: string, value: number) =>
  line(trial, 'House wire', {
    role: 'control',
    shared_name: ' House  WIRE ',
    conductor_area: figure(10 * value, 'mm2', 0.003),
  });
const quill = line('a', 'Quill', { conductor_area: figure(33, 'mm2', 0.004) });
const rush = line('b', 'Rush', { conductor_area: figure(34, 'mm2', 0.004), day: '2027-01-10' });
const asked = { quantity: area, link: null, shift: false, level: 0.95 };
const [link] = linksOn([control('a', 1), control('b', 1.02), control('c', 0.99), quill]);

describe('cables of several trials by one figure', () => {
  it('says first that nobody measured the error between trials where no piece links them', () => {
    const { sentences, between, groups, ratio, howWeKnow } = acrossOf([quill, rush], asked);
    expect(sentences[0]).toContain('contains an error that nobody measured');
    expect(between).toBeNull();
    expect(groups.map(({ trial }) => trial)).toEqual(['a', 'b']);
    expect(groups.flatMap(({ rows }) => rows.map(({ way }) => way))).toEqual(['as found', 'as found']);
    expectClose(ratio!.value, 33 / 34, { relative: 1e-12 });
    expect(sentences[2]).toMatch(/Quill is 2\.9 % below Rush .*, if the trials bring no error of their own\./);
    expect(howWeKnow).toEqual([]);
  });

  it('says nothing of trials for cables of one trial', () => {
    const { sentences } = acrossOf([quill, { ...rush, trial: 'a' }], { ...asked, link: link! });
    expect(sentences[0]).toContain('in one trial');
    expect(sentences[1]).toMatch(/^Quill is 2\.9 % below Rush \(1\.9 to 4\.0 %\)\.$/);
  });

  it('widens every interval by what the linking piece says', () => {
    const { groups, between, sentences } = acrossOf([quill, rush], { ...asked, link: link! });
    expect(between!.trials).toBe(3);
    expect(between!.spread).toBeGreaterThan(0.01);
    for (const { rows } of groups)
      for (const { found, shown, way } of rows) {
        expect(way).toBe('widened');
        expectClose(shown.value, found.value, { relative: 1e-12 });
        expect(shown.interval[1] - shown.interval[0]).toBeGreaterThan(3 * (found.interval[1] - found.interval[0]));
      }
    expect(sentences[0]).toMatch(/House {2}WIRE/);
    expect(sentences.join(' ')).toContain('cannot be parted');
    expect(sentences.join(' ')).toContain('Three trials say little');
  });

  it.each<[number[], string]>([
    [[30, 33, 36], 'Every two of these differ, each pair looked at by itself.'],
    [[33, 33.01, 33.02], 'No two of these can be parted, each pair looked at by itself.'],
    [
      [33, 33.01, 36],
      'These cannot be parted, each pair looked at by itself: Cable 1 and Cable 0. Every other two differ.',
    ],
    [
      [33, 33.25, 33.5],
      'These differ, the larger first, each pair looked at by itself: Cable 2 and Cable 0. No other two can be parted.',
    ],
  ])('says which of three cables of %j mm² differ', (areas, wanted) => {
    const lines = areas.map((mm2, at) => line('a', `Cable ${at}`, { conductor_area: figure(mm2, 'mm2', 0.004) }));
    expect(acrossOf(lines, asked).sentences).toContain(wanted);
    expect(acrossOf(lines.slice(0, 2), asked).pairs).toEqual([]);
  });

  it('tells cables of one name by their trials, and what pairs of several trials rest on', () => {
    const lines = [
      quill,
      line('b', 'Quill', { conductor_area: figure(33, 'mm2', 0.004) }),
      line('b', 'Rush', { conductor_area: figure(40, 'mm2', 0.004) }),
    ];
    expect(acrossOf(lines, asked).sentences.join(' ')).toContain(
      'itself: Quill (Trial a) and Quill (Trial b). Every other two differ, if the trials bring no error of their own.',
    );
  });

  it('calls the scatter between trials a standard deviation, not what the piece moved by', () => {
    const [first] = acrossOf([quill, rush], { ...asked, link: link! }).sentences;
    expect(first).toContain('one standard deviation');
    expect(first).not.toContain('differ by');
  });

  it('names a quantity within a line without lowering its unit, and counts one degree as one', () => {
    expect(nameWithin(quantityOf('resistance'))).toBe('resistance at 20 °C');
    const [two] = linksOn([control('a', 1), control('b', 1.02)]);
    expect(acrossOf([quill, rush], { ...asked, link: two! }).howWeKnow.join(' ')).toContain('on 1 degree of freedom.');
    expect(acrossOf([quill, rush], { ...asked, link: link! }).howWeKnow.join(' ')).toContain(
      'on 2 degrees of freedom.',
    );
  });

  it('shifts by the linking piece on request, and widens what has none', () => {
    const third = line('z', 'Zephyr', { conductor_area: figure(30, 'mm2', 0.004) });
    const { groups, sentences } = acrossOf([quill, rush, third], { ...asked, link: link!, shift: true });
    const rows = groups.flatMap((group) => group.rows);
    const of = (name: string) => rows.find((row) => row.line.name === name)!;
    expect(of('Rush').way).toBe('shifted');
    expect(of('Zephyr').way).toBe('widened');
    // By the model the two cables keep the ratio of their ratios to the linking piece.
    expectClose(of('Rush').shown.value / of('Quill').shown.value, 34 / 1.02 / 33, { relative: 1e-9 });
    expect(sentences.join(' ')).toContain('Trial z did not measure it');
  });

  it('says what was not measured twice', () => {
    const { sentences, between } = acrossOf([quill, rush], {
      ...asked,
      quantity: quantityOf('stiffness'),
      link: link!,
    });
    expect(between).toBeNull();
    expect(sentences).toEqual(['Without that figure: Quill, Rush.']);
    const stiff = (trial: string, name: string) => line(trial, name, { bending_stiffness: figure(0.05, 'N m2', 0.03) });
    const bent = acrossOf([stiff('a', 'Quill'), stiff('b', 'Rush')], {
      ...asked,
      quantity: quantityOf('stiffness'),
      link: link!,
    });
    expect(bent.sentences[0]).toContain('is known from none only');
  });

  it('holds no money of two currencies against each other', () => {
    const dollars = { ...rush, currency: 'USD' };
    const { groups, without, sentences } = acrossOf([quill, { ...quill, cable: 'x' }, dollars], {
      ...asked,
      quantity: quantityOf('price_per_m'),
    });
    expect(groups.map(({ trial }) => trial)).toEqual(['a']);
    expect(without).toEqual(['Rush']);
    expect(sentences.at(-1)).toContain('in other money');
  });

  it('never uses a figure that holds only under a condition as a link', () => {
    const [bad] = linksOn(
      ['a', 'b'].map((trial) => ({
        ...control(trial, 1),
        conductor_area: { ...figure(10, 'mm2', 0.01), condition: 'if copper' },
      })),
    );
    expect(acrossOf([quill, rush], { ...asked, link: bad! }).between).toBeNull();
  });
});

describe('a lot that is measured again', () => {
  const at = (trial: string, day: string, value: number, more = {}) =>
    line(trial, 'Quill', { lot: 'L 24/07', day, conductor_area: figure(value, 'mm2', 0.004), ...more });

  it('shows its change over time, and what would have shown', () => {
    const [same] = lotsOverTime([at('a', '2026-01-10', 33), at('b', '2026-11-10', 33.05)], asked);
    expect(same!.sentence).toMatch(
      /^Quill, lot L 24\/07, 2026-01-10 to 2026-11-10: no change seen; one of 1\.9 % would/,
    );
    const [moved] = lotsOverTime([at('a', '2026-01-10', 33), at('b', '2026-11-10', 31)], asked);
    expect(moved!.sentence).toContain('down by 6.1 % (5.0 to 7.1 %), if the trials bring no error of their own.');
    expectClose(moved!.drift.change, 31 / 33 - 1, { relative: 1e-9 });
  });

  it('counts the error between trials where a piece links them', () => {
    const lot = [at('a', '2026-01-10', 33), at('b', '2026-11-10', 32)];
    const [plain] = lotsOverTime(lot, asked);
    const [linked] = lotsOverTime(lot, { ...asked, link: link! });
    expect(plain!.sentence).toContain('down by');
    expect(linked!.sentence).toContain('no change seen');
    expect(linked!.sentence).not.toContain('if the trials');
  });

  it.each([
    ['one trial', [at('a', '2026-01-10', 33), at('a', '2026-11-10', 33, { cable: 'other' })]],
    ['two makers with one lot name', [at('a', '2026-01-10', 33), at('b', '2026-11-10', 33, { name: 'Rush' })]],
    ['no day', [at('a', '2026-01-10', 33), at('b', '2026-01-10', 33, { day: null })]],
    ['one day', [at('a', '2026-01-10', 33), at('b', '2026-01-10', 33)]],
  ])('says nothing for %s', (_, lines) => {
    expect(lotsOverTime(lines, asked)).toEqual([]);
  });
});
