import type { Entry } from '../../journal/entry.ts';
import { checkEntry } from '../../journal/entryCheck.ts';
import { importedId } from '../../journal/importedId.ts';
import { TRIAL_TABLE } from '../../journal/kinds/trial.ts';
import { knownKeys } from '../../journal/knownKeys.ts';
import { readMoment } from '../../journal/moment.ts';
import { TABLES } from '../../journal/tables.ts';
import { rowTime } from '../../trial/inTimeOrder.ts';
import { judgeReferences } from './judgeReferences.ts';
import { newToShelf } from './newToShelf.ts';
import { type ChosenFiles, chooseFiles, leftAsideNote } from './packageFiles.ts';
import { type Photo, photosLeftOut, readPhotos, smallPhotos } from './photos.ts';
import { type ReadTable, readTable, type TableLimits, USUAL_TABLE_LIMITS } from './readTables.ts';
import { type Refusal, refusal } from './refusal.ts';

export interface ReadPackageOptions {
  /** ISO 8601: dates after it are refused. */
  now: string;
  /** Name for the trial when trial.csv gives none: the folder's name. */
  trial?: string;
  /** Import the good rows although others are refused. Default: all or nothing. */
  keepGood?: boolean;
  /** What is on the shelf for this trial: names may refer to it, and what it says already is not said again. */
  shelf?: readonly Entry[];
  limits?: TableLimits;
}

export interface PackageReading {
  trial: string;
  /** Empty when anything was refused, unless the good rows were asked for. In id order of each table. */
  entries: Entry[];
  refusals: Refusal[];
  /** Photos that came along, each what its name says. */
  photos: Photo[];
  /** Things worth saying that stopped nothing. */
  notes: string[];
}

const NOTHING_MEASURED = 'Nothing was measured yet: there are no readings.';
const UNNAMED = 'trial';

/** Why a set of files is no package at all, or null. */
function noPackage(files: ReadonlyMap<string, Uint8Array>, { tables }: ChosenFiles, shelf: readonly Entry[]) {
  const advice = 'A package has cables.csv, and readings.csv with specimens.csv once something was measured.';
  const folder = (found: string) =>
    refusal('the package', null, null, { found, expected: 'at least cables.csv', advice });
  if (files.size === 0) return folder('an empty folder');
  if (tables.size === 0) return folder('no table of a trial among its files');
  if (tables.has('cables.csv') || shelf.some((entry) => entry.kind === 'cable')) return null;
  return refusal('cables.csv', null, null, { found: 'no such file', expected: 'one row for each cable', advice });
}

/** The trial that the package is of: its one row in trial.csv, else what is on the shelf, else the folder's name. */
function trialName(tables: readonly ReadTable[], options: ReadPackageOptions): string {
  const described = tables.find((table) => table.shape.kind === 'trial')?.good[0]?.row.trial;
  return described ?? options.shelf?.[0]?.trial ?? (options.trial?.trim() || UNNAMED);
}

function refuseSecondTrial(tables: readonly ReadTable[]): void {
  const table = tables.find((one) => one.shape.kind === 'trial');
  for (const { line } of table?.good.splice(1) ?? []) {
    const found = 'a second trial';
    table!.refusals.push(refusal(TRIAL_TABLE.file, line, null, { found, expected: 'one row' }));
  }
}

function refuseEmptyCables(tables: readonly ReadTable[]): void {
  const table = tables.find((one) => one.shape.kind === 'cable');
  if (!table || table.refusals.length > 0 || table.good.length > 0) return;
  table.refusals.push(refusal(table.shape.file, null, null, { found: 'no rows', expected: 'one row for each cable' }));
}

/** Entries of one table; a row that no journal could hold is refused. */
function entriesOf(table: ReadTable, trial: string, openedOn: string): Entry[] {
  return table.good.flatMap(({ row, place, line }) => {
    const { kind, file } = table.shape;
    const time = Math.max(0, rowTime(row, openedOn));
    const entry: Entry = {
      id: importedId(trial, kind, row, time, place),
      trial,
      kind,
      at: new Date(time).toISOString(),
      by: row.by ?? '',
      device: '',
      body: row,
    };
    const checked = checkEntry(entry);
    if (checked.ok) return [checked.value];
    const column = checked.where.replace(/^body\.?/, '') || null;
    table.refusals.push(refusal(file, line, column, checked));
    return [];
  });
}

/**
 * Reads the files of a data package into entries.
 *
 * Only cables.csv must be there. Everything that cannot be right is refused with file, line, column, what was found and what
 * was expected; by default one refusal keeps everything out. The same files give the same entries, ids included, so
 * importing a package twice changes nothing.
 *
 * @param files path → bytes; a folder within which all of them lie is taken off
 * @throws RangeError when `now` is no moment
 */
export function readPackage(files: ReadonlyMap<string, Uint8Array>, options: ReadPackageOptions): PackageReading {
  const now = readMoment(options.now);
  if (!now.ok) throw new RangeError(`now must be ${now.expected}, not ${now.found}`);
  const shelf = options.shelf ?? [];
  const chosen = chooseFiles(files);
  const none = noPackage(files, chosen, shelf);
  if (none) return { trial: options.trial?.trim() || UNNAMED, entries: [], refusals: [none], photos: [], notes: [] };

  const tables = TABLES.flatMap((shape) => {
    const file = chosen.tables.get(shape.file);
    return file ? [readTable(shape, file.bytes, now.value, options.limits ?? USUAL_TABLE_LIMITS)] : [];
  });
  refuseSecondTrial(tables);
  refuseEmptyCables(tables);
  judgeReferences(tables, knownKeys(shelf));

  const trial = trialName(tables, options);
  const openedOn = tables.find((table) => table.shape.kind === 'trial')?.good[0]?.row.opened_on ?? '';
  const entries = tables.flatMap((table) => entriesOf(table, trial, openedOn));
  const brought = readPhotos(chosen.photos);
  const naming = namingIn(entries);
  const small = smallPhotos(naming);
  const refusals = [...tables.flatMap((table) => inLineOrder(table.refusals)), ...brought.refusals];
  const measured = [...entries, ...shelf].some((entry) => entry.kind === 'reading');
  const notes = [
    ...tables.flatMap((table) => table.notes),
    ...photosLeftOut(naming, brought.photos),
    ...leftAsideNote(chosen.leftAside),
    ...(measured || refusals.length > 0 ? [] : [NOTHING_MEASURED]),
  ];
  const letIn = refusals.length === 0 || options.keepGood === true;
  return {
    trial,
    entries: letIn ? newToShelf(entries, shelf) : [],
    refusals,
    photos: letIn ? brought.photos.map((photo) => ({ ...photo, small: small.has(photo.name) })) : [],
    notes,
  };
}

/** The rows that may name photos. */
function namingIn(entries: readonly Entry[]) {
  const rowsOf = (kind: string) =>
    entries.filter((entry) => entry.kind === kind).map(({ id, body }) => ({ entry: id, row: body }));
  return { notes: rowsOf('note'), evidence: rowsOf('evidence') };
}

const inLineOrder = (refusals: readonly Refusal[]): Refusal[] =>
  [...refusals].sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
