import { randomBytes } from 'node:crypto';
import { Command } from 'commander';
import type { Entry } from '../../../journal/entry.ts';
import { EXIT, Failure } from '../failure.ts';
import { readLevel } from '../options.ts';

interface SealOptions {
  part: string;
  title: string;
  places: string;
  by: string;
  hidden: boolean;
  level: number;
}

export function sealCommand(): Command {
  return new Command('seal')
    .summary('seal a part of a trial for publishing')
    .description(
      'Seals a part of a trial on the shelf: from then on its rows and its findings are fixed, and later corrections are listed beside it.',
    )
    .argument('<trial>', 'name of a trial on the shelf')
    .requiredOption('--part <name>', 'name of the part, such as 1')
    .requiredOption('--places <list>', 'what it publishes: inside, bend, jacket, amps, standing, with commas between')
    .option('--title <text>', 'title as readers see it', '')
    .option('--by <name>', 'who seals it', '')
    .option('--hidden', 'keep it from readers for now', false)
    .option('--level <share>', 'share of cases in which an interval holds the true value', readLevel, 0.95)
    .addHelpText('after', '\nExample:\n  cupel seal fenwater --part 1 --places inside --title "What is inside"')
    .action(seal);
}

async function seal(trial: string, options: SealOptions): Promise<void> {
  const { isPartName, PART_NAME_RULE } = await import('../../../journal/partName.ts');
  const { placesIn } = await import('../../../trial/makeParts.ts');
  const { fold } = await import('../../../trial/fold.ts');
  const { sameAs, sealRow } = await import('../../../report/publish/seal.ts');
  const { newId, NO_ID_YET, RANDOM_BYTES, seenId } = await import('../../../journal/newId.ts');
  const { openShelf } = await import('../../store/openShelf.ts');
  const places = placesIn(options.places);
  const part = options.part.trim();
  if (places.length === 0)
    throw new Failure(
      `--places was "${options.places}"; expected inside, bend, jacket, amps or standing.`,
      EXIT.wrongUse,
    );
  if (!isPartName(part)) throw new Failure(`--part was "${part}"; expected ${PART_NAME_RULE}.`, EXIT.wrongUse);
  const shelf = await openShelf();
  try {
    const entries = await shelf.entries(trial);
    if (entries.length === 0) throw new Failure(`No trial called "${trial}" is on the shelf.`, EXIT.wrongUse);
    const { parts } = fold(entries);
    if (parts.some((each) => each.part === part))
      throw new Failure(`Part ${part} is sealed already; seal what is new as another part.`, EXIT.dataSaysNo);
    const at = new Date().toISOString();
    const body = sealed(() => sealRow(entries, { ...options, part, places, draws: 0, at }));
    const last = entries[entries.length - 1]!;
    const { id } = newId(seenId(NO_ID_YET, last.id), Date.now(), randomBytes(RANDOM_BYTES));
    const entry: Entry = { id, trial, kind: 'seal', at, by: options.by, device: '', body };
    await shelf.append(trial, [entry]);
    process.stdout.write(`Part ${part} of ${trial} is sealed: content ${body.content}.\n`);
    const same = sameAs(parts, body);
    if (same) process.stdout.write(`It holds the same rows and findings as part ${same.part}.\n`);
  } finally {
    await shelf.close();
  }
}

function sealed<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) throw new Failure(`It was not sealed: ${error.message}.`, EXIT.dataSaysNo);
    throw error;
  }
}
