/** The one check that an entry passes at every door: page, HTTP and import. Its row is judged by `rowCheck.ts`, at every door too. */
import { z } from 'zod';
import type { Entry } from './entry.ts';

/** UUID version 7 in lower case (RFC 9562 §5.7). */
const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const LONGEST_NAME = 200;
const LONGEST_CELL = 10_000;
const MOST_COLUMNS = 200;

/** Text that UTF-8 can carry and that a table can hold: no half characters, no NUL. */
const plainText = (longest: number) =>
  z
    .string()
    .max(longest)
    .refine((text) => !text.includes('\0') && !/\p{Surrogate}/u.test(text), 'holds characters that are no text');

export const EntrySchema = z
  .strictObject({
    id: z.string().regex(UUID_V7, 'must be a UUID of version 7 in lower case'),
    trial: plainText(LONGEST_NAME).refine((text) => text.trim() !== '', 'must not be blank'),
    kind: plainText(LONGEST_NAME).refine((text) => text !== '', 'must not be blank'),
    at: z.iso.datetime({ offset: false }),
    by: plainText(LONGEST_NAME),
    device: plainText(LONGEST_NAME),
    body: z
      .record(plainText(LONGEST_NAME), plainText(LONGEST_CELL))
      .refine((body) => Object.keys(body).length <= MOST_COLUMNS, `must not have more than ${MOST_COLUMNS} columns`),
  })
  .readonly();

export type EntryOutcome = { ok: true; value: Entry } | { ok: false; found: string; expected: string; where: string };

/** Checks something that claims to be an entry; the refusal says which part is wrong and what was expected. */
export function checkEntry(thing: unknown): EntryOutcome {
  const outcome = EntrySchema.safeParse(thing);
  if (outcome.success) return hasLostColumn(thing) ? LOST_COLUMN : { ok: true, value: outcome.data };
  const issue = outcome.error.issues[0]!;
  const where = issue.path.length === 0 ? 'entry' : issue.path.map(String).join('.');
  const found = partOf(thing, issue.path);
  return { ok: false, where, found: found === undefined ? 'nothing' : shown(found), expected: issue.message };
}

/** No object takes a value under this name, so a column of that name would be dropped without a word. */
const NO_COLUMN = '__proto__';
const LOST_COLUMN: EntryOutcome = {
  ok: false,
  where: `body.${NO_COLUMN}`,
  found: `a column named ${NO_COLUMN}`,
  expected: 'another name for it',
};

function hasLostColumn(thing: unknown): boolean {
  return Object.hasOwn((thing as { body: object }).body, NO_COLUMN);
}

function partOf(thing: unknown, path: readonly PropertyKey[]): unknown {
  let part = thing;
  for (const key of path) part = part !== null && typeof part === 'object' ? Reflect.get(part, key) : undefined;
  return part;
}

const LONGEST_SHOWN = 60;

function shown(thing: unknown): string {
  const text = written(thing);
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
}

function written(thing: unknown): string {
  try {
    return JSON.stringify(thing) ?? String(thing);
  } catch {
    // Lists within lists, thousands deep: reading JSON puts up with that, writing it does not.
    return 'something nested without end';
  }
}
