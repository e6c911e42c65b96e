import { zipPackage } from '../../../report/package/zip.ts';
import type { Jobs } from './jobs.ts';

/** Files to the bytes of a .zip. */
export function zipJob({ files }: Jobs['zip']['ask']): Uint8Array {
  return zipPackage(new Map(files));
}
