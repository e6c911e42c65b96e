/** Files for this browser's downloads, and those among them that the bench computer makes. */
import type { CardLook, CardWish } from '../../../../report/publish/cards/card.ts';
import { Bench } from '../../worker/bench.ts';
import type { PublishSubject } from '../../worker/jobs.ts';
import { withToken } from '../api.ts';
import { askAgain } from '../journal/journal.ts';

/** `away`: the bench computer did not answer at all. */
export type Fetched = { ok: true; blob: Blob } | { ok: false; sentence: string; away: boolean };

export const AWAY =
  'The bench computer makes this file, and it does not answer now. Try again when it can be reached; web pages and cards are made here meanwhile.';

/** What of the trial is meant, in the words of the address. */
export function subjectQuery(trial: string, { part, places }: PublishSubject): URLSearchParams {
  return new URLSearchParams(part === null ? { trial, places: places.join(',') } : { trial, part });
}

export function cardQuery(trial: string, subject: PublishSubject, wish: CardWish, look: CardLook): URLSearchParams {
  const query = subjectQuery(trial, subject);
  query.set('kind', wish.kind);
  query.set('about', wish.about);
  query.set('size', look.size);
  for (const cable of wish.cables) query.append('cable', cable);
  if (wish.method !== undefined) query.set('method', wish.method);
  if (wish.step !== undefined) query.set('step', String(wish.step));
  if (look.dark) query.set('dark', 'yes');
  if (look.transparent) query.set('transparent', 'yes');
  return query;
}

/** Fetches a file that the bench computer makes; with the reason where it does not. */
export async function fetchFile(path: string, signal?: AbortSignal): Promise<Fetched> {
  try {
    const answer = await fetch(path, withToken({ signal }));
    if (answer.ok) return { ok: true, blob: await answer.blob() };
    const body = (await answer.json().catch(() => null)) as { error?: { advice?: string } } | null;
    return { ok: false, sentence: body?.error?.advice ?? AWAY, away: false };
  } catch {
    askAgain();
    return { ok: false, sentence: AWAY, away: true };
  }
}

/** Hands a file to the browser's downloads. */
export function handOver(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Fetches a file and hands it over; answers a sentence on what came of it. */
export async function saveFile(path: string, name: string): Promise<string> {
  const found = await fetchFile(path);
  if (!found.ok) return found.sentence;
  handOver(found.blob, name);
  return `${name} is among your downloads.`;
}

/** A trial's id as part of a file name on any system. */
export function plainName(trial: string): string {
  const plain = trial.replace(/[^\p{L}\p{N}._-]+/gu, '-').replace(/^[-.]+|[-.]+$/g, '');
  return plain.slice(0, 80) || 'trial';
}

const NOT_PACKED =
  'The files were made and could not be packed. Save them one by one, or try again when the bench computer can be reached.';

/** Files to one .zip. @throws with a sentence when they could not be packed */
export async function zipped(files: readonly (readonly [string, string | Uint8Array])[]): Promise<Blob> {
  const bench = new Bench();
  try {
    return new Blob([(await bench.ask('zip', { files })) as BlobPart], { type: 'application/zip' });
  } catch {
    throw new Error(NOT_PACKED);
  } finally {
    bench.stop();
  }
}
