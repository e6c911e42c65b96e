import { closeSync, existsSync, fsyncSync, linkSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';

/** Waits until what was written to a file is on the disk. */
export function syncFile(path: string): void {
  // Windows lets only a handle that may write be flushed.
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Waits until the names in a folder are on the disk. Windows has no such thing and needs none. */
export function syncFolder(path: string): void {
  if (process.platform === 'win32') return;
  const folder = openSync(path, 'r');
  try {
    fsyncSync(folder);
  } finally {
    closeSync(folder);
  }
}

/** Gives a finished file its name, which nothing may have yet, and waits until that is on the disk. False when it is taken. */
export function placeNew(from: string, to: string): boolean {
  syncFile(from);
  try {
    // A second name fails when the name is taken, in one step; moving would write over it.
    linkSync(from, to);
    rmSync(from);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST' || existsSync(to)) return false;
    // A disk without second names, such as a memory stick.
    renameSync(from, to);
  }
  syncFolder(dirname(to));
  return true;
}
