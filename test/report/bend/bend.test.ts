import { describe, expect, it } from 'vitest';
import type { Flex } from '../../../src/findings/shapes/flex.ts';
import { turnOfSet } from '../../../src/methods/flex/droopCurve.ts';
import { droopOfSet } from '../../../src/methods/flex/droopWithSet.ts';
import { bendMethods } from '../../../src/report/bend/bendMethods.ts';
import { bandSharing, bendSentences, howJudged, rangeWords } from '../../../src/report/bend/bendSentences.ts';
import { blindWords } from '../../../src/report/bend/blindWords.ts';
import { droopDrawing } from '../../../src/report/bend/droopDrawing.ts';
import { figureBands } from '../../../src/report/bend/figureBands.ts';
import { methodStrip } from '../../../src/report/bend/methodStrip.ts';
import { alongside, orderBesideOrder } from '../../../src/report/bend/orderBesideOrder.ts';
import { pushLoop } from '../../../src/report/bend/pushLoop.ts';
import { stripAxis } from '../../../src/report/bend/stripAxis.ts';
import { textWidth } from '../../../src/report/textFit.ts';
import { lightTheme } from '../../../src/report/theme.ts';
import { fourBent } from '../../fixtures/findings/flex.ts';
import { expectClose } from '../../tolerance.ts';
import { named, numberOf, tagsOf } from '../markup.ts';

const methods = bendMethods(fourBent);
const method = (id: string) => methods.find((each) => each.id === id)!;
const { judged } = fourBent;
const withHands = (bands: Record<string, number>): Flex => ({
  ...fourBent,
  judged: { ...judged!, cables: judged!.cables.map((c) => ({ ...c, band: bands[c.cable]! })) },
});

describe('how it was judged', () => {
  it.each([
    [[], 'judged openly'],
    [['open'], 'judged openly'],
    [['sleeve'], 'judged in sleeves'],
    [['Eyes covered', 'other room'], 'judged with eyes covered and from another room'],
    [['open', ''], 'judged openly'],
    [['behind a door'], 'judged “behind a door”'],
  ])('%j reads %s', (blinded, words) => {
    expect(blindWords(blinded)).toBe(words);
  });

  it('stands with the number of pairs, judges and the temperature', () => {
    expect(howJudged(judged!)).toBe('18 pairs by one judge, judged openly, at 19.6 °C');
  });
});

describe('temperatures', () => {
  it('are one where they lie together, and a span where they do not', () => {
    expect(rangeWords([19.8, 20.4])).toBe('at 20.1 °C');
    expect(rangeWords([20, 25])).toBe('at 20.0 to 25.0 °C');
    expect(howJudged({ ...judged!, temperature_range_C: [20, 25] })).toContain('at 20.0 to 25.0 °C');
  });
});

describe('a bracket over cables that differ', () => {
  const [sedge, rudge, tollgate] = fourBent.cables;
  const of = (id: 'sedge' | 'rudge' | 'tollgate', band: number, tied: string[]) => ({
    ...fourBent.cables.find((c) => c.cable === id)!,
    band,
    cannot_be_told_from: tied,
  });
  it('is explained by who lies between', () => {
    expect([sedge, rudge, tollgate].every((c) => c !== undefined)).toBe(true);
    const chain = [of('sedge', 1, ['rudge']), of('rudge', 1, ['sedge', 'tollgate']), of('tollgate', 1, ['rudge'])];
    expect(bandSharing('sedge', chain)).toMatch(
      /^It shares a bracket with Tollgate though the two differ: <Rudge>.* lies between/,
    );
    expect(bandSharing('rudge', chain)).toBe('');
  });
});

describe('the sentences of the place', () => {
  it('part the measured order from the judged one', () => {
    const said = bendSentences(fourBent);
    expect(said.measured).toBe('By droop, Rudge bends most easily; last Sedge and Tollgate, not parted.');
    expect(said.judged).toBe(judged!.sentence);
  });

  it('say nothing of agreement where no pair is told apart by both', () => {
    expect(bendSentences(fourBent).agreement).toBe('');
  });

  it('say that both agree', () => {
    const flex = withHands({ sedge: 2, rudge: 1, tollgate: 2, quill: 3 });
    expect(bendSentences(flex).agreement).toBe('Hand and measurement agree on all two pairs that both tell apart.');
  });

  it('name the pairs on which they differ', () => {
    const flex = withHands({ sedge: 1, rudge: 2, tollgate: 3, quill: 4 });
    expect(bendSentences(flex).agreement).toMatch(
      /^Of two pairs that both tell apart, hand and measurement agree on one; they differ on Sedge and <Rudge>/,
    );
  });
});

describe('the methods', () => {
  it('stand in one order, each with the easiest on top', () => {
    expect(methods.map(({ id }) => id)).toEqual(['droop', 'judged', 'push', 'coil', 'spring']);
    expect(method('droop').rows.map(({ cable, band }) => `${cable} ${band}`)).toEqual([
      'rudge 1',
      'sedge 2',
      'tollgate 2',
    ]);
    expect(method('judged').rows.map(({ cable }) => cable)).toEqual(['sedge', 'rudge', 'tollgate', 'quill']);
  });

  it('keep a first push apart from one that was worked in', () => {
    const row = method('push').rows.find(({ cable }) => cable === 'sedge')!;
    expect(row.figures.map(({ open, value }) => [open, value])).toEqual([
      [true, 0.06],
      [false, 0.052],
    ]);
    expect(method('push').note).toContain('open bar first push');
  });

  it('have no strip of hands where no judgement joins the cables', () => {
    const apart: Flex = {
      ...fourBent,
      judged: {
        ...judged!,
        groups: [
          ['sedge', 'rudge'],
          ['tollgate', 'quill'],
        ],
      },
    };
    expect(bendMethods(apart).some(({ id }) => id === 'judged')).toBe(false);
  });
});

describe('bands of single figures', () => {
  it('part what lies far apart and leave together what does not', () => {
    const of = (...figures: [number, number][]) => figureBands(figures.map(([value, u]) => ({ value, u })));
    expect(of([1, 0.1], [3, 0.1], [1.05, 0.1])).toEqual([1, 2, 1]);
    expect(of([1, 5], [3, 5])).toEqual([1, 1]);
    expect(of([2, 0])).toEqual([1]);
  });
});

describe('a strip', () => {
  it('has one bracket for the two that are tied, and a line only where a band ends', () => {
    const { svg, height } = methodStrip(method('droop'), { width: 640, theme: lightTheme });
    const heavy = named(svg, 'line').filter((tag) => tag.attributes['stroke-width'] === '2');
    expect(heavy).toHaveLength(3);
    const across = named(svg, 'line').filter(
      (tag) => numberOf(tag, 'x2') === 640 && tag.attributes.stroke === lightTheme.ink,
    );
    expect(across.map((tag) => numberOf(tag, 'y1'))).toEqual([30, 66]);
    expect(height).toBe(30 + 3 * 36 + 1);
  });

  it('keeps every mark inside, at any width, and escapes names', () => {
    for (const width of [300, 390, 640, 1400])
      for (const each of methods) {
        const { svg } = methodStrip(each, { width, theme: lightTheme });
        for (const tag of tagsOf(svg).filter(({ name }) => name === 'rect')) {
          expect(numberOf(tag, 'x')).toBeGreaterThanOrEqual(0);
          expect(numberOf(tag, 'x') + numberOf(tag, 'width')).toBeLessThanOrEqual(width + 0.01);
        }
        expect(svg).not.toContain('<Rudge>');
      }
  });

  it('puts the easiest left by measurement and by hand alike', () => {
    const droop = stripAxis(method('droop'), 300);
    expect(droop.at(0.036)).toBeLessThan(droop.at(0.049));
    const hand = stripAxis(method('judged'), 300);
    expect(hand.at(0.9)).toBeLessThan(hand.at(-1.6));
    expect(hand.ticks).toEqual([]);
  });

  it('goes by ratio where figures differ much', () => {
    const rows = [0.02, 0.1, 0.5].map((value, i) => ({
      ...method('droop').rows[0]!,
      cable: String(i),
      figures: [{ value, interval: [value * 0.98, value * 1.02] as const, open: false }],
    }));
    const axis = stripAxis({ ...method('droop'), rows }, 300);
    expectClose(axis.at(0.1) - axis.at(0.02), axis.at(0.5) - axis.at(0.1), { relative: 1e-9 });
    expect(axis.ticks.map(({ text }) => text)).toEqual(['0.02', '0.05', '0.1', '0.2', '0.5']);
  });
});

describe('two orders side by side', () => {
  it('cross only where they put two cables the other way round', () => {
    const [left, right] = alongside(method('droop'), method('judged'));
    expect(left.rows.map(({ cable }) => cable)).toEqual(['rudge', 'sedge', 'tollgate']);
    expect(right.rows.map(({ cable }) => cable)).toEqual(['rudge', 'sedge', 'tollgate', 'quill']);
  });

  it('join each cable that both have', () => {
    const { svg } = orderBesideOrder(method('droop'), method('judged'), { width: 1200, theme: lightTheme });
    expect(named(svg, 'path')).toHaveLength(3);
  });
});

describe('the drawing of a droop', () => {
  const input = {
    name: 'Sedge',
    overhang: 300,
    lambda: 3,
    set: 0,
    faces: [{ face: 'up' as const, drop: 90, chordAngle: null }],
    outerDiameter: 12,
    jacketColour: 'black',
  };

  it('is to one scale in both directions', () => {
    const svg = droopDrawing(input, { width: 400, theme: lightTheme, scale: 1 });
    const tip = named(svg, 'circle')[0]!;
    const level = named(svg, 'line').find((tag) => tag.attributes['stroke-dasharray'] === '16 4 3 4')!;
    expectClose(numberOf(tip, 'cy') - numberOf(level, 'y1'), 90, { absolute: 0.02 });
  });

  it('draws no curve for a droop that settles nothing, and says so', () => {
    const svg = droopDrawing({ ...input, lambda: null }, { width: 400, theme: lightTheme });
    expect(named(svg, 'path').filter((tag) => numberOf(tag, 'stroke-width') > 2)).toEqual([]);
    expect(tagsOf(svg)[0]!.attributes['aria-label']).toContain('No shape is drawn');
  });

  it('takes an angle where an angle was read', () => {
    const svg = droopDrawing(
      { ...input, faces: [{ face: 'up', drop: null, chordAngle: 0.4 }] },
      { width: 400, theme: lightTheme },
    );
    expect(named(svg, 'circle')).toHaveLength(2);
  });

  it.each([
    { what: 'a usual droop', lambda: 2.4, set: 0.06, width: 420 },
    { what: 'a small one', lambda: 0.7, set: 0.02, width: 420 },
    { what: 'one that curls up', lambda: 1.2, set: 0.3, width: 360 },
    { what: 'a deep one on a narrow page', lambda: 15, set: 0.1, width: 300 },
    { what: 'one without a set', lambda: 6, set: 0, width: 300 },
    { what: 'one curled the other way', lambda: 6, set: -0.1, width: 420 },
  ])('keeps its words clear of curves, rings and edges: $what', ({ lambda, set, width }) => {
    const tip = (side: 1 | -1) => droopOfSet(lambda, turnOfSet(set), side).drop * input.overhang;
    const faces = [
      { face: 'up', drop: tip(1), chordAngle: null },
      { face: 'down', drop: tip(-1), chordAngle: null },
    ] as const;
    const svg = droopDrawing({ ...input, lambda, set, faces: [...faces] }, { width, theme: lightTheme });
    const words = [...svg.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)"[^>]*>((?:as laid|turned over)[^<]*)</g)];
    expect(words).toHaveLength(2);
    const height = Number(svg.match(/height="([\d.]+)"/)![1]);
    const points = [...svg.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    const onLabels = words.map(([, x, y, text]) => {
      const box = { right: Number(x), left: Number(x) - textWidth(text!, 13), low: Number(y), high: Number(y) - 10 };
      expect([box.left >= 0, box.right <= width, box.high >= 0, box.low <= height]).toEqual([true, true, true, true]);
      return points.filter(([px, py]) => px > box.left && px < box.right && py > box.high && py < box.low).length;
    });
    expect(onLabels).toEqual([0, 0]);
  });
});

describe('a push', () => {
  const loading = [1, 2, 3].map((deflection) => ({ deflection, force: deflection / 2 }));

  it('has a dot for each reading and no loop without letting back', () => {
    const svg = pushLoop(
      { loading, unloading: [], line: null, state: '' },
      { width: 400, height: 230, theme: lightTheme },
    );
    expect(named(svg, 'circle')).toHaveLength(3);
    expect(named(svg, 'path').filter((tag) => tag.attributes.fill === lightTheme.sunk)).toEqual([]);
  });

  it('draws when nothing was read', () => {
    const empty = { loading: [], unloading: [], line: null, state: 'first push' };
    expect(pushLoop(empty, { width: 300, height: 200, theme: lightTheme })).toContain('not pushed');
  });
});
