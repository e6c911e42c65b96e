import { Command } from 'commander';
import type { Restored } from '../../store/backup/restored.ts';
import type { ShelfPlace } from '../../store/place.ts';
import { EXIT, Failure } from '../failure.ts';

interface RestoreOptions {
  exactly: boolean;
}

export function restoreCommand(): Command {
  return new Command('restore')
    .summary('put a backup back as the shelf; what is there now is kept')
    .description(
      'Looks through a backup and, when it is whole, makes it the shelf, together with whatever can still be read of the shelf that is there now: ' +
        'nothing that was recorded after the backup is lost. Without a file the shelf is made of that alone. What was there before is kept under a dated name.',
    )
    .argument('[file]', 'file that cupel backup wrote, or a copy of a shelf')
    .option('--exactly', 'only what is in the backup, and nothing of the shelf that is there', false)
    .addHelpText(
      'after',
      '\nExamples:\n  cupel restore "shelf of 25 November.cupel"\n  cupel restore\n\nDevices send again what they hold; add the phones again.',
    )
    .action(restore);
}

async function restore(file: string | undefined, { exactly }: RestoreOptions): Promise<void> {
  if (file === undefined && exactly) throw new Failure('--exactly needs the file of a backup; name it.', EXIT.wrongUse);
  const { shelfPlace } = await import('../../store/place.ts');
  const { restoredWords } = await import('../restoredWords.ts');
  process.stdout.write(restoredWords(await putBack(file ?? null, shelfPlace(), exactly)));
}

async function putBack(file: string | null, place: ShelfPlace, exactly: boolean): Promise<Restored> {
  if (place.kind === 'postgres') {
    if (file === null)
      throw new Failure(
        'The shelf is in PostgreSQL, which mends its own files; name the file of a backup.',
        EXIT.wrongUse,
      );
    const { restorePostgres } = await import('../../store/postgres/restore.ts');
    return restorePostgres(file, place.url, new Date(), exactly);
  }
  const { restoreSqlite } = await import('../../store/sqlite/restore.ts');
  return restoreSqlite(file, place.path, new Date(), exactly);
}
