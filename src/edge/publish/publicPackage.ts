import { findingsOf } from '../../findings/findings.ts';
import type { Findings } from '../../findings/schema.ts';
import type { Entry } from '../../journal/entry.ts';
import { findingsText } from '../../report/findingsText.ts';
import { photoFiles, type WrittenPhoto } from '../../report/package/photos.ts';
import { writePackage } from '../../report/package/writePackage.ts';
import { findingsCsv } from '../../report/publish/findingsCsv.ts';
import type { LicenceOffered } from '../../report/publish/licences.ts';
import { fold } from '../../trial/fold.ts';
import type { Trial } from '../../trial/trial.ts';
import { FIGURES_FILE, FINDINGS_FILE } from '../cli/packageAt.ts';
import { sealedParts } from '../cli/sealedParts.ts';

/** Share of cases in which an interval holds the true value. */
const LEVEL = 0.95;
const DESCRIPTOR = 'datapackage.json';

/** What a package takes time to compute: it is the same whatever the licence, and with photos or without. */
export interface PackageGround {
  trial: Trial;
  findings: Findings;
  sealed: ReadonlyMap<string, string | Uint8Array>;
}

export function packageGround(entries: readonly Entry[]): PackageGround {
  const trial = fold(entries);
  const findings = findingsOf(trial, { level: LEVEL, draws: 0 });
  return { trial, findings, sealed: sealedParts(entries, trial).files };
}

/** The files of a trial's data package under a licence: rows, photos, findings, and every sealed part in a folder of its own. */
export function publicPackage(
  { trial, findings, sealed }: PackageGround,
  photos: readonly WrittenPhoto[],
  licence: LicenceOffered,
): Map<string, string | Uint8Array> {
  return new Map<string, string | Uint8Array>([
    ...licensed(writePackage(trial, photos), licence),
    [FINDINGS_FILE, findingsText(findings)],
    [FIGURES_FILE, findingsCsv(findings)],
    ...photoFiles(photos),
    ...sealed,
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
