import { closeSync, openSync, readSync } from 'node:fs';
import type Database from 'libsql';
import { DamagedData, StoreRefusal } from '../store.ts';

/** The first bytes of every SQLite file. https://www.sqlite.org/fileformat.html, 1.3.1. */
const MAGIC = 'SQLite format 3\0';

/** A shelf whose file cannot be trusted; says where it is and what was found. */
export class DamagedShelf extends StoreRefusal {
  override name = 'DamagedShelf';
  readonly path: string;
  readonly found: string;
  constructor(path: string, found: string, advice = USUAL_ADVICE, options?: ErrorOptions) {
    super(`The shelf in ${path} is damaged (${found}); nothing was changed. ${advice}`, options);
    this.path = path;
    this.found = found;
  }
}

const USUAL_ADVICE =
  'No good backup of it is known. Make a new shelf of everything that can still be read with: cupel restore (the damaged file is kept).';

/** What shows before a file is opened that it is no database; null when it looks like one. */
export function notADatabase(path: string): string | null {
  const start = Buffer.alloc(MAGIC.length);
  const file = openSync(path, 'r');
  try {
    const read = readSync(file, start, 0, start.length, 0);
    if (read === 0) return 'the file is empty';
    return start.toString('latin1', 0, read) === MAGIC ? null : 'it is not a database';
  } finally {
    closeSync(file);
  }
}

/**
 * What SQLite's own check finds first; null when it finds nothing. The quick check looks at the structure of every page;
 * the thorough one also compares each index with its table. Neither sees one letter of a text changed into another.
 */
export function damageIn(database: Database.Database, thorough = false): string | null {
  const check = thorough ? 'integrity_check' : 'quick_check';
  try {
    const [row] = database.pragma(`${check}(1)`) as Record<string, string>[];
    const found = row?.[check] ?? 'no answer';
    return found === 'ok' ? null : `the disk changed a part of it: ${inOneLine(found)}`;
  } catch (error) {
    if (!isDamage(error)) throw error;
    return `the disk changed a part of it: ${inOneLine((error as Error).message)}`;
  }
}

export function isDamage(error: unknown): boolean {
  return /NOTADB|CORRUPT|not a database|malformed/.test(wordsOf(error));
}

/** What `work` answers, or null when it came upon damage. */
export function unlessDamaged<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (isDamage(error) || error instanceof DamagedData) return null;
    throw error;
  }
}

export function isBusy(error: unknown): boolean {
  return /BUSY|locked/.test(wordsOf(error));
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? `${(error as { code?: string }).code ?? ''} ${error.message}` : String(error);
}

function inOneLine(text: string): string {
  return text.replace('*** in database main ***', '').trim().split('\n')[0] ?? '';
}
