import { type Stats, statSync } from 'node:fs';

/** What lies at a path; null when there is nothing, or when a file stands where one of its folders should. */
export function lookedAt(path: string): Stats | null {
  try {
    return statSync(path);
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes((error as NodeJS.ErrnoException).code ?? '')) return null;
    throw error;
  }
}
