/** Sentences and tables that quote docs/figures.md, taken out of it so that they cannot differ from it. */
import { markdownTable } from './markdownTable.ts';

type Row = Readonly<Record<string, string>>;

interface Section {
  heading: string;
  rows: Row[];
}

const cellsOf = (line: string): string[] =>
  line
    .slice(1, -1)
    .split('|')
    .map((cell) => cell.trim());

/** The tables of a page of markdown under their headings, each row by the name of its column. */
export function tablesOf(page: string): Section[] {
  const sections: Section[] = [];
  let head: string[] | null = null;
  for (const line of page.split('\n')) {
    const heading = /^#+ (.*)$/.exec(line);
    if (heading) {
      sections.push({ heading: heading[1]!, rows: [] });
      head = null;
    } else if (line.startsWith('|') && head === null) head = cellsOf(line);
    else if (line.startsWith('|') && !line.startsWith('| ---')) {
      const cells = cellsOf(line);
      sections.at(-1)!.rows.push(Object.fromEntries(head!.map((name, i) => [name, cells[i] ?? ''])));
    }
  }
  return sections;
}

function sectionOf(page: string, heading: string): Section {
  const found = tablesOf(page).find((section) => section.heading.startsWith(heading));
  if (!found) throw new RangeError(`docs/figures.md has no section "${heading}"`);
  return found;
}

function rowOf({ heading, rows }: Section, wanted: Row): Row {
  const found = rows.find((row) => Object.entries(wanted).every(([name, cell]) => row[name] === cell));
  if (!found) throw new RangeError(`docs/figures.md has no row ${JSON.stringify(wanted)} under "${heading}"`);
  return found;
}

/** `791/800 (98.9 %)` → `791 of 800`. */
function ofAll(cell: string | undefined): string {
  const match = /^(\d+)\/(\d+) \(/.exec(cell ?? '');
  if (!match) throw new RangeError(`"${cell}" in docs/figures.md is no count`);
  return `${match[1]} of ${match[2]}`;
}

const toolsOf = ({ heading }: Section): string =>
  heading.replace(/^Bench [AB]: /, '').replace(/, micrometer.*$|, caliper.*$/, '');

/** The three sentences on what was found in simulated lots, with the tools named. */
export function promises(page: string): string {
  const fine = sectionOf(page, 'Bench A');
  const rough = sectionOf(page, 'Bench B');
  const both = rowOf(fine, { readings: 'mass + ohms' });
  const eye = rowOf(fine, { readings: 'mass + ohms + eye' });
  const alone = rowOf(fine, { readings: 'mass only' });
  const roughBoth = rowOf(rough, { readings: 'mass + ohms' });
  const roughAlone = rowOf(rough, { readings: 'mass only' });
  return [
    `- **A pocket scale and a four-wire meter** (${toolsOf(fine)}). From mass and ohms the true area lay inside the 95 % interval for ${ofAll(both.covered)} cables, with a usual half-width of ${both['half-width']}; ${eye['half-width']!.replace(' (bare copper, seen red through)', '')} once bare copper had been seen by scraping a strand. The metal was named right in ${ofAll(both.metal)}, ${ofAll(both.accused)} honest copper cables had a claim fall short, and ${ofAll(both.missed)} cables that were short by 6 % or more went unseen.`,
    `- **A kitchen scale and a cheap four-wire meter** (${toolsOf(rough)}). From mass and ohms: inside for ${ofAll(roughBoth.covered)}, usual half-width ${roughBoth['half-width']}, metal right in ${ofAll(roughBoth.metal)}, ${ofAll(roughBoth.accused)} honest ones with a claim that fell short, ${ofAll(roughBoth.missed)} short ones unseen.`,
    `- **A scale and a rule alone.** Whether the copper is there can still be judged: of the cables that were short by 6 % or more, or not copper at all, ${ofAll(alone['copper missed'])} went unseen with the pocket scale and ${ofAll(roughAlone['copper missed'])} with the kitchen scale. Of the honest ones ${ofAll(alone.accused)} and ${ofAll(roughAlone.accused)} had a claim fall short.`,
  ].join('\n');
}

/** What redundancy cannot see, or sees rarely: complication and readings, as the page of figures names them. */
const UNSEEN: readonly (readonly [complication: string, readings: string])[] = [
  ['separator paper, +2 % mass', 'mass + ohms'],
  ['heavy tin, 93 to 95.5 % IACS', 'mass + ohms'],
  ['strand count short by 1/19', 'mass + strands'],
  ['length 1 mm long on 150 mm', 'mass + ohms'],
  ['wire 6 K warmer than noted', 'mass + ohms'],
  ['strand count short by 1/7', 'mass + strands'],
  ['two-wire ohms, +0.3 mΩ over 1 m', 'mass + ohms'],
  ["one specimen's mass 10 % wrong", 'mass + ohms'],
];

export function unseenTable(page: string): string {
  const section = sectionOf(page, 'With every cable of the lot');
  const heads = ['complication', 'readings', 'covered', 'flagged', 'accused'];
  const rows = UNSEEN.map(([complication, readings]) => {
    const row = rowOf(section, { complication, readings });
    return heads.map((head) => row[head]!);
  });
  return markdownTable(heads, rows);
}

/** The share of cables that a single lot may have inside its intervals, from the worst lot to the best. */
export function singleLots(page: string): string {
  const row = rowOf(sectionOf(page, 'Bench A'), { readings: 'mass + ohms' });
  return `The cables of one trial share the errors of its tools, so they are right or wrong together: over all lots ${ofAll(row.covered)} intervals from mass and ohms held the true area, in single lots of twenty it was ${row['in single lots']}.`;
}
