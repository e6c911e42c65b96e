import { z } from 'zod';
import { checkBody, rowName } from '../../journal/bodyCheck.ts';
import type { Entry } from '../../journal/entry.ts';
import { checkEntry } from '../../journal/entryCheck.ts';
import type { Refusal } from './refusal.ts';

/** What a device sends; each entry is then checked by the journal's own check. */
const Sent = z.object({ trial: z.string().min(1), entries: z.array(z.unknown()) });

/** An entry that is not taken, and why. */
export interface RefusedEntry extends Refusal {
  /** Its place in the list that was sent, from 1. */
  entry: number;
  /** Null for a thing that has none. */
  id: string | null;
}

/** What was sent, sorted. */
export interface SortedEntries {
  trial: string;
  /** May be kept. */
  good: Entry[];
  /** Entries whose row is impossible. One that is kept already stays kept, whatever an earlier version let in. */
  impossible: { entry: Entry; refused: RefusedEntry }[];
  /** Things that are no entries of this trial. */
  refused: RefusedEntry[];
}

export type SentEntries = { ok: true; sent: SortedEntries } | { ok: false; refusal: Refusal };

const SHAPE = '{"trial": "…", "entries": […]} in JSON';

/**
 * Reads what a device sent, and sorts out what cannot be taken: entry by entry, so that one bad row holds back no other.
 *
 * @param now milliseconds since 1970
 */
export function readSentEntries(text: string, now: number): SentEntries {
  const parsed = parseJson(text);
  if (!parsed.ok) return wrongShape('a body that is not JSON');
  const sent = Sent.safeParse(parsed.value);
  if (!sent.success) return wrongShape(`a body without "${sent.error.issues[0]?.path.join('.') || 'trial'}"`);
  return { ok: true, sent: sorted(sent.data.trial, sent.data.entries, now) };
}

function sorted(trial: string, list: readonly unknown[], now: number): SortedEntries {
  const outcome: SortedEntries = { trial, good: [], impossible: [], refused: [] };
  for (const [index, thing] of list.entries()) {
    const place = index + 1;
    const checked = checkEntry(thing);
    if (!checked.ok) {
      const found = `${checked.found} as "${checked.where}" of entry ${place}`;
      outcome.refused.push(refused(place, idOf(thing), found, checked.expected));
      continue;
    }
    const entry = checked.value;
    if (entry.trial !== trial) {
      const found = `entry ${place} of trial "${entry.trial}"`;
      outcome.refused.push(refused(place, entry.id, found, `entries of trial "${trial}" only`));
      continue;
    }
    const problem = checkBody(entry, now);
    if (problem === null) outcome.good.push(entry);
    else {
      const found = `${problem.found} (${problem.column} of the ${rowName(entry)})`;
      const no = refused(place, entry.id, found, problem.expected, problem.advice);
      outcome.impossible.push({ entry, refused: no });
    }
  }
  return outcome;
}

function refused(entry: number, id: string | null, found: string, expected: string, advice = ''): RefusedEntry {
  const what = 'It was not kept; say it again as it should be.';
  return { entry, id, found, expected, advice: advice === '' ? what : `${advice} ${what}` };
}

/** Longest thing that is given back as an id, characters: a UUID has 36. */
const LONGEST_ID = 100;

/** What a thing that is no entry names as its id. */
function idOf(thing: unknown): string | null {
  const id: unknown = thing !== null && typeof thing === 'object' ? Reflect.get(thing, 'id') : null;
  return typeof id === 'string' && id.length <= LONGEST_ID ? id : null;
}

function parseJson(text: string): { ok: true; value: unknown } | { ok: false } {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch {
    return { ok: false };
  }
}

function wrongShape(found: string): SentEntries {
  return {
    ok: false,
    refusal: { found, expected: SHAPE, advice: 'Nothing was kept; correct it and send it again.' },
  };
}
