/** Sealed parts inside a package: `sealed/<number>/<table>.csv`, each folder a package of its own with its findings. */

const SEALED_PATH = /^sealed\/([1-9]\d{0,3})\/([a-z]+\.(?:csv|json))$/;

/** Where a file of the part of that number lies; parts are numbered from 1 in the order in which they were sealed. */
export const sealedPath = (number: number, file: string): string => `sealed/${number}/${file}`;

/** Which part a path belongs to, and which file of it; null for any other path. */
export function sealedAt(path: string): { number: number; file: string } | null {
  const found = SEALED_PATH.exec(path);
  return found ? { number: Number(found[1]), file: found[2]! } : null;
}

/** The files of each sealed part, by its number. */
export function sealedFolders(files: ReadonlyMap<string, Uint8Array>): Map<number, Map<string, Uint8Array>> {
  const folders = new Map<number, Map<string, Uint8Array>>();
  for (const [path, bytes] of files) {
    const at = sealedAt(path);
    if (at === null) continue;
    const folder = folders.get(at.number) ?? new Map<string, Uint8Array>();
    folder.set(at.file, bytes);
    folders.set(at.number, folder);
  }
  return folders;
}
