import { findingsText } from '../../../report/findingsText.ts';
import { writePackage } from '../../../report/package/writePackage.ts';
import { zipPackage } from '../../../report/package/zip.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** Entries to a .zip of the data package, with the findings beside it for whoever computes them again. */
export function packJob({ entries, findings }: Jobs['pack']['ask']): Uint8Array {
  const files = writePackage(fold(entries));
  if (findings !== null) files.set('findings.json', findingsText(findings));
  return zipPackage(files);
}
