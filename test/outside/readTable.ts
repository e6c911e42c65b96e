import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Columns of a table of numbers in data/: lines that begin with # say where it comes from, the next line names the columns. */
export function readTable(name: string): Record<string, number[]> {
  const path = fileURLToPath(new URL(`./data/${name}`, import.meta.url));
  const lines = readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const names = lines[0].split(',');
  const rows = lines.slice(1).map((line) => line.split(',').map(Number));
  const bad = rows.findIndex((row) => row.length !== names.length || row.some(Number.isNaN));
  if (bad >= 0) throw new Error(`${name}: row ${bad + 1} is not ${names.length} numbers`);
  return Object.fromEntries(names.map((column, j) => [column, rows.map((row) => row[j])]));
}
