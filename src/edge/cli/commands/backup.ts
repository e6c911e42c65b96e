import { Command } from 'commander';

export function backupCommand(): Command {
  return new Command('backup')
    .summary('write the whole shelf to one file, also while the bench runs')
    .description(
      'Writes every journal, photo and log of the shelf, as they are at one moment, to one new file, and checks it. The bench may go on.',
    )
    .requiredOption('-o, --output <file>', 'file to write; one that is there already is never written over')
    .addHelpText(
      'after',
      '\nExamples:\n  cupel backup -o "shelf of 25 November.cupel"\n\nDevices that were added are not in it: after a restore, add the phones again.',
    )
    .action(backUp);
}

async function backUp({ output }: { output: string }): Promise<void> {
  const { takeBackup } = await import('../../store/backup/take.ts');
  const { backupList, shelfPlace } = await import('../../store/place.ts');
  const line = await takeBackup(shelfPlace(), output, backupList(), new Date());
  const { heldWords } = await import('../heldWords.ts');
  process.stdout.write(`${output}: ${heldWords(line)}.\n`);
}
