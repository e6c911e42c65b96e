import { paperTheme } from '../../theme.ts';
import { noBreak } from '../../words/noBreak.ts';
import { type Block, type Cell, cellText, type ReportDocument } from '../document/blocks.ts';
import { type Setting, TIGHT, USUAL } from './setting.ts';
import { array, call, joined, literal } from './typst.ts';
import { withoutEmoji } from './withoutEmoji.ts';

export type ReportPaper = 'a4' | 'letter';

/** The papers and their widths, mm. ISO 216; ANSI/ASME Y14.1 size A. */
const PAPERS = { a4: { name: 'a4', width: 210 }, letter: { name: 'us-letter', width: 215.9 } } as const;
/** px of the drawings to mm: 96 to the inch. */
const MM_PER_PX = 25.4 / 96;

const { ink, ink2, rule, edge } = paperTheme;
const colour = (hex: string): string => `rgb(${literal(hex)})`;

/** A word longer than this may break anywhere, so that it cannot run off the paper. */
const LONG_WORD = /\S{24}(?=\S)/gu;
const breakable = (typed: string): string => typed.replace(LONG_WORD, '$&\u200b');

const text = (typed: string, named: Readonly<Record<string, string>> = {}): string =>
  call('text', named, literal(breakable(noBreak(withoutEmoji(typed)))));

const quiet = (typed: string): string => text(typed, { size: '8.5pt', fill: colour(ink2) });

function cell(content: Cell): string {
  if (typeof content === 'string') return text(content);
  return joined([text(content.value, { weight: '600' }), text(content.after, { fill: colour(ink2) })]);
}

/** A column whose cells are all this short, in characters, is as wide as they are; the others share what is left. */
const SHORT_CELL = 26;
/** Capitals of a short unit are broader than most letters. */
const LEAST_CELL = 7;
/** Characters that short columns may take together: about two thirds of a line. */
const SHORT_TOGETHER = 76;
/** Width of a strong character, em, of Source Sans 3; digits are narrower. */
const CHARACTER = 0.51;

/** Short columns as wide as what they hold, long ones by how much they hold, so that words get the room that figures leave. */
function columnsOf({ head, rows }: Extract<Block, { kind: 'table' }>): string {
  const longest = head.map((title, i) => {
    const longestWord = Math.max(...title.split(' ').map((word) => word.length));
    return Math.max(longestWord, ...rows.map((row) => cellText(row[i] ?? '').length));
  });
  const short = longest.map((length, i) => length <= SHORT_CELL && (i > 0 || longest.some((l) => l > SHORT_CELL)));
  const together = longest.reduce((sum, length, i) => sum + (short[i] ? length : 0), 0);
  const squeezed = together > SHORT_TOGETHER;
  return array(
    longest.map((length, i) => {
      if (short[i] && !squeezed) return `${(CHARACTER * Math.max(LEAST_CELL, length)).toFixed(2)}em + 8pt`;
      // Where all are squeezed, names come first; elsewhere long texts break well, and get less than they hold.
      if (squeezed) return `${(Math.min(18, Math.max(5, length)) * (i === 0 ? 1.3 : 1)).toFixed(1)}fr`;
      return `${Math.sqrt(Math.max(4, length)).toFixed(2)}fr`;
    }),
  );
}

function table(one: Extract<Block, { kind: 'table' }>, setting: Setting): string {
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
      align: `(x, y) => ${array(sides)}.at(x) + if y == 0 and ${named} { bottom } else { top }`,
      stroke: `(x, y) => if y > ${named ? 0 : -1} { (bottom: 0.5pt + ${colour(rule)}) }`,
      inset: setting.cellInset,
    },
    ...header,
    ...body,
  );
  const parts = [
    call(
      'block',
      { above: setting.aboveTable, below: '4pt', width: '100%' },
      call('text', { size: setting.tableText }, drawn),
    ),
    call('block', { below: setting.belowTable }, quiet(caption)),
  ];
  if (setting.wholeTables && linesOf(one) <= MOST_WHOLE_LINES)
    return call('block', { breakable: 'false', width: '100%' }, joined(parts));
  return joined(parts);
}

/** A table of no more lines than this stands on one page: less than half of the paper, so that no page is left all but empty. */
const MOST_WHOLE_LINES = 24;
/** Characters that a line of a table's text takes where one column holds most of it. */
const LINE_CHARACTERS = 70;

/** About how many lines a table takes, its longest cells broken. */
function linesOf({ rows, caption }: Extract<Block, { kind: 'table' }>): number {
  const rowLines = rows.map((row) => Math.ceil(Math.max(1, ...row.map((c) => cellText(c).length)) / LINE_CHARACTERS));
  return 1 + rowLines.reduce((sum, lines) => sum + lines, 0) + Math.ceil(caption.length / (2 * LINE_CHARACTERS));
}

/** Words and attributes of a drawing, each by itself: parting a whole drawing into its signs takes seconds. */
const DRAWN_WORDS = /[^<>"]+/g;

function picture(one: Extract<Block, { kind: 'picture' }>, { textWidth }: Setting): string {
  const { svg, width, description, caption } = one;
  const mm = Math.min(textWidth, width * MM_PER_PX).toFixed(2);
  const image = call(
    'image',
    { format: literal('svg'), width: `${mm}mm`, alt: literal(description) },
    call('bytes', {}, literal(svg.replace(DRAWN_WORDS, withoutEmoji))),
  );
  return call(
    'block',
    { breakable: 'false', above: '12pt', below: '12pt' },
    joined([image, call('block', { above: '6pt' }, quiet(caption))]),
  );
}

/** Ruled lines to write on; a reader hears their label alone. */
function writing({ lines, label }: Extract<Block, { kind: 'writing' }>): string {
  const ruled = call('line', { length: '100%', stroke: `0.5pt + ${colour(edge)}` });
  const each = `${call('v', {}, '7mm')} + pdf.artifact(${ruled})`;
  return joined([call('block', { below: '0pt' }, quiet(label)), ...Array.from({ length: lines }, () => each)]);
}

function block(one: Block, setting: Setting): string {
  switch (one.kind) {
    case 'paragraph':
      return call(
        'block',
        { below: setting.belowParagraph },
        call('par', {}, one.quiet ? quiet(one.text) : text(one.text)),
      );
    case 'heading':
      return call('heading', { level: '2' }, text(one.text));
    case 'list':
      return call('list', { spacing: setting.betweenItems }, ...one.items.map((item) => text(item)));
    case 'quote':
      return joined([
        call('block', { inset: '(left: 8pt)', stroke: `(left: 1pt + ${colour(edge)})`, below: '4pt' }, text(one.text)),
        call('block', { below: '8pt' }, quiet(one.by)),
      ]);
    case 'picture':
      return picture(one, setting);
    case 'table':
      return table(one, setting);
    case 'writing':
      return writing(one);
  }
}

/** The mark: jacket, claim, copper. */
const MARK =
  '<svg xmlns="http://www.w3.org/2000/svg" width="26" height="26" viewBox="0 0 26 26"><circle cx="13" cy="13" r="13" fill="#15191A"/><circle cx="13" cy="13" r="9.6" fill="#FFFFFF"/><circle cx="13" cy="13" r="7.7" fill="none" stroke="#15191A" stroke-width="1.4" stroke-dasharray="2.42 1.61"/><circle cx="13" cy="13" r="5.6" fill="#B4623A"/></svg>';

function preamble({ title, dataset }: ReportDocument, paper: ReportPaper, setting: Setting): string[] {
  const { name, width } = PAPERS[paper];
  const { textWidth, text: size, leading, top, bottom, heading, aboveHeading, belowHeading } = setting;
  const side = ((width - textWidth) / 2).toFixed(2);
  const headed = (level: 1 | 2) =>
    `show heading.where(level: ${level}): it => block(above: ${aboveHeading[level - 1]}, below: ${belowHeading[level - 1]}, sticky: true, text(size: ${heading[level - 1]}, it.body))`;
  return [
    `set document(title: ${literal(title)}, author: ${literal(dataset.creator)}, description: ${literal(dataset.description)}, keywords: ("cable", "measurement"))`,
    `set text(font: ("Source Sans 3",), size: ${size}, lang: "en", fill: ${colour(ink)})`,
    `set par(leading: ${leading}, justify: false)`,
    `set page(paper: ${literal(name)}, margin: (x: ${side}mm, top: ${top}, bottom: ${bottom}), footer: context ${footer()})`,
    `show heading: set text(font: ("Besley", "Source Sans 3"), weight: 600)`,
    headed(1),
    headed(2),
    'show table.cell.where(y: 0): set par(leading: 3pt)',
    `show title: set par(leading: ${setting.titleLeading})`,
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

/** A title of more characters is set smaller, so that one line usually takes it. */
const LONG_TITLE = 36;

const titleSize = (title: string, { title: usual, longTitle }: Setting): string =>
  [...title].length > LONG_TITLE ? longTitle : usual;

/**
 * The report in Typst's language, for a PDF with real text, bookmarks, tags and page numbers. All of it is code with literals;
 * nothing that a person typed can change how it is set.
 */
export function reportTypst(document: ReportDocument, paper: ReportPaper): string {
  const { title, lead, partLine, sections, foot, licence, tight = false } = document;
  const setting = tight ? TIGHT : USUAL;
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
      { above: setting.aboveTitle, below: setting.belowTitle },
      call(
        'title',
        {},
        text(title, { font: '("Besley", "Source Sans 3")', size: titleSize(title, setting), weight: '600' }),
      ),
    ),
    call(
      'block',
      { below: setting.belowLead, width: setting.leadWidth },
      call('par', { leading: setting.leadLeading }, text(lead, { size: setting.lead })),
    ),
    ...sections.flatMap(({ title: t, blocks }) => [
      call('heading', { level: '1' }, text(t)),
      ...blocks.map((one) => block(one, setting)),
    ]),
  ];
  const lines = [
    `let foot = ${literal(withoutEmoji(foot))}`,
    `let licence = ${literal(licence.name)}`,
    ...preamble(document, paper, setting),
    ...content,
  ];
  return `#{\n${lines.join('\n')}\n}\n`;
}
