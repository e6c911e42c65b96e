/** Cables of the plan: adding one, filling blanks from the row above, and rows pasted from a spreadsheet. */
import { computed, signal } from '@preact/signals';
import { cablesFromPasted, type PastedRefusal } from '../../../../findings/pastedRows.ts';
import { CABLE_TABLE } from '../../../../journal/kinds/cable.ts';
import { asideCells } from '../../../../trial/setAside.ts';
import type { Cable, Trial } from '../../../../trial/trial.ts';
import { folded, say } from '../journal/journal.ts';
import { correctRow, type Row } from './correct.ts';

/** Cells that say which cable it is: these are never taken from the row above. */
const OWN: ReadonlySet<string> = new Set(['cable', 'role', 'note', 'lot', 'age']);

/** Adds a cable with the size of the last one, for most trials compare one size; nothing else is guessed. */
export async function addCable(trial: Trial): Promise<void> {
  const last = trial.cables.filter(({ role }) => role !== 'control').at(-1);
  const number = trial.cables.filter(({ role }) => role !== 'control').length + 1;
  await say('cable', {
    cable: newName(`c${number}`, namesOf(trial)),
    maker: `Cable ${number}`,
    claimed_size: last?.label.size ?? '2 AWG',
    claimed_metal: last?.label.metal ?? '',
  });
}

/** Names of all cables, those that were put aside too: a new one under such a name would stand aside as well. */
const namesOf = (trial: Trial) => [...trial.cables.map(({ cable }) => cable), ...asideCells(trial, 'cable', 'cable')];

const LETTERS = 'bcdfghjkmnpqrstvwxz';

/** A name that no cable has. Two letters by chance, so that two people who add a cable at once do not correct each other. */
function newName(start: string, names: readonly string[]): string {
  const taken = new Set(names);
  for (;;) {
    const [a, b] = crypto.getRandomValues(new Uint8Array(2));
    const name = `${start}${LETTERS[a! % LETTERS.length]}${LETTERS[b! % LETTERS.length]}`;
    if (!taken.has(name)) return name;
  }
}

/** Fills what is blank in a row with what stands in the row above; answers how many cells were filled. */
export async function sameAsAbove(row: Row, above: Row): Promise<number> {
  const filled = Object.fromEntries(
    CABLE_TABLE.columns
      .map(({ name }) => name)
      .filter((name) => !OWN.has(name) && (row[name] ?? '').trim() === '' && (above[name] ?? '').trim() !== '')
      .map((name) => [name, above[name]!]),
  );
  await correctRow('cable', row, filled);
  return Object.keys(filled).length;
}

/** What was pasted, until it is added or let go. */
export const pastedText = signal('');
/** True: pasted rows go into cables that have no maker yet, as far as there are any. */
export const fillUnnamed = signal(true);

export interface PastedReady {
  /** Rows to say, one for each cable. */
  rows: Row[];
  /** How many of them fill a cable that is there already. */
  filling: number;
  refused: readonly PastedRefusal[];
  /** How each place of the rows was understood; null: passed over. */
  columns: readonly (string | null)[];
  /** Cells that were taken apart, in words. */
  said: readonly string[];
}

/** Cables that a first trial began with and that nobody has named yet. */
export function unnamedCables(trial: Trial): Cable[] {
  return trial.cables.filter(({ row }) => /^Cable \d+$/.test(row.maker ?? '') && (row.model ?? '') === '');
}

/** What would be added of what was pasted; null while nothing is pasted. */
export const pasted = computed<PastedReady | null>(() => {
  const trial = folded.value;
  if (trial === null || pastedText.value.trim() === '') return null;
  const read = cablesFromPasted(pastedText.value, {
    trial: trial.trial,
    at: '',
    newId: () => '',
    now: Date.now(),
    cables: namesOf(trial),
  });
  const into = fillUnnamed.value ? unnamedCables(trial) : [];
  const rows = read.entries.map(({ body }, i) => {
    const there = into[i];
    return there === undefined ? body : { ...there.row, ...body, cable: there.cable };
  });
  return {
    rows,
    filling: Math.min(into.length, rows.length),
    refused: read.refused,
    columns: read.columns,
    said: read.said,
  };
});

/** What stays of a pasted text once its good rows are added: its headings and the rows that were refused, to be put right. */
export function refusedText(text: string, good: number, refused: readonly { line: number }[]): string {
  const lines = text.split(/\r?\n/);
  const wrong = new Set(refused.map(({ line }) => line));
  // A cell in quotation marks may run over several lines, whose numbers are then those of rows.
  if (wrong.size === 0 || text.includes('"')) return '';
  const filled = lines.filter((line) => line.trim() !== '').length;
  const headings = filled > good + wrong.size ? [lines.find((line) => line.trim() !== '')!] : [];
  return [...headings, ...lines.filter((_, i) => wrong.has(i + 1))].join('\n');
}

/** Adds the rows that could be read, and leaves the others where they were pasted; answers how many of each. */
export async function addPasted(): Promise<{ added: number; left: number }> {
  const ready = pasted.peek();
  if (ready === null) return { added: 0, left: 0 };
  const rest = refusedText(pastedText.peek(), ready.rows.length, ready.refused);
  pastedText.value = rest;
  for (const row of ready.rows) await say('cable', row);
  return { added: ready.rows.length, left: rest === '' ? 0 : new Set(ready.refused.map(({ line }) => line)).size };
}
