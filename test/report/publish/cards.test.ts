/** Cards as SVG: nothing clipped, nothing too small, the same place at every step, whatever the names are. */
import { describe, expect, it } from 'vitest';
import type { CableFindings } from '../../../src/findings/schema.ts';
import { figureText } from '../../../src/report/figures.ts';
import { AMPS_CAUTION } from '../../../src/report/publish/cards/aspects.ts';
import {
  CARD_SIZES,
  type CardSize,
  FORMATS,
  LEAST_NAME,
  LEAST_TEXT,
} from '../../../src/report/publish/cards/canvas.ts';
import { aboutsIn, allCards, type CardWish, cardSvg, NoCard } from '../../../src/report/publish/cards/card.ts';
import { characters, descriptionText } from '../../../src/report/publish/cards/description.ts';
import { brokenLines, fitName } from '../../../src/report/publish/cards/fitName.ts';
import { METHODS } from '../../../src/report/publish/cards/methods.ts';
import { textWidth } from '../../../src/report/textFit.ts';
import { demoPublished, demoUnderNames } from '../../support/demoReport.ts';
import { HOSTILE_NAMES } from '../../support/hostile.ts';

const demo = demoPublished();
const source = { findings: demo.findings, trial: demo.trial, part: null };
const LOOK = { dark: false, transparent: false } as const;
const [first, second] = demo.findings.cables.map(({ cable }) => cable) as [string, string];

/** Larger ones are the same drawings enlarged. */
const LAID_OUT = CARD_SIZES.filter((size) => FORMATS[size].enlarged === 1);

const WISHES: readonly CardWish[] = [
  { kind: 'one', about: 'inside', cables: [first] },
  { kind: 'one', about: 'amps', cables: [first] },
  { kind: 'two', about: 'inside', cables: [first, second] },
  { kind: 'one', about: 'bend', cables: [first] },
  { kind: 'two', about: 'jacket', cables: [first, second] },
  { kind: 'one', about: 'inside', cables: ['tollgate'] },
  { kind: 'field', about: 'inside', cables: [] },
  { kind: 'field', about: 'amps', cables: [] },
  { kind: 'order', about: 'inside', cables: [] },
  { kind: 'lower-third', about: 'inside', cables: [first] },
  ...METHODS.map(({ method }): CardWish => ({ kind: 'method', about: 'inside', cables: [], method })),
];

interface Drawn {
  x: number;
  y: number;
  size: number;
  anchor: string;
  text: string;
}

const unescaped = (text: string) =>
  text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');

/** Lines of text with no group moved or enlarged around them: all but those of drawings and strips. */
function linesOf(svg: string): Drawn[] {
  const open: boolean[] = [];
  const lines: Drawn[] = [];
  const token = /<g\b([^>]*)>|<\/g>|<text\b([^>]*)>(.*?)<\/text>/gs;
  for (const [whole, group, attributes, inner] of svg.matchAll(token)) {
    if (whole.startsWith('</g')) open.pop();
    else if (group !== undefined && whole.startsWith('<g')) {
      if (!whole.endsWith('/>')) open.push(/transform=/.test(group));
    } else if (!open.some(Boolean)) {
      const at = (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(attributes!)?.[1] ?? '';
      const sizes = [...`${attributes} ${inner}`.matchAll(/font-size="([\d.]+)"/g)].map(([, s]) => Number(s));
      lines.push({
        x: Number(at('x')),
        y: Number(at('y')),
        size: Math.min(...sizes),
        anchor: at('text-anchor') || 'start',
        text: unescaped(inner!.replace(/<[^>]*>/g, '')),
      });
    }
  }
  return lines;
}

/** Two of the names are put on the first two cables at a time. */
const named = (names: readonly string[]) => {
  const d = demoUnderNames(names);
  return { findings: d.findings, trial: d.trial, part: null };
};

describe('every card', () => {
  const sources: [string, typeof source][] = [
    ['its own names', source],
    ...Object.entries(HOSTILE_NAMES).map(([what, name]): [string, typeof source] => [what, named([name, 'Quill'])]),
  ];
  it.each(sources)('keeps its text within the safe area and large enough: %s', (_what, from) => {
    for (const size of LAID_OUT)
      for (const wish of WISHES) {
        const { safe } = FORMATS[size];
        for (const l of linesOf(cardSvg(from, wish, { size, ...LOOK }))) {
          const what = `${size} ${wish.kind} ${wish.about}: "${l.text}"`;
          expect(l.size, what).toBeGreaterThanOrEqual(LEAST_TEXT);
          const width = textWidth(l.text, l.size);
          const left = l.anchor === 'end' ? l.x - width : l.anchor === 'middle' ? l.x - width / 2 : l.x;
          expect(left, what).toBeGreaterThanOrEqual(safe.left - 4);
          expect(left + width, what).toBeLessThanOrEqual(safe.right + 4);
          expect(l.y - l.size * 0.75, what).toBeGreaterThanOrEqual(safe.top - 6);
          expect(l.y, what).toBeLessThanOrEqual(safe.bottom + 2);
        }
      }
  });

  it('is valid markup with hostile names as text', () => {
    for (const name of Object.values(HOSTILE_NAMES)) {
      const svg = cardSvg(named([name, 'Quill']), WISHES[0]!, { size: '1920x1080', ...LOOK });
      expect(svg).not.toContain('<script');
      expect(svg.match(/<svg\b/g)).toHaveLength(1);
    }
    expect(cardSvg(named([HOSTILE_NAMES.markup, 'Quill']), WISHES[0]!, { size: '1920x1080', ...LOOK })).toContain(
      '&lt;script&gt;',
    );
  });

  it('at 3840 × 2160 is the same drawing enlarged', () => {
    const small = cardSvg(source, WISHES[0]!, { size: '1920x1080', ...LOOK });
    const large = cardSvg(source, WISHES[0]!, { size: '3840x2160', ...LOOK });
    expect(large).toMatch(/^<svg[^>]* width="3840" height="2160"/);
    expect(large).toContain('scale(2)');
    expect(linesOf(small).length).toBeGreaterThan(4);
    expect(large.replace(/^<svg[^>]*>|<g transform="scale\(2\)">/g, '')).toContain(
      small.slice(small.indexOf('<g>') + 3, small.indexOf('<g>') + 2000),
    );
  });
});

describe('a name', () => {
  const whole = (lines: readonly string[]) => lines.join('').replace(/\s+/g, '');
  it.each(Object.entries(HOSTILE_NAMES))('is never clipped: %s', (_what, name) => {
    for (const width of [240, 400, 814, 912]) {
      const fitted = fitName(name, width);
      expect(fitted.size).toBeGreaterThanOrEqual(LEAST_NAME);
      for (const line of fitted.lines) expect(textWidth(line, fitted.size * 1.25), line).toBeLessThanOrEqual(width);
      // Two hundred of the broadest letter take nine lines: the one name that ends in an ellipsis.
      if (width >= 814 && name !== HOSTILE_NAMES.oneWord) expect(whole(fitted.lines)).toBe(name.replace(/\s+/g, ''));
    }
  });
  it('steps down from 84 to 64 to 48 before it breaks', () => {
    expect(fitName('Quill', 814).size).toBe(84);
    expect(fitName('Halfmoon Cord Two', 814).size).toBe(64);
    expect(fitName('Pedlar & Daughter Cord Two', 814).size).toBe(48);
    expect(fitName('', 814).lines).toEqual(['no name']);
  });
  it('breaks at spaces where it can', () => {
    expect(brokenLines('Pedlar and Daughter', 200, 24)).toEqual(['Pedlar and', 'Daughter']);
  });
});

describe('the card of one cable', () => {
  const at = (step: number, size: CardSize = '1920x1080') =>
    cardSvg(source, { kind: 'one', about: 'inside', cables: [first], step }, { size, ...LOOK });

  it('shows name, claim, figure and outcome one after the other', () => {
    const words = [1, 2, 3, 4].map((step) =>
      linesOf(at(step))
        .map(({ text }) => text)
        .join(' | '),
    );
    const figure = demo.findings.cables[0]!.conductor_area!.value.toFixed(2);
    expect(words[0]).not.toContain('Label says');
    expect(words[1]).toContain('Label says');
    expect(words[1]).not.toContain(figure);
    expect(words[2]).toContain(figure);
    expect(words[2]).not.toMatch(/meets/i);
    expect(words[3]).toMatch(/meets/i);
  });

  it('moves nothing from one step to the next', () => {
    const places = [1, 2, 3, 4].map((step) => linesOf(at(step)));
    for (let step = 1; step < 4; step++)
      for (const earlier of places[step - 1]!.filter(({ text }) => !text.startsWith('Label says')))
        expect(places[step], `step ${step + 1}`).toContainEqual(earlier);
  });

  it('draws no metal before it was found', () => {
    const copper = (svg: string) => (svg.match(/fill="#B4623A"/g) ?? []).length;
    expect(copper(at(2))).toBe(1);
    expect(copper(at(3))).toBeGreaterThan(1);
  });
});

describe('a cable whose metal is not the copper of its label', () => {
  const clad = demo.findings.cables.find(({ metal_found }) => metal_found === 'copper-clad aluminium')!;
  const copper = figureText(clad.claims.find(({ reading }) => reading === 'copper held')!.found);
  const metal = figureText(clad.conductor_area);
  const wordsOf = (wish: Partial<CardWish>, size: CardSize) =>
    linesOf(cardSvg(source, { kind: 'one', about: 'inside', cables: [clad.cable], ...wish }, { size, ...LOOK })).map(
      ({ text }) => text,
    );
  it.each<[string, Partial<CardWish>]>([
    ['one', {}],
    ['two', { kind: 'two', cables: [first, clad.cable] }],
    ['field', { kind: 'field', cables: [] }],
    ['lower-third', { kind: 'lower-third' }],
  ])('shows its copper beside the limit for copper, and names the metal: %s', (_kind, wish) => {
    for (const size of LAID_OUT) {
      const words = wordsOf(wish, size);
      expect(words.join(' | '), size).toContain(`${copper.value} ± ${copper.plusMinus}`);
      expect(words.join(' | '), size).toMatch(/aluminium/);
      if (wish.kind === 'field' || wish.kind === 'two')
        expect(words.join(' | '), size).not.toContain(`${metal.value} ± ${metal.plusMinus}`);
    }
  });
  it('keeps all of its metal beside its name on a card of one', () => {
    for (const size of LAID_OUT)
      expect(wordsOf({}, size).join(' ')).toContain(
        `Metal copper-clad aluminium, ${metal.value} ± ${metal.plusMinus} mm²`,
      );
  });
});

describe('the ground and the room of a card', () => {
  const widthsOf = (svg: string) =>
    [...svg.matchAll(/<rect\b[^>]*?\bwidth="([\d.]+)"/g)].map(([, width]) => Number(width));
  it('a lower third is its strip alone', () => {
    for (const size of LAID_OUT) {
      const svg = cardSvg(source, { kind: 'lower-third', about: 'inside', cables: [first] }, { size, ...LOOK });
      expect(Math.max(...widthsOf(svg)), size).toBeLessThan(FORMATS[size].width);
    }
  });
  it.each(['one', 'two'] as const)('a scale has no box below it where the ground is left out: %s', (kind) => {
    const wish: CardWish = { kind, about: 'inside', cables: [first, second] };
    const svg = cardSvg(source, wish, { size: '1920x1080', dark: false, transparent: true });
    const strip = svg.slice(svg.lastIndexOf('scale(2)'));
    // Only bars are drawn as rectangles, each with its edge.
    expect(Math.max(...widthsOf(strip))).toBeLessThan(kind === 'one' ? 380 : 700);
  });
  it('an upright card of two uses its height, and so does an order', () => {
    const y = (wish: CardWish, name: string) =>
      linesOf(cardSvg(source, wish, { size: '1080x1920', ...LOOK })).find(({ text }) => text === name)!.y;
    const [upper, lower] = demo.findings.cables.filter(({ name }) => !name.includes(' ')) as [
      CableFindings,
      CableFindings,
    ];
    const two: CardWish = { kind: 'two', about: 'inside', cables: [upper.cable, lower.cable] };
    expect(y(two, lower.name) - y(two, upper.name)).toBeGreaterThan(400);
    const order: CardWish = { kind: 'order', about: 'inside', cables: [] };
    expect(y(order, demo.findings.decide!.cables.at(-1)!.name)).toBeGreaterThan(1300);
  });
  it.each([
    ['bend', 'stiffer'],
    ['jacket', 'thicker'],
    ['amps', 'carries more'],
  ] as const)('a scale about %s says what its end means, and where the other cables lie', (about, word) => {
    const words = (kind: 'one' | 'two') =>
      linesOf(cardSvg(source, { kind, about, cables: [first, second] }, { size: '1080x1920', ...LOOK })).map(
        ({ text }) => text,
      );
    expect(words('one')).toContain(`${word} →`);
    expect(words('one')).toContain('light: the other cables');
    expect(words('two')).toContain(`${word} →`);
  });
});

describe('cards about current', () => {
  it.each(['one', 'two', 'field', 'lower-third'] as const)('have the caution baked in: %s', (kind) => {
    const cables = kind === 'field' ? [] : kind === 'two' ? [first, second] : [first];
    for (const size of CARD_SIZES) {
      const svg = cardSvg(source, { kind, about: 'amps', cables }, { size, ...LOOK });
      const words = unescaped(svg.replace(/<[^>]*>/g, ' ')).replace(/\s+/g, ' ');
      for (const part of AMPS_CAUTION.split(' ')) expect(words, `${size} ${kind}`).toContain(part);
    }
  });
  it('others have none', () => {
    expect(cardSvg(source, WISHES[0]!, { size: '1920x1080', ...LOOK })).not.toContain('Fuse at the source');
  });
});

describe('a card that cannot be made', () => {
  it.each<[string, CardWish, RegExp]>([
    ['of nobody', { kind: 'one', about: 'inside', cables: [] }, /Name the cable/],
    ['of a stranger', { kind: 'one', about: 'inside', cables: ['zebra'] }, /no cable "zebra"/],
    ['of one for two', { kind: 'two', about: 'inside', cables: [first] }, /two cables/],
    ['of one twice', { kind: 'two', about: 'inside', cables: [first, first] }, /shows two cables; .+ was named twice/],
    ['of no method', { kind: 'method', about: 'inside', cables: [], method: 'guess' }, /one of ohms/],
  ])('%s is refused with a sentence', (_what, wish, sentence) => {
    const draw = () => cardSvg(source, wish, { size: '1920x1080', ...LOOK });
    expect(draw).toThrow(NoCard);
    expect(draw).toThrow(sentence);
  });
});

describe('all cards of a trial', () => {
  it('are one for each thing that was found, under names that any disk takes', () => {
    const cards = allCards(demo.findings);
    expect(aboutsIn(demo.findings)).toEqual(['inside', 'bend', 'jacket', 'amps']);
    const names = cards.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { name } of cards) expect(name).toMatch(/^[a-z0-9-]+$/);
    expect(names).toContain('field-inside');
    const rude = named(Object.values(HOSTILE_NAMES));
    for (const { wish } of allCards(rude.findings))
      expect(() => cardSvg(rude, wish, { size: '1920x1080', ...LOOK })).not.toThrow();
  });

  it('blanks stay blank before there is an order', () => {
    const bare = { ...source, findings: { ...demo.findings, decide: null, current: null, jacket: null, flex: null } };
    const svg = cardSvg(bare, { kind: 'order', about: 'inside', cables: [] }, { size: '1920x1080', ...LOOK });
    expect(svg).toContain('The table so far');
    expect(svg.match(/to come/g)!.length).toBeGreaterThanOrEqual(12);
  });
});

describe('the text for a description box', () => {
  const links = [{ title: 'Part 1, what is inside', address: 'https://example.org/1' }];
  it('keeps to its limit, links first of what is left', () => {
    for (const limit of [5000, 1000, 400, 80]) {
      const { text, length } = descriptionText(demo.findings, demo.trial, { limit, links });
      expect(length).toBe(characters(text));
      expect(length).toBeLessThanOrEqual(limit);
    }
    const all = descriptionText(demo.findings, demo.trial, { limit: 5000, links });
    expect(all.leftOut).toBe(0);
    expect(all.text).toContain('Part 1, what is inside: https://example.org/1');
    expect(all.text).toContain('four-wire meter');
    const short = descriptionText(demo.findings, demo.trial, { limit: 600, links });
    expect(short.leftOut).toBeGreaterThan(0);
    expect(short.text).toContain('https://example.org/1');
  });
  it('is plain lines whatever the names hold', () => {
    const d = demoUnderNames(Object.values(HOSTILE_NAMES));
    const { text } = descriptionText(d.findings, d.trial, { limit: 10_000, links: [] });
    expect(text).toContain(HOSTILE_NAMES.markup);
    expect(text).not.toMatch(/\r|\t|\n\n/);
  });
});
