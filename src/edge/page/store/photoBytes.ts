/** The photos of a trial as bytes, and how large they are: from this browser while they wait here, else from the bench computer. */
import { withToken } from './api.ts';
import { keptHere } from './bend/photoPicture.ts';

const addressOfPhoto = (trial: string, name: string) => `/api/blobs/${name}?${new URLSearchParams({ trial })}`;

/** A photo's bytes; null when neither this browser nor the bench computer has it. */
export async function bytesOfPhoto(trial: string, name: string): Promise<Uint8Array | null> {
  const kept = await keptHere(trial, name);
  if (kept !== null) return kept;
  const answer = await fetch(addressOfPhoto(trial, name), withToken()).catch(() => null);
  return answer?.ok ? new Uint8Array(await answer.arrayBuffer()) : null;
}

/** A photo never changes, so its size is asked for once. */
const sizes = new Map<string, number>();

/** Bytes of a photo; null when it cannot be had here. */
async function sizeOfPhoto(trial: string, name: string): Promise<number | null> {
  const known = sizes.get(`${trial} ${name}`);
  if (known !== undefined) return known;
  const size = (await keptHere(trial, name))?.byteLength ?? (await sizeOnBench(trial, name));
  if (size !== null) sizes.set(`${trial} ${name}`, size);
  return size;
}

async function sizeOnBench(trial: string, name: string): Promise<number | null> {
  const answer = await fetch(addressOfPhoto(trial, name), withToken({ method: 'HEAD' })).catch(() => null);
  const length = Number(answer?.headers.get('content-length'));
  return answer?.ok && length > 0 ? length : null;
}

/** Bytes of all these photos together, and how many of them cannot be had here. */
export async function sizeOfPhotos(
  trial: string,
  names: readonly string[],
): Promise<{ bytes: number; missing: number }> {
  let bytes = 0;
  let missing = 0;
  for (const name of names) {
    const size = await sizeOfPhoto(trial, name);
    if (size === null) missing++;
    else bytes += size;
  }
  return { bytes, missing };
}
