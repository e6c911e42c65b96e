/**
 * `datapackage.json`: what is in the package, for any program that knows the Frictionless Data Package standard
 * (specs.frictionlessdata.io, version 1: tabular-data-package, tabular-data-resource, table-schema).
 */
import { plainDecimal } from '../../journal/cellQuantity.ts';
import type { Column, TableShape } from '../../journal/tableShape.ts';
import { tableOfKind } from '../../journal/tables.ts';
import type { Trial } from '../../trial/trial.ts';
import { photoPath, type WrittenPhoto } from './photos.ts';
import { tableHash } from './tableHash.ts';

export interface WrittenTable {
  shape: TableShape;
  columns: readonly string[];
  rows: readonly Readonly<Record<string, string>>[];
  /** The file's text. */
  text: string;
}

/** A name that the standard allows: lower-case letters, digits, `.`, `_` and `-`. */
function standardName(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9._-]+/g, '-')
    .replace(/^[-.]+|[-.]+$/g, '');
  return plain || 'trial';
}

const holdsNumbers = (column: Column): boolean =>
  column.number === true ||
  column.inUnitColumn === true ||
  column.limit === true ||
  column.dimension !== undefined ||
  column.name === 'value';

/** `number` only where every cell is a plain one: cells stay as typed, and people type `1 3/8`. */
function typeOf(column: Column, { rows }: Pick<WrittenTable, 'rows'>): 'number' | 'string' {
  const cells = rows.map((row) => (row[column.name] ?? '').trim()).filter((cell) => cell !== '');
  const plain = holdsNumbers(column) && cells.every((cell) => plainDecimal(cell.replace(/^-/, '')) !== null);
  return plain ? 'number' : 'string';
}

function fieldOf(name: string, table: WrittenTable) {
  const column = table.shape.columns.find((one) => one.name === name);
  if (!column) return { name, type: 'string' };
  const required = column.required && !column.mayBeBlank;
  return {
    name,
    type: typeOf(column, table),
    description: column.meaning,
    ...(required ? { constraints: { required: true } } : {}),
  };
}

/** Columns that name rows of other tables in the package, or of their own (an empty resource name, as the standard has it). */
function foreignKeysOf(table: WrittenTable, present: ReadonlySet<string>) {
  return table.shape.columns.flatMap((column) => {
    if (!column.refersTo || !table.columns.includes(column.name)) return [];
    const target = tableOfKind(column.refersTo)!;
    if (!present.has(target.file)) return [];
    const resource = target === table.shape ? '' : resourceName(target);
    return [{ fields: column.name, reference: { resource, fields: target.key![0]! } }];
  });
}

const resourceName = (shape: TableShape): string => shape.file.replace(/\.csv$/, '');

/** The standard allows no blanks in a primary key, so a key with an optional part is left unsaid. */
function primaryKeyOf(shape: TableShape): readonly string[] | null {
  const required = shape.columns.filter((column) => column.required).map(({ name }) => name);
  return shape.key?.every((name) => required.includes(name)) ? shape.key : null;
}

function resourceOf(table: WrittenTable, present: ReadonlySet<string>) {
  const foreignKeys = foreignKeysOf(table, present);
  const primaryKey = primaryKeyOf(table.shape);
  return {
    name: resourceName(table.shape),
    path: table.shape.file,
    profile: 'tabular-data-resource',
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes: utf8Length(table.text),
    hash: tableHash(table.text),
    dialect: { delimiter: ',', lineTerminator: '\n', doubleQuote: true, header: true },
    schema: {
      fields: table.columns.map((name) => fieldOf(name, table)),
      missingValues: [''],
      ...(primaryKey ? { primaryKey } : {}),
      ...(foreignKeys.length > 0 ? { foreignKeys } : {}),
    },
  };
}

const utf8Length = (text: string): number => new TextEncoder().encode(text).length;

/** A photo as a resource of its own, named by the beginning of its hash. */
function photoResource(photo: WrittenPhoto) {
  return {
    name: `photo-${photo.name.slice(0, 16)}`,
    path: photoPath(photo),
    profile: 'data-resource',
    format: photo.ending,
    mediatype: photo.type,
    bytes: photo.bytes.length,
    hash: `sha256:${photo.name}`,
  };
}

/** The descriptor of a package of these tables and photos; a package of tables only is a tabular one. */
export function describePackage(trial: Trial, tables: readonly WrittenTable[], photos: readonly WrittenPhoto[] = []) {
  const present = new Set(tables.map((table) => table.shape.file));
  return {
    profile: photos.length === 0 ? 'tabular-data-package' : 'data-package',
    name: standardName(trial.trial),
    ...(trial.title ? { title: trial.title } : {}),
    ...(trial.purpose ? { description: trial.purpose } : {}),
    resources: [...tables.map((table) => resourceOf(table, present)), ...photos.map(photoResource)],
  };
}
