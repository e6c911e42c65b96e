import { Command } from 'commander';
import type { Restored } from '../../store/backup/restored.ts';
import type { ShelfPlace } from '../../store/place.ts';

export function restoreCommand(): Command {
  return new Command('restore')
    .summary('put a backup back as the shelf; what is there now is kept')
    .description(
      'Looks through a backup and, when it is whole, makes it the shelf. What was there before is kept under a dated name.',
    )
    .argument('<file>', 'file that cupel backup wrote, or a copy of a shelf')
    .addHelpText(
      'after',
      '\nExamples:\n  cupel restore "shelf of 25 November.cupel"\n\nDevices send again what they hold; add the phones again.',
    )
    .action(restore);
}

async function restore(file: string): Promise<void> {
  const { shelfPlace } = await import('../../store/place.ts');
  const { heldWords } = await import('../heldWords.ts');
  const { held, sealed, aside } = await putBack(file, shelfPlace());
  const compared = sealed ? ', as they were backed up' : '; the file has no seal, so only its structure was checked';
  process.stdout.write(`The shelf holds ${heldWords(held)}${compared}.\n`);
  if (aside !== null) process.stdout.write(`What was there before is kept in ${aside}.\n`);
}

async function putBack(file: string, place: ShelfPlace): Promise<Restored> {
  if (place.kind === 'postgres') {
    const { restorePostgres } = await import('../../store/postgres/restore.ts');
    return restorePostgres(file, place.url, new Date());
  }
  const { restoreSqlite } = await import('../../store/sqlite/restore.ts');
  return restoreSqlite(file, place.path, new Date());
}
