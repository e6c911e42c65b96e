import { paperTheme } from '../../theme.ts';
import { noBreak } from '../../words/noBreak.ts';
import type { Block, Cell, ReportDocument } from '../document/blocks.ts';
import { array, call, joined, literal } from './typst.ts';

export type ReportPaper = 'a4' | 'letter';

/** Widths of the papers and of the text, mm. ISO 216; ANSI/ASME Y14.1 size A. */
const PAPERS = { a4: { name: 'a4', side: 20 }, letter: { name: 'us-letter', side: 22.95 } } as const;
const TEXT_MM = 170;
/** px of the drawings to mm: 96 to the inch. */
const MM_PER_PX = 25.4 / 96;

const { ink, ink2, rule, edge } = paperTheme;
const colour = (hex: string): string => `rgb(${literal(hex)})`;

/** A word longer than this may break anywhere, so that it cannot run off the paper. */
const LONG_WORD = /\S{24}(?=\S)/gu;
const breakable = (typed: string): string => typed.replace(LONG_WORD, '$&\u200b');

const text = (typed: string, named: Readonly<Record<string, string>> = {}): string =>
  call('text', named, literal(breakable(noBreak(typed))));

const quiet = (typed: string): string => text(typed, { size: '8.5pt', fill: colour(ink2) });

function cell(content: Cell): string {
  if (typeof content === 'string') return text(content);
  return joined([text(content.value, { weight: '600' }), text(content.after, { fill: colour(ink2) })]);
}

/** Shares of the width by how much each column holds, so that words get more room than figures. */
function columnsOf({ head, rows }: Extract<Block, { kind: 'table' }>): string {
  const length = (content: Cell) => (typeof content === 'string' ? content : `${content.value}${content.after}`).length;
  const widest = head.map((title, i) => {
    const longest = Math.max(...rows.map((row) => length(row[i] ?? '')), 1);
    const longestWord = Math.max(...title.split(' ').map((word) => word.length));
    return Math.min(60, Math.max(longestWord + 1, Math.sqrt(longest) * 3, Math.min(longest, 18)));
  });
  return array(widest.map((w) => `${w.toFixed(1)}fr`));
}

function table(one: Extract<Block, { kind: 'table' }>): string {
  const { head, sides, rows, caption } = one;
  const named = head.some((title) => title !== '');
  const header = named
    ? [
        call(
          'table.header',
          {},
          ...head.map((title) => quiet(title)),
          call('table.hline', { stroke: `0.75pt + ${colour(ink)}` }),
        ),
      ]
    : [];
  const body = rows.flatMap((row) =>
    row.map((content, i) => (i === 0 ? call('strong', {}, cell(content)) : cell(content))),
  );
  const drawn = call(
    'table',
    {
      columns: columnsOf(one),
      align: array(sides.map((side) => `${side} + top`)),
      stroke: `(x, y) => if y > ${named ? 0 : -1} { (bottom: 0.5pt + ${colour(rule)}) }`,
      inset: '(x: 3pt, y: 4pt)',
    },
    ...header,
    ...body,
  );
  return joined([
    call('block', { above: '10pt', below: '4pt', width: '100%' }, call('text', { size: '9pt' }, drawn)),
    call('block', { below: '12pt' }, quiet(caption)),
  ]);
}

function picture({ svg, width, description, caption }: Extract<Block, { kind: 'picture' }>): string {
  const mm = Math.min(TEXT_MM, width * MM_PER_PX).toFixed(2);
  const image = call(
    'image',
    { format: literal('svg'), width: `${mm}mm`, alt: literal(description) },
    call('bytes', {}, literal(svg)),
  );
  return call(
    'block',
    { breakable: 'false', above: '12pt', below: '12pt' },
    joined([image, call('block', { above: '6pt' }, quiet(caption))]),
  );
}

function block(one: Block): string {
  switch (one.kind) {
    case 'paragraph':
      return call('block', { below: '7pt' }, call('par', {}, one.quiet ? quiet(one.text) : text(one.text)));
    case 'heading':
      return call('heading', { level: '2' }, text(one.text));
    case 'list':
      return call('list', { spacing: '5pt' }, ...one.items.map((item) => text(item)));
    case 'quote':
      return joined([
        call('block', { inset: '(left: 8pt)', stroke: `(left: 1pt + ${colour(edge)})`, below: '4pt' }, text(one.text)),
        call('block', { below: '8pt' }, quiet(one.by)),
      ]);
    case 'picture':
      return picture(one);
    case 'table':
      return table(one);
  }
}

/** The mark: jacket, claim, copper. */
const MARK =
  '<svg xmlns="http://www.w3.org/2000/svg" width="26" height="26" viewBox="0 0 26 26"><circle cx="13" cy="13" r="13" fill="#15191A"/><circle cx="13" cy="13" r="9.6" fill="#FFFFFF"/><circle cx="13" cy="13" r="7.7" fill="none" stroke="#15191A" stroke-width="1.4" stroke-dasharray="2.42 1.61"/><circle cx="13" cy="13" r="5.6" fill="#B4623A"/></svg>';

function preamble({ title, dataset }: ReportDocument, paper: ReportPaper): string[] {
  const { name, side } = PAPERS[paper];
  return [
    `set document(title: ${literal(title)}, author: ${literal(dataset.creator)}, description: ${literal(dataset.description)}, keywords: ("cable", "measurement"))`,
    `set text(font: ("Source Sans 3",), size: 9.5pt, lang: "en", fill: ${colour(ink)})`,
    'set par(leading: 5pt, justify: false)',
    `set page(paper: ${literal(name)}, margin: (x: ${side}mm, top: 16mm, bottom: 18mm), footer: context ${footer()})`,
    `show heading: set text(font: ("Besley", "Source Sans 3"), weight: 600)`,
    'show heading.where(level: 1): it => block(above: 22pt, below: 9pt, sticky: true, text(size: 14pt, it.body))',
    'show heading.where(level: 2): it => block(above: 16pt, below: 7pt, sticky: true, text(size: 11pt, it.body))',
    'show table.cell.where(y: 0): set par(leading: 3pt)',
    'show title: set par(leading: 8pt)',
    'set list(indent: 0pt, body-indent: 6pt)',
  ];
}

function footer(): string {
  const size = { size: '8pt', fill: colour(ink2) };
  return call(
    'grid',
    { columns: '(1fr, auto, auto)', 'column-gutter': '12pt' },
    call('text', size, 'foot'),
    call('text', size, 'licence'),
    call('text', size, 'counter(page).display("1 of 1", both: true)'),
  );
}

/**
 * The report in Typst's language, for a PDF with real text, bookmarks, tags and page numbers. All of it is code with literals;
 * nothing that a person typed can change how it is set.
 */
export function reportTypst(document: ReportDocument, paper: ReportPaper): string {
  const { title, lead, partLine, sections, foot, licence } = document;
  const top = call(
    'grid',
    { columns: '(auto, 1fr)', 'column-gutter': '6pt', align: '(left + horizon, right + horizon)' },
    joined([
      call(
        'box',
        { baseline: '25%' },
        call(
          'image',
          { format: literal('svg'), width: '6mm', alt: literal('Cupel') },
          call('bytes', {}, literal(MARK)),
        ),
      ),
      text(' Cupel', { font: '("Besley",)', size: '12pt', weight: '600' }),
    ]),
    quiet(partLine),
  );
  const content = [
    top,
    call('line', { length: '100%', stroke: `0.75pt + ${colour(ink)}` }),
    call(
      'block',
      { above: '18pt', below: '8pt' },
      call('title', {}, text(title, { font: '("Besley", "Source Sans 3")', size: '23pt', weight: '600' })),
    ),
    call('block', { below: '14pt', width: '82%' }, call('par', { leading: '6pt' }, text(lead, { size: '11.5pt' }))),
    ...sections.flatMap(({ title: t, blocks }) => [call('heading', { level: '1' }, text(t)), ...blocks.map(block)]),
  ];
  const lines = [
    `let foot = ${literal(foot)}`,
    `let licence = ${literal(licence.name)}`,
    ...preamble(document, paper),
    ...content,
  ];
  return `#{\n${lines.join('\n')}\n}\n`;
}
