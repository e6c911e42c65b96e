import { z } from 'zod';
import type { Entry } from '../../journal/entry.ts';
import { checkEntry } from '../../journal/entryCheck.ts';
import type { Refusal } from './refusal.ts';

/** What a device sends; each entry is then checked by the journal's own check. */
const Sent = z.object({ trial: z.string().min(1), entries: z.array(z.unknown()) });

export type SentEntries = { ok: true; trial: string; entries: Entry[] } | { ok: false; refusal: Refusal };

const SHAPE = '{"trial": "…", "entries": […]} in JSON';

/** Reads what a device sent. One bad entry refuses the whole list, so that nothing is half kept. */
export function readSentEntries(text: string): SentEntries {
  const parsed = parseJson(text);
  if (!parsed.ok) return refused('a body that is not JSON', SHAPE);
  const sent = Sent.safeParse(parsed.value);
  if (!sent.success) return refused(`a body without "${sent.error.issues[0]?.path.join('.') || 'trial'}"`, SHAPE);
  return readList(sent.data.trial, sent.data.entries);
}

function readList(trial: string, list: readonly unknown[]): SentEntries {
  const entries: Entry[] = [];
  for (const [index, thing] of list.entries()) {
    const checked = checkEntry(thing);
    if (!checked.ok) return refused(`${checked.found} as "${checked.where}" of entry ${index + 1}`, checked.expected);
    if (checked.value.trial !== trial)
      return refused(`entry ${index + 1} of trial "${checked.value.trial}"`, `entries of trial "${trial}" only`);
    entries.push(checked.value);
  }
  return { ok: true, trial, entries };
}

function parseJson(text: string): { ok: true; value: unknown } | { ok: false } {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch {
    return { ok: false };
  }
}

function refused(found: string, expected: string): SentEntries {
  return { ok: false, refusal: { found, expected, advice: 'Nothing was kept; correct it and send it again.' } };
}
