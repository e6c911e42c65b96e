import { findingsText } from '../../../report/findingsText.ts';
import { photoFiles } from '../../../report/package/photos.ts';
import { writePackage } from '../../../report/package/writePackage.ts';
import { zipPackage } from '../../../report/package/zip.ts';
import { fold } from '../../../trial/fold.ts';
import { packedPhoto } from '../../store/packedPhotos.ts';
import type { Jobs } from './jobs.ts';

/** Entries to a .zip of the data package, with the findings beside it for whoever computes them again. */
export function packJob({ entries, findings, photos }: Jobs['pack']['ask']): Uint8Array {
  const packed = photos.map(({ name, bytes }) => packedPhoto(name, bytes));
  const files = new Map<string, string | Uint8Array>([...writePackage(fold(entries), packed), ...photoFiles(packed)]);
  if (findings !== null) files.set('findings.json', findingsText(findings));
  return zipPackage(files);
}
