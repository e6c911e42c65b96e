import type { Entry } from '../../../journal/entry.ts';

/** One line of the shelf, as the bench computer tells it. */
export interface TrialLine {
  trial: string;
  title: string;
  place: string;
  cables: number;
  entries: number;
  openedOn: string | null;
}

/** What came back from the bench computer: the answer, or one sentence for the person. */
export type Answer<T> = { ok: true; value: T } | { ok: false; sentence: string };

/** All trials on the shelf. */
export function fetchTrials(): Promise<Answer<TrialLine[]>> {
  return ask<TrialLine[]>('/api/trials');
}

/** Every entry of a trial, in pages until none is left. */
export async function fetchEntries(trial: string): Promise<Answer<Entry[]>> {
  const all: Entry[] = [];
  let after = '';
  for (;;) {
    const query = new URLSearchParams({ trial, ...(after === '' ? {} : { after }) });
    const page = await ask<Entry[]>(`/api/entries?${query}`);
    if (!page.ok) return page;
    const last = page.value.at(-1);
    if (last === undefined || last.id === after) return { ok: true, value: all };
    for (const entry of page.value) all.push(entry);
    after = last.id;
  }
}

/** Appends entries to a trial's journal. Sending the same ones twice changes nothing. */
export function sendEntries(
  trial: string,
  entries: readonly Entry[],
): Promise<Answer<{ added: number; known: number }>> {
  return ask('/api/entries', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ trial, entries }),
  });
}

async function ask<T>(path: string, init?: RequestInit): Promise<Answer<T>> {
  let response: Response;
  try {
    response = await fetch(path, init);
  } catch {
    return {
      ok: false,
      sentence: 'The bench computer does not answer. Start Cupel again on it, then load this page again.',
    };
  }
  const body: unknown = await response.json().catch(() => null);
  if (response.ok && body !== null) return { ok: true, value: body as T };
  return { ok: false, sentence: refusalSentence(body, response.status) };
}

/** The server's refusal in one line: what was found, what was expected, what to do. */
function refusalSentence(body: unknown, status: number): string {
  const error = (body as { error?: { found?: string; expected?: string; advice?: string } } | null)?.error;
  if (error?.found === undefined) return `The bench computer answered with number ${status} and no reason.`;
  const expected = error.expected ? `; expected ${error.expected}` : '';
  // Advice that names an address of the interface is for programs, not for the person at the page.
  const advice = error.advice && !error.advice.includes('/api/') ? ` ${error.advice}` : '';
  return `Found ${error.found}${expected}.${advice}`;
}
