/** Sentences: what is said of one piece, and of the whole trial. */
import { describe, expect, it } from 'vitest';
import { sizeClaim } from '../../src/findings/cableOutcome.ts';
import { splitLabelText } from '../../src/findings/claims/splitLabelText.ts';
import { pageSentence } from '../../src/findings/pageSentence.ts';
import type { CableFindings, Findings } from '../../src/findings/schema.ts';
import { Bench, CLAD, oneCable } from './bench.ts';

/** Words that would promise, accuse or crown. */
const NEVER =
  /\b(safe|unsafe|approved?|pass(es|ed)?|fail(s|ed|ing)?|verified|verdict|score|winner|loser|fake|fraud|cheat|lie[sd]?|sold as|suspect)\b/i;
const OUTCOMES = new Set(['meets', 'falls short', 'not settled', null]);

/** Every text in the findings. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(textsIn);
}

const ALUMINIUM = { lay: 1.034, density: 2703, resistivity: 2.83e-8 };
const KINDS = {
  meets: (b: Bench, p: string) => b.everything(p, 33.6),
  short: (b: Bench, p: string) => b.everything(p, 28),
  open: (b: Bench, p: string) => b.weigh(p, 33.6),
  clad: (b: Bench, p: string) => b.everything(p, 35, CLAD),
  aluminium: (b: Bench, p: string) => b.everything(p, 35, ALUMINIUM),
  unmeasured: (b: Bench) => b,
};
type Kind = keyof typeof KINDS;

function trialOf(kinds: readonly Kind[]): Findings {
  const bench = new Bench().carefulTools();
  kinds.forEach((kind, i) => {
    bench.cable(`c${i}`, '2 AWG', 'OFC').piece(`p${i}`, `c${i}`);
    KINDS[kind](bench, `p${i}`);
  });
  return bench.findings();
}

describe('no sentence', () => {
  it('promises, accuses or crowns, whatever was found', () => {
    const all: Kind[] = ['meets', 'short', 'open', 'clad', 'aluminium', 'unmeasured'];
    const findings = [trialOf(all), oneCable('0 gauge', 'CCA').everything('p', 35, CLAD).findings()];
    for (const f of findings) {
      for (const text of textsIn(f)) expect(text).not.toMatch(NEVER);
      for (const c of f.cables) for (const claim of c.claims) expect(OUTCOMES.has(claim.outcome)).toBe(true);
    }
  });
});

describe('one piece', () => {
  const sentence = (kind: Kind, size = '2 AWG', metal = 'OFC') =>
    KINDS[kind](oneCable(size, metal), 'p').of('x').sentence;
  it.each([
    ['meets', /^Holds 100 ± \d(\.\d)? % of the copper that its label claims\.$/],
    ['short', /^Holds 8\d(\.\d)? ± \d(\.\d)? % of the copper that its label claims: falls short\.$/],
    [
      'open',
      /^Holds 100 ± \d % of the copper that its label claims, if copper; whether that is enough is not settled\.$/,
    ],
    [
      'clad',
      /^Label says copper; we found copper-clad aluminium, about 1\d % copper by volume\. Holds \d+ to \d+ % .*: falls short\. Its metal fills 10\d ± \d % of the claimed area, and it conducts like about \d\.\d AWG copper\.$/,
    ],
    ['aluminium', /^Label says copper; we found aluminium\. Holds 0\.0 ± 0\.0 % of the copper/],
    ['unmeasured', /^Nothing has been measured on this piece that tells what is inside\.$/],
  ] as const)('%s', (kind, words) => {
    expect(sentence(kind)).toMatch(words);
  });

  it('with a label that claims clad metal, or gives no area', () => {
    expect(sentence('clad', '2 AWG', 'CCA')).toMatch(
      /^Holds 10\d ± \d % of the metal area that its label claims; copper-clad aluminium was found\.$/,
    );
    expect(sentence('meets', 'heavy', '')).toMatch(/^33\.\d mm² of copper; the label gives no area to judge it by\.$/);
  });
});

describe('the whole trial', () => {
  const said = (kinds: readonly Kind[]) => trialOf(kinds).sentence;
  it.each<[Kind[], string]>([
    [['meets', 'meets'], 'Both hold the copper that their label claims.'],
    [['meets', 'meets', 'meets'], 'All three hold the copper that their label claims.'],
    [['meets', 'short'], 'One of the two holds the copper that its label claims. One falls short.'],
    [['short', 'short'], 'Neither of the two is shown to hold the copper that its label claims. Two fall short.'],
    [
      ['meets', 'meets', 'short', 'clad', 'open', 'unmeasured'],
      'Two of the six hold the copper that their label claims. One falls short, one is aluminium under a copper skin, one cannot be told yet, and one was not measured.',
    ],
    [
      ['clad', 'clad', 'aluminium'],
      'None of the three is shown to hold the copper that its label claims. Two are aluminium under a copper skin and one is not the metal that its label says.',
    ],
    [['open', 'open', 'open'], 'Nothing can be said yet of the copper in these three cables: no ohms were read.'],
    [
      ['open', 'unmeasured'],
      'Nothing can be said yet of the copper in the one measured: no ohms were read. One was not measured.',
    ],
    [
      ['short', 'open', 'open'],
      'Of the three cables, one falls short of the copper that its label claims and two cannot be told yet.',
    ],
    [
      ['clad', 'short', 'short', 'open'],
      'Of the four cables, two fall short of the copper that their label claims, one is aluminium under a copper skin, and one cannot be told yet.',
    ],
    [['unmeasured', 'unmeasured'], 'Nothing has been measured on these two cables yet.'],
    [['unmeasured'], 'Nothing has been measured on this cable yet.'],
  ])('%j', (kinds, wanted) => {
    expect(said(kinds)).toBe(wanted);
  });

  it('says why nothing is told where only ohms were read, and does not deny the sizes that are met', () => {
    const bench = new Bench().carefulTools();
    for (const [c, mm2] of [
      ['a', 36],
      ['b', 36],
      ['c', 33],
    ] as const)
      bench.cable(c, '2 AWG', 'OFC').piece(`p${c}`, c).ohm(`p${c}`, mm2);
    const { sentence, cables } = bench.findings();
    expect(cables.map((c) => sizeClaim(c)?.outcome)).toEqual(['meets', 'meets', 'not settled']);
    expect(sentence).toBe(
      'Nothing can be said yet of the copper in these three cables: no piece was weighed. By size alone, two meet what their label claims.',
    );
  });

  it('is one or two grammatical sentences for every mix of up to six cables', () => {
    const kinds = Object.keys(KINDS) as Kind[];
    const six = trialOf(kinds).cables;
    const one = (i: number): CableFindings => six[i];
    // Every way of choosing how many there are of each kind, one to six cables in all.
    const mixes: number[][] = [];
    const choose = (left: number, at: number, chosen: number[]): void => {
      if (at === kinds.length) {
        if (chosen.length) mixes.push(chosen);
        return;
      }
      for (let n = 0; n <= left; n++) choose(left - n, at + 1, [...chosen, ...new Array<number>(n).fill(at)]);
    };
    choose(6, 0, []);
    expect(mixes.length).toBe(923);
    for (const mix of mixes) {
      const text = pageSentence(mix.map(one));
      const because = `${mix.map((i) => kinds[i]).join(', ')}: ${text}`;
      expect(text, because).toMatch(/^[A-Z0-9].*\.$/);
      expect(text, because).not.toMatch(/ {2}|undefined|NaN|,,|, ?\./);
      expect(text, because).not.toMatch(
        /\b[Oo]ne (fall|are|were|hold) |\b(?<!of the )([Tt]wo|[Tt]hree|[Ff]our|[Ff]ive|[Ss]ix) (falls|is|was|holds) /,
      );
      expect(text.split('. ').length, because).toBeLessThanOrEqual(mix.length === 1 ? 4 : 2);
    }
  });

  it('leaves the control piece out of the count', () => {
    const bench = new Bench()
      .carefulTools()
      .cable('a', '2 AWG', 'OFC')
      .cable('b', '2 AWG', 'OFC')
      .cable('w', '12 AWG', 'copper', { role: 'control' })
      .piece('p', 'a')
      .piece('q', 'b')
      .everything('p', 33.6)
      .everything('q', 33.6);
    expect(bench.findings().sentence).toMatch(/^Both hold/);
  });
});

describe('a label typed on one line', () => {
  it.each([
    ['2 AWG OFC', '2 AWG', 'OFC'],
    ['2 AWG tinned OFC', '2 AWG', 'tinned OFC'],
    ['1/0 true spec', '1/0 true spec', ''],
    ['1/0 true spec OFC', '1/0 true spec', 'OFC'],
    ['4 gauge CCA', '4 gauge', 'CCA'],
    ['CCA 4 ga', '4 ga', 'CCA'],
    ['35 mm2, copper', '35 mm2', 'copper'],
    ['0 gauge copper clad aluminum', '0 gauge', 'copper clad aluminum'],
    ['2 AWG 100 % copper', '2 AWG', '100 % copper'],
    ['2 AWG oxygen-free copper', '2 AWG', 'oxygen-free copper'],
    ['250 kcmil', '250 kcmil', ''],
    ['', '', ''],
    ['heavy cable', 'heavy cable', ''],
  ])('"%s" is size "%s" and metal "%s"', (text, size, metal) => {
    expect(splitLabelText(text)).toEqual({ size, metal, strands: null });
  });
});
