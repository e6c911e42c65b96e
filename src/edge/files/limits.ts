/** How much of a package is read before it is refused. A season's trial has some hundred kilobytes. */
export interface FileLimits {
  /** Largest single file, bytes. */
  fileBytes: number;
  /** All files together, bytes. */
  totalBytes: number;
  /** Most files in the folder. */
  files: number;
  /** All photos together, bytes. */
  photoBytes: number;
}

const MEGABYTE = 1024 * 1024;

export const USUAL_LIMITS: FileLimits = {
  fileBytes: 200 * MEGABYTE,
  totalBytes: 400 * MEGABYTE,
  files: 10_000,
  photoBytes: 1000 * MEGABYTE,
};

/** A .zip may hold photos beside the tables. */
export const ZIP_LIMITS: FileLimits = { ...USUAL_LIMITS, fileBytes: 1200 * MEGABYTE };

/** Bytes in words: `212 MB`, `3 kB`. */
export function sizeWords(bytes: number): string {
  return bytes >= MEGABYTE ? `${Math.ceil(bytes / MEGABYTE)} MB` : `${Math.ceil(bytes / 1024)} kB`;
}
