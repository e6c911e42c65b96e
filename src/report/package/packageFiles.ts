import type { TableShape } from '../../journal/tableShape.ts';
import { tableOfFile } from '../../journal/tables.ts';
import { photoAt } from './photos.ts';
import { sealedAt } from './sealedFiles.ts';

/** Files beside the tables that a package usually has and nothing is read from. */
const OWN_FILES: ReadonlySet<string> = new Set([
  'datapackage.json',
  'findings.json',
  'findings.csv',
  'readme.md',
  'readme.txt',
]);
/** What operating systems leave in folders and archives. */
const LITTER = /(^|\/)(__MACOSX\/|\.DS_Store$|Thumbs\.db$|desktop\.ini$|\._)/i;

/** The name of a path without a top folder that all paths share. */
export function withoutTopFolder(paths: readonly string[]): (path: string) => string {
  const counted = paths.filter((path) => !LITTER.test(path));
  const top = counted[0]?.split('/')[0] ?? '';
  const shared = counted.length > 0 && counted.every((path) => path.startsWith(`${top}/`));
  return (path) => (shared && path.startsWith(`${top}/`) ? path.slice(top.length + 1) : path);
}

/** Whether a file, named without its top folder, is one that the program reads or has written. */
export function belongsToPackage(path: string): boolean {
  return tableOfFile(path) !== null || OWN_FILES.has(path.toLowerCase()) || sealedAt(path) !== null;
}

export interface ChosenFiles {
  /** By file name of the table. */
  tables: Map<string, { shape: TableShape; bytes: Uint8Array }>;
  /** Photos that are named by their content, by path. */
  photos: Map<string, Uint8Array>;
  /** Paths of the other files, litter apart. */
  leftAside: string[];
}

/** Sorts the files of a folder into tables, photos and others; a folder within which everything lies is taken off. */
export function chooseFiles(files: ReadonlyMap<string, Uint8Array>): ChosenFiles {
  const slashed = [...files].map(([path, bytes]): [string, Uint8Array] => [path.replaceAll('\\', '/'), bytes]);
  const shortName = withoutTopFolder(slashed.map(([path]) => path));
  const tables: ChosenFiles['tables'] = new Map();
  const photos: ChosenFiles['photos'] = new Map();
  const leftAside: string[] = [];
  for (const [path, bytes] of slashed) {
    const name = shortName(path);
    const shape = tableOfFile(name);
    if (shape && !tables.has(shape.file)) tables.set(shape.file, { shape, bytes });
    else if (photoAt(name) !== null) photos.set(name, bytes);
    else if (sealedAt(name) !== null) continue;
    else if (!OWN_FILES.has(name.toLowerCase()) && !LITTER.test(path)) leftAside.push(name);
  }
  return { tables, photos, leftAside };
}

const MOST_NAMED = 5;

/** One note for all files that were left aside. */
export function leftAsideNote(leftAside: readonly string[]): string[] {
  if (leftAside.length === 0) return [];
  const named = leftAside.slice(0, MOST_NAMED).join(', ');
  const more = leftAside.length > MOST_NAMED ? ` and ${leftAside.length - MOST_NAMED} more` : '';
  const are = leftAside.length === 1 ? 'is no table of the package and was' : 'are no tables of the package and were';
  return [`${named}${more} ${are} left aside.`];
}
