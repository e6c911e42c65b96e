import { Command } from 'commander';
import type { Entry } from '../../../journal/entry.ts';
import { EXIT, Failure } from '../failure.ts';
import { readDraws, readLevel } from '../options.ts';

interface ExportOptions {
  output: string;
  replace: boolean;
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
    .option('--level <share>', 'share of cases in which an interval holds the true value', readLevel, 0.95)
    .option('--draws <n>', 'random draws that check the closed form: auto, a number, or 0 for none', readDraws, 'auto')
    .addHelpText(
      'after',
      '\nExamples:\n  cupel export fenwater -o fenwater.zip\n  cupel export fenwater -o "for the club" --replace',
    )
    .action(exportTrial);
}

async function exportTrial(named: string, options: ExportOptions): Promise<void> {
  const { journalOf } = await import('../journalOf.ts');
  const { trial, entries } = await journalOf(named);
  if (entries.length === 0) throw new Failure(`${named} holds nothing to write.`, EXIT.dataSaysNo);
  // Before the computing, which takes a while.
  const { refuseWithoutFolder } = await import('../../files/refuseWithoutFolder.ts');
  refuseWithoutFolder(options.output);
  const files = await publishedFiles(entries, options);
  if (/\.zip$/i.test(options.output)) {
    const { zipPackage } = await import('../../../report/package/zip.ts');
    const { writeWholeFile } = await import('../../files/writeFile.ts');
    writeWholeFile(options.output, zipPackage(files), options.replace);
  } else {
    const { writeFolder } = await import('../../files/writeFolder.ts');
    writeFolder(options.output, files, await packageFileNames(), options.replace);
  }
  process.stdout.write(`${trial}: ${files.size} files written to ${options.output}.\n`);
}

async function publishedFiles(entries: readonly Entry[], options: ExportOptions) {
  const { writePackage } = await import('../../../report/package/writePackage.ts');
  const { fold } = await import('../../../trial/fold.ts');
  const { findingsOf } = await import('../../../findings/findings.ts');
  const { findingsText } = await import('../../../report/findingsText.ts');
  const { FINDINGS_FILE } = await import('../packageAt.ts');
  const trial = fold(entries);
  const findings = findingsOf(trial, { level: options.level, draws: options.draws });
  return new Map([...writePackage(trial), [FINDINGS_FILE, findingsText(findings)]]);
}

/** Every file that an export may write: what a replacing export removes when it has no more use for it. */
async function packageFileNames(): Promise<string[]> {
  const { TABLES } = await import('../../../journal/tables.ts');
  const { DESCRIPTOR_FILE, FINDINGS_FILE } = await import('../packageAt.ts');
  return [...TABLES.map((table) => table.file), DESCRIPTOR_FILE, FINDINGS_FILE];
}
