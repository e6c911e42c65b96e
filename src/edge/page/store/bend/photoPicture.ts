/** The picture that a note names: from this browser while it waits here, else from the bench computer. */
import { withToken } from '../api.ts';
import type { KeptBlob } from '../journal/database.ts';
import { ownDatabase } from '../journal/journal.ts';
import { answered } from '../journal/promised.ts';

const SHA_256 = /^[0-9a-f]{64}$/;

export type PictureFound = { ok: true; url: string } | { ok: false; sentence: string };

/** An address at which the page can show a photo; whoever asked lets it go with `URL.revokeObjectURL`. */
export async function pictureOf(trial: string, name: string): Promise<PictureFound> {
  if (!SHA_256.test(name))
    return { ok: false, sentence: `The note names the file “${name}”, which is not kept with this trial.` };
  const kept = await keptHere(trial, name);
  if (kept !== null) return { ok: true, url: URL.createObjectURL(new Blob([kept])) };
  try {
    const answer = await fetch(`/api/blobs/${name}?${new URLSearchParams({ trial })}`, withToken());
    if (!answer.ok)
      return {
        ok: false,
        sentence: 'The photo is not on the bench computer yet. It may still be on the device that took it.',
      };
    return { ok: true, url: URL.createObjectURL(await answer.blob()) };
  } catch {
    return { ok: false, sentence: 'The bench computer does not answer, and this device does not hold the photo.' };
  }
}

/** The photo's bytes as this browser keeps them; null where it does not. */
export async function keptHere(trial: string, name: string): Promise<Uint8Array<ArrayBuffer> | null> {
  const own = await ownDatabase();
  if (own === null) return null;
  const store = own.transaction('blobs').objectStore('blobs');
  const blob = await answered<KeptBlob | undefined>(store.get([trial, name])).catch(() => undefined);
  return blob?.bytes ?? null;
}
