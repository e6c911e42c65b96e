import { TABLES } from '../../src/journal/tables.ts';
import { zipPackage } from '../../src/report/package/zip.ts';
import { GOOD } from '../report/package/files.ts';
import { type Chance, NASTY, wounded } from './chance.ts';

const ENCODER = new TextEncoder();
const KEYS = ['quill', 'saltmarsh', 'q1', 's1', 'r1', 'r2', 'scale', 'club', 'swap', 'apart', 'g', 'mm', 'copper'];

/** A cell as somebody might type it, or as nobody would. */
function madeCell(chance: Chance): string {
  if (chance.often(35)) return chance.one(KEYS);
  if (chance.often(45)) return String(chance.below(100_000) / 10 ** chance.below(6));
  return chance.one(NASTY);
}

function quoted(cell: string, chance: Chance): string {
  return /[",\r\n]/.test(cell) && chance.often(80) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** A table of the data package with its own columns, and anything in its rows. */
function madeTable(chance: Chance): [string, string] {
  const shape = chance.one(TABLES);
  const columns = shape.columns.map(({ name }) => name).filter(() => chance.often(85));
  if (chance.often(10)) columns.push(chance.one(NASTY));
  const rows = Array.from({ length: chance.below(5) }, () =>
    columns.map(() => quoted(madeCell(chance), chance)).slice(0, chance.often(95) ? undefined : chance.below(5)),
  );
  const end = chance.one(['\n', '\r\n', '\r']);
  return [shape.file, [columns, ...rows].map((row) => row.join(chance.often(97) ? ',' : ';')).join(end)];
}

/** One cell of a good table put out of order. */
function misTyped(text: string, chance: Chance): string {
  const lines = text.split('\n');
  const at = chance.below(lines.length);
  const cells = (lines[at] ?? '').split(',');
  cells[chance.below(cells.length)] = quoted(madeCell(chance), chance);
  lines[at] = cells.join(',');
  return lines.join('\n');
}

/** A package of tables: good ones with a cell or some bytes out of order, and made-up ones beside or instead. */
export function madePackage(chance: Chance): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const [name, text] of Object.entries(GOOD)) {
    if (chance.often(7)) continue;
    let now: string = text;
    for (let wrong = chance.below(3); wrong > 0; wrong -= 1) now = misTyped(now, chance);
    const bytes = ENCODER.encode(now);
    files.set(chance.often(95) ? name : `folder/${name}`, chance.often(25) ? wounded(bytes, chance) : bytes);
  }
  for (let more = chance.below(3); more > 0; more -= 1) {
    const [name, text] = madeTable(chance);
    files.set(name, ENCODER.encode(text));
  }
  return files;
}

/** Archives to be wounded: packing them anew each time would take most of the time. */
export function madeArchives(chance: Chance, count: number): Uint8Array[] {
  return Array.from({ length: count }, () => {
    const files = new Map<string, Uint8Array>();
    for (const [path, bytes] of madePackage(chance)) if (isPathOfAZip(path)) files.set(path, bytes);
    return zipPackage(files);
  });
}

function isPathOfAZip(path: string): boolean {
  return path !== '' && !path.includes('\0');
}
