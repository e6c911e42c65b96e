/** The journal's side of talking with the bench computer: send, read on, hear that something came. */
import type { Entry } from '../../../../journal/entry.ts';
import { type Answer, ask, refusedSentence, sendEntries, withToken } from '../api.ts';

export interface Page {
  entries: Entry[];
  next: number;
  /** Name of the store that answered, where it says it. */
  store?: string;
  /** What of the whole trial the bench computer can no longer read; left out when nothing. */
  damaged?: { found: string; advice: string };
}

/** Entries that arrived after a number, as many as one answer holds. */
export function readOn(trial: string, after: number): Promise<Answer<Page>> {
  return ask<Page>(`/api/entries?${new URLSearchParams({ trial, after: String(after) })}`);
}

export interface Accepted {
  /** Ids that are on the bench computer's disk now. */
  ids: string[];
  /** Entries that it would not take, with the sentence why, by id. */
  refused: ReadonlyMap<string, string>;
  /** Name of the store that keeps them; empty where it was not said. */
  store: string;
}

/** Sends entries. Sending them again changes nothing. */
export async function send(trial: string, entries: readonly Entry[]): Promise<Answer<Accepted>> {
  const answer = await sendEntries(trial, entries);
  if (!answer.ok) return answer;
  const { accepted = [], refused = [], store = '' } = answer.value;
  const why = refused.flatMap((each) => (each.id === null ? [] : [[each.id, refusedSentence(each)] as const]));
  return { ok: true, value: { ids: accepted, refused: new Map(why), store } };
}

/** Whether the bench computer has a photo, whole. */
export async function hasBlob(trial: string, name: string): Promise<boolean> {
  const head = withToken({ method: 'HEAD' });
  const answer = await fetch(`/api/blobs/${name}?${new URLSearchParams({ trial })}`, head).catch(() => null);
  return answer?.ok ?? false;
}

/** Hands over a photo under its own hash. */
export function sendBlob(trial: string, name: string, bytes: Uint8Array<ArrayBuffer>): Promise<Answer<unknown>> {
  return ask(`/api/blobs/${name}?${new URLSearchParams({ trial })}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/octet-stream' },
    body: bytes,
  });
}
