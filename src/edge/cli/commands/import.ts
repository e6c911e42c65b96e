import { Command } from 'commander';
import type { Appended } from '../../store/store.ts';
import { EXIT } from '../failure.ts';

export function importCommand(): Command {
  return new Command('import')
    .summary('put a data package on the shelf')
    .description('Reads a data package and puts its rows on the shelf: all of them, or none when one is refused.')
    .argument('<package>', 'folder or .zip of a data package')
    .option('--keep-good', 'keep the rows that can be read, list the others, and end with exit code 1', false)
    .addHelpText('after', '\nExamples:\n  cupel import "spring test"\n  cupel import spring.zip --keep-good')
    .action(importPackage);
}

async function importPackage(path: string, options: { keepGood: boolean }): Promise<void> {
  const { packageAt, refuseWhenRefused, tellRefusals } = await import('../packageAt.ts');
  const read = packageAt(path, new Date(), options.keepGood);
  if (!options.keepGood) refuseWhenRefused(read, path);
  tellRefusals(read);
  const { openShelf } = await import('../../store/openShelf.ts');
  const shelf = await openShelf();
  try {
    const appended = await shelf.append(read.trial, read.entries);
    process.stdout.write(keptSentence(read.trial, appended));
  } finally {
    await shelf.close();
  }
  if (read.refusals.length > 0) process.exitCode = EXIT.dataSaysNo;
}

function keptSentence(trial: string, { added, known }: Appended): string {
  const already = known === 0 ? '' : `, ${known} were there already`;
  return `${trial}: ${added} ${added === 1 ? 'entry' : 'entries'} kept${already}.\n`;
}
