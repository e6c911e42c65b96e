import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { photoAt } from '../../report/package/photos.ts';

/** Paths of the photos that an earlier export left in a folder, to be removed where they are no longer written. */
export function photosInFolder(folder: string): string[] {
  const photos = join(folder, 'photos');
  if (!existsSync(photos)) return [];
  return readdirSync(photos)
    .map((name) => `photos/${name}`)
    .filter((path) => photoAt(path) !== null);
}
