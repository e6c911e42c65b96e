/** What the invented club published: two sealed parts, and between them a reading put right after a maker's reply. */
import { readPackage } from '../../src/report/package/readPackage.ts';
import { sealedPath } from '../../src/report/package/sealedFiles.ts';
import { type SealAsked, sealedPackage, sealRow, unseal } from '../../src/report/publish/seal.ts';
import { fold } from '../../src/trial/fold.ts';
import { filesOf, type PackageTables, type Row, row } from '../../test/simulate/tables.ts';

const COUNTED = { specimen: 'brackenfell-apart', quantity: 'strand_count' } as const;
/** What was typed for it on the bench day: two digits of the tally sheet stood the wrong way round. */
const MISTYPED = '668';
const BY = 'Fenwater Rally Club';
const LEVEL = 0.95;

type Part = Pick<SealAsked, 'part' | 'title' | 'places' | 'at'>;

const FIRST: Part = { part: '1', title: 'What is inside', places: ['inside'], at: '2026-10-07T18:00:00Z' };
const SECOND: Part = {
  part: '2',
  title: 'How they bend, last and carry',
  places: ['bend', 'jacket', 'amps'],
  at: '2026-10-24T18:00:00Z',
};
/** Rows of these were not there yet when the first part was sealed. */
const LATER = { specimens: /-heat$/, currents: /./ } as const;

/** The readings of the bench day as they stood in the first part: one strand count with two digits swapped. */
export function asFirstTyped(readings: readonly Row[]): Row[] {
  return readings.map((each) => (isCount(each) ? { ...each, value: MISTYPED } : each));
}

const isCount = ({ specimen, quantity }: Row): boolean =>
  specimen === COUNTED.specimen && quantity === COUNTED.quantity;

/** The same count made anew after the maker's reply, as the last reading; the one before it is struck out. */
export function countedAgain(readings: readonly Row[], strands: number): { reading: Row; struck: Row } {
  const first = readings.find(isCount)!;
  const at = '2026-10-14T17:30:00Z';
  return {
    reading: row({
      ...first,
      reading: `r${String(readings.length + 1).padStart(3, '0')}`,
      value: strands,
      at,
    }),
    struck: row({
      reading: first.reading!,
      why: 'two digits were swapped when the tally sheet was typed',
      by: 'club bench',
      at: '2026-10-14T17:31:00Z',
    }),
  };
}

export const REPLY: Row = row({
  reply: 'brackenfell-1',
  cable: 'brackenfell',
  asked_on: '2026-10-07',
  deadline: '2026-10-21',
  received_on: '2026-10-12',
  no_reply: 'no',
  reply_text:
    'We lay 686 strands into this cable, seven bundles of 98. We cannot see how 668 were found and ask that they be counted once more.',
  answer: 'We counted again and found 686: two digits had been swapped at our keyboard. Part 1 lists the change.',
  by: 'Brackenfell (invented)',
});

/** Rows as they stood when the first part was sealed. */
export function beforeFirst(tables: PackageTables): PackageTables {
  return {
    ...tables,
    specimens: tables.specimens?.filter(({ specimen }) => !LATER.specimens.test(specimen!)),
    currents: [],
  };
}

const entriesIn = (trial: string, tables: PackageTables, now: string) => {
  const files = [...filesOf(trial, '', '', tables)].map(([name, text]): [string, Uint8Array] => [
    name,
    new TextEncoder().encode(text),
  ]);
  const { entries, refusals } = readPackage(new Map(files), { trial, now });
  if (refusals.length > 0) throw new RangeError(`the invented trial was refused in ${refusals[0]!.file}`);
  return entries;
};

/** The rows of parts.csv: the first from the rows as they stood then, the second from all. */
export function sealedRows(trial: string, first: PackageTables, all: PackageTables): Row[] {
  const seal = (part: Part, tables: PackageTables) =>
    sealRow(entriesIn(trial, tables, part.at), { ...part, level: LEVEL, draws: 0, hidden: false, by: BY });
  return [seal(FIRST, first), seal(SECOND, all)];
}

/** The folders of both parts, each a package of its own: path → text. */
export function sealedFolders(trial: string, tables: PackageTables): Map<string, string> {
  const entries = entriesIn(trial, tables, SECOND.at);
  const files = fold(entries).parts.flatMap((part, i) => {
    const again = unseal(entries, part);
    if (again === null) throw new RangeError(`part ${part.part} of the invented trial cannot be computed again`);
    return [...sealedPackage(again)].map(([file, text]): [string, string] => [sealedPath(i + 1, file), text]);
  });
  return new Map(files);
}
