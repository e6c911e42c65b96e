import { Command } from 'commander';
import { EXIT, Failure } from '../failure.ts';
import type { FoundJournal } from '../journalOf.ts';
import { readDraws, readLevel } from '../options.ts';

interface ExportOptions {
  output: string;
  replace: boolean;
  withoutPhotos: boolean;
  level: number;
  draws: number | 'auto';
}

export function exportCommand(): Command {
  return new Command('export')
    .summary('write a trial as a data package, with its findings')
    .description('Writes a trial as a data package that anyone can read and compute again, its findings beside it.')
    .argument('<trial>', 'name of a trial on the shelf, or a folder or .zip of a data package')
    .requiredOption('-o, --output <path>', 'folder, or file that ends in .zip, to write')
    .option('--replace', 'write over a package that is there already', false)
    .option('--without-photos', 'leave the photos out', false)
    .option('--level <share>', 'share of cases in which an interval holds the true value', readLevel, 0.95)
    .option('--draws <n>', 'random draws that check the closed form: auto, a number, or 0 for none', readDraws, 'auto')
    .addHelpText(
      'after',
      '\nExamples:\n  cupel export fenwater -o fenwater.zip\n  cupel export fenwater -o "for the club" --replace\n  cupel export fenwater -o fenwater.zip --without-photos',
    )
    .action(exportTrial);
}

async function exportTrial(named: string, options: ExportOptions): Promise<void> {
  const { journalOf } = await import('../journalOf.ts');
  const found = await journalOf(named);
  const { trial, entries } = found;
  if (entries.length === 0) throw new Failure(`${named} holds nothing to write.`, EXIT.dataSaysNo);
  // Before the computing, which takes a while.
  const { refuseWithoutFolder } = await import('../../files/refuseWithoutFolder.ts');
  refuseWithoutFolder(options.output);
  const { files, photos, missing, lost, otherwise } = await publishedFiles(found, options);
  if (/\.zip$/i.test(options.output)) {
    const { zipPackage } = await import('../../../report/package/zip.ts');
    const { writeWholeFile } = await import('../../files/writeFile.ts');
    writeWholeFile(options.output, zipPackage(files), options.replace);
  } else {
    const { writeFolder } = await import('../../files/writeFolder.ts');
    const { photosInFolder } = await import('../../files/photosInFolder.ts');
    const { sealedInFolder } = await import('../../files/sealedInFolder.ts');
    const ours = [...(await packageFileNames()), ...photosInFolder(options.output), ...sealedInFolder(options.output)];
    writeFolder(options.output, files, ours, options.replace);
  }
  const among = photos === 0 ? '' : `, ${photos} of them ${photos === 1 ? 'a photo' : 'photos'}`;
  process.stdout.write(`${trial}: ${files.size} files written to ${options.output}${among}.\n`);
  for (const part of lost)
    process.stderr.write(`The rows of part ${part} as sealed are not known here; it is left out.\n`);
  for (const { part, version } of otherwise)
    process.stderr.write(
      `Part ${part} was sealed by version ${version}; this version of Cupel computes other digits, which are in its findings.json. An earlier export holds the sealed ones.\n`,
    );
  if (missing > 0) process.stderr.write(`${missingSentence(missing)}\n`);
}

/** Photos that were taken but have not reached this computer. */
const missingSentence = (missing: number) =>
  missing === 1
    ? 'One photo that the trial names is not on this computer; it may still be on the phone that took it.'
    : `${missing} photos that the trial names are not on this computer; they may still be on the phone that took them.`;

async function publishedFiles({ entries, photos: photosOf, sealed }: FoundJournal, options: ExportOptions) {
  const { writePackage } = await import('../../../report/package/writePackage.ts');
  const { photoFiles, photosNamed, smallPhotos } = await import('../../../report/package/photos.ts');
  const { photosToPack } = await import('../../store/packedPhotos.ts');
  const { fold } = await import('../../../trial/fold.ts');
  const { findingsOf } = await import('../../../findings/findings.ts');
  const { findingsText } = await import('../../../report/findingsText.ts');
  const { FIGURES_FILE, FINDINGS_FILE } = await import('../packageAt.ts');
  const { findingsCsv } = await import('../../../report/publish/findingsCsv.ts');
  const { sealedParts } = await import('../sealedParts.ts');
  const trial = fold(entries);
  const findings = findingsOf(trial, { level: options.level, draws: options.draws });
  const named = options.withoutPhotos ? [] : photosNamed(trial);
  const found = await photosOf(named);
  const { photos, missing } = await photosToPack(named, async (name) => found.get(name) ?? null);
  const small = smallPhotos(trial);
  const counted = (names: readonly string[]) => names.filter((name) => !small.has(name)).length;
  const tables = writePackage(trial, photos);
  const parts = sealedParts(entries, trial, sealed);
  const files = new Map<string, string | Uint8Array>([
    ...tables,
    [FINDINGS_FILE, findingsText(findings)],
    [FIGURES_FILE, findingsCsv(findings)],
    ...photoFiles(photos),
    ...parts.files,
  ]);
  const { lost, otherwise } = parts;
  return { files, photos: counted(photos.map(({ name }) => name)), missing: counted(missing), lost, otherwise };
}

/** Every file that an export may write: what a replacing export removes when it has no more use for it. */
async function packageFileNames(): Promise<string[]> {
  const { TABLES } = await import('../../../journal/tables.ts');
  const { DESCRIPTOR_FILE, FIGURES_FILE, FINDINGS_FILE } = await import('../packageAt.ts');
  return [...TABLES.map((table) => table.file), DESCRIPTOR_FILE, FINDINGS_FILE, FIGURES_FILE];
}
