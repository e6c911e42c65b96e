/** The report set for print: tables kept whole, no sign that would come out as an empty box. */
import { describe, expect, it } from 'vitest';
import type { Block, ReportDocument } from '../../../src/report/publish/document/blocks.ts';
import { CC_BY } from '../../../src/report/publish/document/blocks.ts';
import { bendSection } from '../../../src/report/publish/document/places.ts';
import { reportTypst } from '../../../src/report/publish/print/reportTypst.ts';
import { withoutEmoji } from '../../../src/report/publish/print/withoutEmoji.ts';
import { demoPublished } from '../../support/demoReport.ts';

const table = (rows: number): Block => ({
  kind: 'table',
  caption: 'Caption.',
  head: ['Name', 'figure'],
  sides: ['left', 'right'],
  rows: Array.from({ length: rows }, (_, i) => [`row ${i}`, '1']),
});

const document = (blocks: readonly Block[], more: Partial<ReportDocument> = {}): ReportDocument => ({
  title: 'Title',
  lead: 'Lead.',
  partLine: 'Part 🔥 one',
  sections: [{ id: 'one', title: 'One', blocks }],
  foot: 'Club 🔥',
  licence: CC_BY,
  dataset: {
    name: '',
    description: '',
    creator: '',
    content: '',
    version: '',
    published: null,
    measured: [],
    techniques: [],
  },
  ...more,
});

describe('a table in print', () => {
  const whole = /block\(breakable: false, width: 100%, block\([^\n]*table\(/;
  it('stands on one page with its caption where it is short', () => {
    expect(reportTypst(document([table(7)]), 'a4')).toMatch(whole);
  });
  it('goes over pages where it is long, or where all is set close', () => {
    expect(reportTypst(document([table(60)]), 'a4')).not.toMatch(whole);
    expect(reportTypst(document([table(7)], { tight: true }), 'a4')).not.toMatch(whole);
  });
});

describe('emoji in print', () => {
  it.each([
    ['boot 🔥 run', 'boot run'],
    ['🔥', '•'],
    ['Part 🔥', 'Part '],
    ['👨‍👩‍👧 two 🇫🇷 three', ' two three'],
    ['1️⃣ first', '1 first'],
    ['33.6 mm² ± 2 % ™ © → a', '33.6 mm² ± 2 % ™ © → a'],
    ['電線 кабель', '電線 кабель'],
  ])('%j becomes %j', (typed, printed) => expect(withoutEmoji(typed)).toBe(printed));

  it('are taken out of a drawing word by word, however long it is', () => {
    const path = `<path d="${'M1 2L3 4'.repeat(20_000)}"/>`;
    const svg = `<svg>${path}<text>Cable 🔌 one</text></svg>`;
    const picture: Block = { kind: 'picture', svg, width: 1, height: 1, description: '', caption: '' };
    const before = performance.now();
    expect(reportTypst(document([picture]), 'a4')).toContain('<text>Cable one</text>');
    expect(performance.now() - before).toBeLessThan(2000);
  });

  it('are nowhere on the page', () => {
    expect(reportTypst(document([{ kind: 'paragraph', text: 'Cable 🔌⚡ one' }]), 'a4')).not.toMatch(/[🔥🔌⚡]/u);
  });
});

describe('notes on bending', () => {
  const { findings } = demoPublished();
  it('say of which cables they are, unless they are of all', () => {
    const [section] = bendSection(findings);
    const list = section!.blocks.find((block) => block.kind === 'list');
    const bent = findings.flex!.cables.filter(({ role }) => role !== 'control');
    const items = list?.kind === 'list' ? list.items : [];
    expect(items.length).toBeGreaterThan(1);
    for (const item of items) {
      const about = bent.filter(({ cautions }) => cautions.some((caution) => item.endsWith(caution)));
      expect(about.length).toBeGreaterThan(0);
      if (about.length < bent.length) for (const { name } of about) expect(item.split(': ')[0]).toContain(name);
    }
    expect(items.some((item) => item.startsWith('Quill: '))).toBe(true);
  });
});
