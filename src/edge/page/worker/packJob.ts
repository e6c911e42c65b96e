import { findingsText } from '../../../report/findingsText.ts';
import { photoFiles } from '../../../report/package/photos.ts';
import { writePackage } from '../../../report/package/writePackage.ts';
import { zipPackage } from '../../../report/package/zip.ts';
import type { LicenceOffered } from '../../../report/publish/licences.ts';
import { fold } from '../../../trial/fold.ts';
import { sealedParts } from '../../cli/sealedParts.ts';
import { packedPhoto } from '../../store/packedPhotos.ts';
import type { Jobs } from './jobs.ts';

/** Entries to a .zip of the data package, sealed parts and the findings beside it for whoever computes them again. */
export function packJob({ entries, findings, photos, licence }: Jobs['pack']['ask']): Uint8Array {
  const packed = photos.map(({ name, bytes }) => packedPhoto(name, bytes));
  const trial = fold(entries);
  const files = new Map<string, string | Uint8Array>([
    ...licensed(writePackage(trial, packed), licence),
    ...photoFiles(packed),
    ...sealedParts(entries, trial).files,
  ]);
  if (findings !== null) files.set('findings.json', findingsText(findings));
  return zipPackage(files);
}

const DESCRIPTOR = 'datapackage.json';

/** The same files with the licence in their description, as the Data Package standard has it. */
function licensed(files: Map<string, string>, licence: LicenceOffered | undefined): Map<string, string> {
  const descriptor = files.get(DESCRIPTOR);
  if (licence === undefined || descriptor === undefined) return files;
  const licenses = [{ name: licence.id, title: licence.name, path: licence.address }];
  const described = { ...(JSON.parse(descriptor) as object), licenses };
  return new Map(files).set(DESCRIPTOR, `${JSON.stringify(described, null, 2)}\n`);
}
