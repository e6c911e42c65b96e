/** A blind trial as it may be shown: cables and pieces by their codes, and nothing that gives a name away. */
import type { Entry } from '../journal/entry.ts';
import { rowKey } from '../journal/tableShape.ts';
import { tableOfKind } from '../journal/tables.ts';
import type { Trial } from './trial.ts';

/** What of a cable's row says nothing of who made or sold it; its claims are kept too. */
const KEPT_OF_CABLE: ReadonlySet<string> = new Set(['role', 'bought_length', 'bought_length_unit', 'stranding']);
/** Columns that name a cable or a piece, in any kind of row. */
const OF_CABLES: ReadonlySet<string> = new Set(['cable', 'tried_with']);
const OF_PIECES: ReadonlySet<string> = new Set(['specimen', 'cut_from', 'becomes', 'left', 'right']);

type Names = ReadonlyMap<string, string>;

/** A name for each thing: its code, or a number, and a number behind what would be called the same. */
function distinct(things: readonly { name: string; called: string }[]): Names {
  const taken = new Set<string>();
  const names = new Map<string, string>();
  for (const { name, called } of things) {
    let free = called;
    for (let number = 2; taken.has(free); number++) free = `${called} ${number}`;
    taken.add(free);
    names.set(name, free);
  }
  return names;
}

function cableNames({ cables, specimens }: Trial): Names {
  const code = (cable: string) => specimens.find((piece) => piece.cable === cable && piece.code !== '')?.code;
  return distinct(cables.map(({ cable }, place) => ({ name: cable, called: code(cable) ?? `cable ${place + 1}` })));
}

function pieceNames({ specimens }: Trial, cables: Names): Names {
  return distinct(
    specimens.map(({ specimen, cable, kind }) => ({
      name: specimen,
      called: `${cables.get(cable) ?? 'piece'} ${kind}`.trim(),
    })),
  );
}

/** Whether an entry stands aside, or anything said before it under the same name: none of it may come back. */
function asideIn(trial: Trial): (entry: Entry) => boolean {
  const ids = new Set(trial.aside.map(({ entry }) => entry));
  const readings = trial.readings
    .filter(({ standing }) => standing === 'aside')
    .map(({ row }) => nameOf('reading', row));
  const names = new Set([...trial.aside.map(({ kind, row }) => nameOf(kind, row)), ...readings]);
  return ({ id, kind, body }) => ids.has(id) || (tableOfKind(kind)?.key != null && names.has(nameOf(kind, body)));
}

const nameOf = (kind: string, row: Entry['body']): string => {
  const table = tableOfKind(kind);
  return `${kind}\u001f${table === null ? '' : rowKey(table, row)}`;
};

/**
 * The entries of a blind trial with every cable and piece under its code: for computing what may be shown. Not for keeping:
 * makers, sellers, prices, notes and what was put aside are left out.
 *
 * @param trial the fold of the same entries
 */
export function entriesByCode(entries: readonly Entry[], trial: Trial): Entry[] {
  const cables = cableNames(trial);
  const pieces = pieceNames(trial, cables);
  const isAside = asideIn(trial);
  const cell = (kind: string, column: string, text: string): [string, string][] => {
    const name = text.trim();
    if (OF_CABLES.has(column)) return [[column, cables.get(name) ?? 'another cable']];
    if (OF_PIECES.has(column)) return name === '' ? [] : [[column, pieces.get(name) ?? 'another piece']];
    const open = kind !== 'cable' || KEPT_OF_CABLE.has(column) || column.startsWith('claimed_');
    return open && column !== 'note' ? [[column, text]] : [];
  };
  return entries
    .filter((entry) => entry.kind !== 'note' && entry.kind !== 'withdrawal' && !isAside(entry))
    .map((entry) => ({
      ...entry,
      body: Object.fromEntries(Object.entries(entry.body).flatMap(([column, text]) => cell(entry.kind, column, text))),
    }));
}
