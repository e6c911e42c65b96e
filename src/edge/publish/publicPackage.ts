import { findingsOf } from '../../findings/findings.ts';
import type { Entry } from '../../journal/entry.ts';
import { findingsText } from '../../report/findingsText.ts';
import { photoFiles, type WrittenPhoto } from '../../report/package/photos.ts';
import { writePackage } from '../../report/package/writePackage.ts';
import { findingsCsv } from '../../report/publish/findingsCsv.ts';
import type { LicenceOffered } from '../../report/publish/licences.ts';
import { fold } from '../../trial/fold.ts';
import { FIGURES_FILE, FINDINGS_FILE } from '../cli/packageAt.ts';
import { sealedParts } from '../cli/sealedParts.ts';

/** Share of cases in which an interval holds the true value. */
const LEVEL = 0.95;
const DESCRIPTOR = 'datapackage.json';

/** The files of a trial's data package under a licence: rows, photos, findings, and every sealed part in a folder of its own. */
export function publicPackage(
  entries: readonly Entry[],
  photos: readonly WrittenPhoto[],
  licence: LicenceOffered,
): Map<string, string | Uint8Array> {
  const trial = fold(entries);
  const findings = findingsOf(trial, { level: LEVEL, draws: 0 });
  return new Map<string, string | Uint8Array>([
    ...licensed(writePackage(trial, photos), licence),
    [FINDINGS_FILE, findingsText(findings)],
    [FIGURES_FILE, findingsCsv(findings)],
    ...photoFiles(photos),
    ...sealedParts(entries, trial).files,
  ]);
}

/** The same files with the licence in their description, as the Data Package standard has it. */
function licensed(files: Map<string, string>, licence: LicenceOffered): Map<string, string> {
  const descriptor = files.get(DESCRIPTOR);
  if (descriptor === undefined) return files;
  const licenses = [{ name: licence.id, title: licence.name, path: licence.address }];
  const described = { ...(JSON.parse(descriptor) as object), licenses };
  return new Map(files).set(DESCRIPTOR, `${JSON.stringify(described, null, 2)}\n`);
}
