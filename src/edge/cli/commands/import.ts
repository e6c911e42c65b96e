import { Command } from 'commander';
import type { Store } from '../../store/store.ts';
import { EXIT } from '../failure.ts';
import type { Brought } from '../packageAt.ts';

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
  const { broughtFrom } = await import('../packageAt.ts');
  const brought = broughtFrom(path);
  const { openShelf } = await import('../../store/openShelf.ts');
  const shelf = await openShelf();
  try {
    await keep(brought, path, shelf, options.keepGood);
  } finally {
    await shelf.close();
  }
}

async function keep(brought: Brought, path: string, shelf: Store, keepGood: boolean): Promise<void> {
  const { readBrought, refuseWhenRefused, tellRefusals } = await import('../packageAt.ts');
  const alone = readBrought(brought, { keepGood });
  const known = await shelf.entries(alone.trial);
  // Read beside what the shelf holds, an edited row comes after the one that it corrects.
  const read = known.length === 0 ? alone : readBrought(brought, { keepGood, shelf: known });
  if (keepGood) tellRefusals(read);
  else refuseWhenRefused(read, path);
  // The photos first: a row must not name one that is not here.
  for (const { bytes } of read.photos) await shelf.putBlob(read.trial, bytes);
  const { added } = await shelf.append(read.trial, read.entries);
  process.stdout.write(
    keptSentence(read.trial, added, alone.entries.length - added, read.photos.filter(({ small }) => !small).length),
  );
  if (read.refusals.length > 0) process.exitCode = EXIT.dataSaysNo;
}

function keptSentence(trial: string, added: number, known: number, photos: number): string {
  const pictures = photos === 0 ? '' : ` and ${photos} ${photos === 1 ? 'photo' : 'photos'}`;
  const already = known <= 0 ? '' : `, ${known} were there already`;
  return `${trial}: ${added} ${added === 1 ? 'row' : 'rows'}${pictures} kept${already}.\n`;
}
