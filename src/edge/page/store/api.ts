import { signal } from '@preact/signals';
import type { Entry } from '../../../journal/entry.ts';
import type { TrialLine } from '../../store/store.ts';

/** What came back from the bench computer: the answer, or one sentence for the person. */
export type Answer<T> =
  | { ok: true; value: T }
  /** `body`: what the bench computer answered beside the sentence, where it did. */
  | { ok: false; sentence: string; body?: unknown };

/** All trials on the shelf. */
export function fetchTrials(): Promise<Answer<TrialLine[]>> {
  return ask<TrialLine[]>('/api/trials');
}

/** Every entry of a trial, in pages until none is left. */
export async function fetchEntries(trial: string): Promise<Answer<Entry[]>> {
  const all: Entry[] = [];
  let after = 0;
  for (;;) {
    const query = new URLSearchParams({ trial, after: String(after) });
    const page = await ask<{ entries: Entry[]; next: number }>(`/api/entries?${query}`);
    if (!page.ok) return page;
    for (const entry of page.value.entries) all.push(entry);
    // Not by the entries: all of a page may be damaged.
    if (page.value.next === after) return { ok: true, value: all };
    after = page.value.next;
  }
}

/** An entry that the bench computer would not take. */
export interface RefusedEntry {
  id: string | null;
  found: string;
  expected: string;
  advice: string;
}

export interface Sent {
  accepted?: string[];
  refused?: RefusedEntry[];
  store?: string;
}

/** Appends entries to a trial's journal. Sending the same ones twice changes nothing. Entries may be refused one by one. */
export async function sendEntries(trial: string, entries: readonly Entry[]): Promise<Answer<Sent>> {
  const answer = await ask<Sent>('/api/entries', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ trial, entries }),
  });
  // None was taken, each with its reason.
  const sent = answer.ok ? null : (answer.body as Sent | null);
  return sent?.refused === undefined ? answer : { ok: true, value: sent };
}

/** Appends entries that belong together; a refusal of one of them is the answer, though the others are kept. */
export async function sendTogether(trial: string, entries: readonly Entry[]): Promise<Answer<Sent>> {
  const answer = await sendEntries(trial, entries);
  const [first, ...more] = answer.ok ? (answer.value.refused ?? []) : [];
  if (first === undefined) return answer;
  const others = more.length === 0 ? '' : ` So it was with ${more.length} more of ${entries.length}.`;
  return { ok: false, sentence: `The bench computer would not take a row. ${refusedSentence(first)}${others}` };
}

/** Why an entry was not taken, in one line. */
export function refusedSentence({ found, expected, advice }: Omit<RefusedEntry, 'id'>): string {
  return `Found ${found}; expected ${expected}. ${advice}`.trim();
}

/** Where a device that was let in keeps its token. */
const TOKEN = 'cupel.token';

/** True once the bench computer said that it does not know this device, or not any more. */
export const turnedAway = signal(false);

/** Keeps the token for next time. False in a browser that keeps nothing. */
export function keepToken(token: string): boolean {
  try {
    localStorage.setItem(TOKEN, token);
    return true;
  } catch {
    return false;
  }
}

/** A request with this device's token, where it has one; at the bench computer itself none is needed. */
export function withToken(init: RequestInit = {}): RequestInit {
  const token = storedToken();
  return token === '' ? init : { ...init, headers: { ...init.headers, authorization: `Bearer ${token}` } };
}

function storedToken(): string {
  try {
    return localStorage.getItem(TOKEN) ?? '';
  } catch {
    return '';
  }
}

/** Said when nothing came back at all. */
export const NO_ANSWER = 'The bench computer does not answer. Start Cupel again on it, then load this page again.';

export async function ask<T>(path: string, init?: RequestInit): Promise<Answer<T>> {
  let response: Response;
  try {
    response = await fetch(path, withToken(init));
  } catch {
    return { ok: false, sentence: NO_ANSWER };
  }
  if (response.status === 401) turnedAway.value = true;
  const body: unknown = await response.json().catch(() => null);
  if (response.ok && body !== null) return { ok: true, value: body as T };
  return { ok: false, sentence: refusalSentence(body, response.status), body };
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
