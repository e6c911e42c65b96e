/** Specimens, fittings and evidence out of their rows. */
import { cellNumber } from '../journal/cellQuantity.ts';
import type { Entry } from '../journal/entry.ts';
import { type CellReader, cell, nameOrNull } from './cells.ts';
import type { Evidence, Fitting, Specimen, SpecimenKind } from './trial.ts';

const SPECIMEN_KINDS: readonly string[] = ['whole', 'bend', 'apart', 'abuse', 'kept'];

export function makeSpecimen(entry: Entry, cells: CellReader): Specimen {
  const row = entry.body;
  const kind = cell(row, 'kind').toLowerCase();
  const length = cells.quantity(row, 'cut_length');
  return {
    entry: entry.id,
    row,
    specimen: cell(row, 'specimen'),
    cable: cell(row, 'cable'),
    code: cell(row, 'code'),
    cutLength: length?.value ?? null,
    cutLengthStep: length?.step ?? 0,
    cutFrom: nameOrNull(row, 'cut_from'),
    kind: SPECIMEN_KINDS.includes(kind) ? (kind as SpecimenKind) : '',
  };
}

/** A fitting, or null (with a remark) when its bore cannot be read. */
export function makeFitting(entry: Entry, cells: CellReader): Fitting | null {
  const row = entry.body;
  const bore = cells.value(row, 'bore');
  if (bore === null) {
    if (cell(row, 'bore') === '') cells.remark(row, 'bore', 'blank', 'a length, such as 9.5 mm');
    return null;
  }
  return {
    entry: entry.id,
    row,
    fitting: cell(row, 'fitting'),
    kind: cell(row, 'kind'),
    bore,
    triedWith: nameOrNull(row, 'tried_with'),
    tried: nameOrNull(row, 'tried'),
  };
}

/** `10` looked at; `3 of 10` or `3/10`: three of the ten looked at showed it. */
export function readLookCount(text: string): { count: number | null; seenIn: number | null } {
  const share = /^(\d+)\s*(?:of|\/)\s*(\d+)$/i.exec(text);
  if (share) return { count: Number(share[2]), seenIn: Number(share[1]) };
  const all = cellNumber(text);
  return { count: all.ok ? all.value.value : null, seenIn: null };
}

export function makeEvidence(entry: Entry): Evidence {
  const row = entry.body;
  return {
    entry: entry.id,
    row,
    cable: cell(row, 'cable'),
    look: cell(row, 'look'),
    where: cell(row, 'where'),
    ...readLookCount(cell(row, 'count')),
    seen: cell(row, 'seen'),
  };
}
