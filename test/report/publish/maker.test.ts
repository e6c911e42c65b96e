/** A draft for one maker: what it says, what it must not show, and answers from the trial's own figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../../src/findings/findings.ts';
import { cellText } from '../../../src/report/publish/document/blocks.ts';
import { reportHtml } from '../../../src/report/publish/html/reportHtml.ts';
import { makerDocument, NoSuchCable } from '../../../src/report/publish/maker/makerDocument.ts';
import { objectionsTo, pasteable } from '../../../src/report/publish/maker/objections.ts';
import { ofOneCable } from '../../../src/report/publish/maker/ofOneCable.ts';
import { typedTogether } from '../../../src/report/publish/maker/readingRows.ts';
import { reportTypst } from '../../../src/report/publish/print/reportTypst.ts';
import { fold } from '../../../src/trial/fold.ts';
import { Bench } from '../../findings/bench.ts';
import { demoPublished } from '../../support/demoReport.ts';

const DAY = '2026-11-25';

function twoCables(maker = 'Alder'): Bench {
  const b = new Bench()
    .carefulTools()
    .say('cable', {
      cable: 'a',
      maker,
      claimed_size: '2 AWG',
      claimed_metal: 'OFC',
      lot: 'L7',
      bought_on: '2026-09-02',
    })
    .say('cable', {
      cable: 'z',
      maker: 'Zinnober',
      claimed_size: '2 AWG',
      claimed_metal: 'OFC',
      bought_from: 'Stall of Zed',
    })
    .piece('pa', 'a')
    .piece('pz', 'z')
    .everything('pa', 28)
    .everything('pz', 34.1);
  const struck = b.entries.find(({ body }) => body.quantity === 'strand_count')!.body.reading!;
  return b.say('strike', { reading: struck, why: 'counted twice' });
}

function seen(b: Bench) {
  const trial = fold(b.entries);
  return { trial, findings: findingsOf(trial, { level: 0.95, draws: 0 }) };
}

describe('a draft for one maker', () => {
  const of = seen(twoCables());
  const document = makerDocument(of, 'a', DAY);
  const html = reportHtml(document);

  it('holds the findings, every reading as typed, those that do not count with their reason, and its day', () => {
    expect(document.partLine).toBe('Draft of 2026-11-25, not published');
    const [table] = document.sections.find(({ id }) => id === 'readings')!.blocks;
    const read = table!.kind === 'table' ? table!.rows.flatMap((row) => cellText(row[2]!).split(/[,;] /)) : [];
    const own = of.trial.readings.filter((r) => r.cable === 'a');
    expect(read).toHaveLength(own.length);
    for (const { row } of own) expect(read.join('; ')).toContain(row.value);
    expect(html).toContain('counted twice');
    expect(html).toContain('lot L7');
    expect(html).toContain('falls short');
  });

  it('shows nothing of any other cable', () => {
    for (const text of [html, reportTypst(document, 'a4')]) expect(text).not.toMatch(/Zinnober|Stall of Zed|>pz</);
  });

  it('says no word of intent', () => {
    expect(html).not.toMatch(/fake|lie\b|lied|cheat|fraud|sold as|verdict|pass(ed)?\b|fail(ed|s)?\b/i);
  });

  it('is refused for a cable that is not there', () => {
    expect(() => makerDocument(of, 'nobody', DAY)).toThrow(NoSuchCable);
  });

  it('prints the reply word for word', () => {
    const b = twoCables().say('reply', {
      reply: 'r1',
      cable: 'a',
      reply_text: 'Our =cmd() <i>lot</i> is fine.',
      by: 'Alder',
    });
    b.say('reply', { reply: 'r2', cable: 'z', reply_text: 'another word' });
    const printed = reportHtml(makerDocument(seen(b), 'a', DAY));
    expect(printed).toContain('Our =cmd() &lt;i&gt;lot&lt;/i&gt; is fine.');
    expect(printed).not.toContain('another word');
  });

  it('leaves room for a reply until one has come', () => {
    expect(document.sections.at(-1)!.blocks.at(-1)).toMatchObject({ kind: 'writing', lines: 4 });
    expect(html).toContain('Your reply');
    const b = twoCables().say('reply', { reply: 'r1', cable: 'a', reply_text: 'It is fine.' });
    expect(reportHtml(makerDocument(seen(b), 'a', DAY))).not.toContain('class="writing"');
  });

  it('takes any name as text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 30 }), (name) => {
        const made = reportHtml(makerDocument(seen(twoCables(`<b>${name}`)), 'a', DAY));
        return !made.includes('<b><b>') && !made.includes('<bdi><b>');
      }),
      { seed: 9, numRuns: 8 },
    );
  });
});

describe('a draft about a cable that is not copper', () => {
  const demo = demoPublished();
  const text = reportHtml(makerDocument(demo, 'tollgate', DAY)).replaceAll('\u00a0', ' ');
  it('says what its readings leave of tin, over copper and over aluminium', () => {
    const share = demo.findings.cables.find(({ cable }) => cable === 'tollgate')!.metal['tinned clad aluminium']!;
    expect(text).toContain('held against tinned copper, too, and leave it no chance');
    expect(text).toContain(`is tinned has a chance of ${(100 * share).toFixed(1)} %`);
    expect(text).not.toContain('was not among the metals');
  });
  it('tells all that the ± is made of', () => {
    const [, made] = /What the ± of the area is made of: ([^.]*)\./.exec(text)!;
    const shares = [...made!.matchAll(/(\d+) %(?=,|$)/g)].map(([, share]) => Number(share));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBe(100);
    expect(made).toMatch(/everything under 3 % together \d+ %$/);
  });
  it('names the pieces that were worn out, and puts the question as one', () => {
    expect(text).toMatch(/>[A-Z]{2}, 3 pieces</);
    expect(text).not.toMatch(/>3 pieces</);
    expect(text).toContain(`The question: ${demo.trial.purpose}`);
  });
});

describe('the usual objections', () => {
  const of = seen(twoCables());
  const answers = objectionsTo(ofOneCable(of.trial, of.findings, 'a'));
  const answer = (id: string) => answers.find((one) => one.id === id)!.answer;

  it('are eight, each with an answer in whole sentences', () => {
    expect(answers.map(({ id }) => id)).toEqual(['tool', 'tin', 'cold', 'lay', 'stock', 'sample', 'paid', 'cut']);
    for (const one of answers) expect(one.answer).toMatch(/^[A-Z].{20,}\.$/s);
  });

  it('are answered from the figures of the trial', () => {
    expect(answer('stock')).toContain('lot L7, bought on 2026-09-02');
    expect(answer('paid')).toContain('Nothing was stated about interests.');
    expect(answer('tool')).toContain('No control piece was measured beside it.');
    const ohms = of.findings.cables[0]!.claims.find(({ reading }) => reading === 'AWG by resistance')!;
    // 0.393 % of the ohms for each degree from 20 °C: IEC 60028:1925.
    const degrees = (ohms.found!.value / ohms.required! - 1) / 0.00393;
    expect(answer('cold')).toContain(`would have to be ${degrees.toFixed(0)} °C from what was read`);
  });

  it('say of the whole piece what cutting cannot have changed', () => {
    const demo = demoPublished();
    const cut = objectionsTo(ofOneCable(demo.trial, demo.findings, 'quill')).find(({ id }) => id === 'cut')!.answer;
    expect(cut).toContain('of the whole piece that the others were cut from');
  });

  it('are pasted with the address of the section that they rest on, where one was given', () => {
    const cold = answers.find(({ id }) => id === 'cold')!;
    expect(pasteable(cold, 'https://club.example/part1#top')).toMatch(/\nhttps:\/\/club\.example\/part1#conditions$/);
    expect(pasteable(cold, ' ')).toBe(`“${cold.said}”\n${cold.answer}`);
  });
});

describe('repeats on one line', () => {
  const reading = (value: string, unit: string, position = '') => ({ row: { value, unit }, position });
  it.each([
    [[reading('.948', 'mohm')], '.948 mΩ'],
    [[reading('95.71', 'g'), reading('95.70', 'g')], '95.71, 95.70 g'],
    [[reading('1 3/8', 'in'), reading('5 ft 6 in', '')], '1 3/8, 5 ft 6 in'],
    [[reading('1', 'mm', 'up'), reading('2', 'mm', 'up'), reading('3', 'mm', 'down')], 'up 1, 2; down 3 mm'],
    [[reading('686', 'count')], '686'],
  ])('%j is %s', (readings, text) => expect(typedTogether(readings)).toBe(text));
});
