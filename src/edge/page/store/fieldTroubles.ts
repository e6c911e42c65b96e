import { type BareUnits, quickEntries, type SixFields } from '../../../findings/quick.ts';
import type { Entry } from '../../../journal/entry.ts';
import { checkRow } from '../../../journal/rowCheck.ts';
import { tableOfKind } from '../../../journal/tables.ts';
import { type FieldName, readField } from './readField.ts';

/** What was found in a field and what was expected there. */
export interface Trouble {
  found: string;
  expected: string;
  advice: string;
}

export type Troubles = Partial<Record<FieldName, Trouble>>;

/**
 * The fields that hold something unreadable or impossible, each with what to say under it. Blank fields are no trouble.
 *
 * `now` in milliseconds since 1970, as every door wants it.
 */
export function fieldTroubles(fields: SixFields, bare: BareUnits, now: number): Troubles {
  const unreadable: Troubles = {};
  for (const name of Object.keys(fields) as FieldName[]) {
    const read = fields[name].trim() === '' ? null : readField(name, fields[name], bare);
    if (read?.ok === false)
      unreadable[name] = { found: read.found, expected: read.expected, advice: read.advice ?? '' };
  }
  return { ...impossible(without(fields, unreadable), bare, now), ...unreadable };
}

/** The fields with the troubled ones blank. */
export function without(fields: SixFields, troubles: Troubles): SixFields {
  const left = { ...fields };
  for (const name of Object.keys(troubles) as FieldName[]) left[name] = '';
  return left;
}

/** A resistance that every door lets in. */
const ANY_OHMS = '1 mohm';

/** What the doors of the journal would refuse in the rows that the fields make: the same check, told field by field. */
function impossible(fields: SixFields, bare: BareUnits, now: number): Troubles {
  const found: Troubles = {};
  // Contacts and temperature stand in the row of the ohms, which is made only where there are some.
  const withOhms = fields.ohms.trim() === '' ? { ...fields, ohms: ANY_OHMS } : fields;
  const rows = quickEntries(withOhms, { trial: 'one-cable', at: '', newId: () => '', bare });
  for (const row of rows) {
    const table = tableOfKind(row.kind);
    for (const problem of table === null ? [] : checkRow(table, row.body, { now })) {
      const name = fieldOf(row, problem.column);
      if (name === null || fields[name].trim() === '') continue;
      // A cell holds the number alone; the person typed it with its unit.
      const typed = problem.found.replace(`"${row.body[problem.column]}"`, () => `"${fields[name].trim()}"`);
      found[name] ??= { found: typed, expected: problem.expected, advice: problem.advice ?? '' };
    }
  }
  return found;
}

const OF_THE_OHMS: Readonly<Record<string, FieldName>> = {
  at_length: 'contacts',
  at_length_unit: 'contacts',
  temperature: 'temperature',
  temperature_unit: 'temperature',
};

/** The field that a cell was made of. */
function fieldOf({ kind, body }: Entry, column: string): FieldName | null {
  if (kind === 'cable') return 'label';
  if (kind === 'specimen' || body.reading === 'length') return 'length';
  if (body.reading === 'mass') return 'mass';
  return body.reading === 'ohms' ? (OF_THE_OHMS[column] ?? 'ohms') : null;
}
