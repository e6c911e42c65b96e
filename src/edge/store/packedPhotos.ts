import type { WrittenPhoto } from '../../report/package/photos.ts';
import { blobKind } from './blobKind.ts';

/** A photo as a package holds it, with the ending and the type that its first bytes tell. */
export function packedPhoto(name: string, bytes: Uint8Array): WrittenPhoto {
  const { type, ending } = blobKind(bytes) ?? { type: 'application/octet-stream', ending: 'bin' };
  return { name, bytes, ending, type };
}

/** The photos of these names that can be had, in the order of their names, and the names of those that cannot. */
export async function photosToPack(
  names: readonly string[],
  fetch: (name: string) => Promise<Uint8Array | null>,
): Promise<{ photos: WrittenPhoto[]; missing: string[] }> {
  const photos: WrittenPhoto[] = [];
  const missing: string[] = [];
  for (const name of [...names].sort()) {
    const bytes = await fetch(name);
    if (bytes === null) missing.push(name);
    else photos.push(packedPhoto(name, bytes));
  }
  return { photos, missing };
}
