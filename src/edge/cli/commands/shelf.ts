import { Command } from 'commander';
import { EXIT, Failure } from '../failure.ts';
import { readUnits, type TableUnits } from '../options.ts';
import { priceOf, shelfWish } from '../shelfWish.ts';

interface ShelfOptions {
  find: string;
  metal: string;
  least?: number;
  most?: number;
  sort: string;
  json: boolean;
  units: TableUnits;
  ascii: boolean;
}

/** Columns that are taken where no terminal tells. */
const USUAL_WIDTH = 100;

export function shelfCommand(): Command {
  return new Command('shelf')
    .summary('list every cable that was ever assayed')
    .description('Lists the cables of all trials on the shelf with what was found of them, and searches them.')
    .option('--find <words>', 'only cables with all these words, such as "2 awg tinned"', '')
    .option('--metal <metal>', 'only this metal found, such as copper, or "not settled"', '')
    .option('--least <price>', 'only from this price a metre on', priceOf('--least'))
    .option('--most <price>', 'only up to this price a metre', priceOf('--most'))
    .option(
      '--sort <column>',
      'name, size, metal, day, price, area, resistance, stiffness …; -area for the largest first',
      'name',
    )
    .option('--json', 'print the lines in their machine-readable form', false)
    .option('--units <list>', 'units of the table: mm2, awg or kcmil; mm or in; m or ft', readUnits, {})
    .option('--ascii', 'draw the table with characters that every terminal has', false)
    .addHelpText(
      'after',
      '\nExamples:\n  cupel shelf --find "2 awg" --sort -area\n  cupel shelf --metal copper --most 15 --json',
    )
    .action(shelf);
}

async function shelf(options: ShelfOptions): Promise<void> {
  const { indexedShelf, orderShelf, SHELF_ORDERS, searchShelf } = await import(
    '../../../findings/across/searchShelf.ts'
  );
  const by = options.sort.replace(/^-/, '');
  if (!SHELF_ORDERS.includes(by))
    throw new Failure(`--sort was "${options.sort}"; expected one of ${SHELF_ORDERS.join(', ')}.`, EXIT.wrongUse);
  const wish = await shelfWish(options);
  const { cables, damaged } = await allCables();
  const found = orderShelf(searchShelf(indexedShelf(cables), wish), by, options.sort.startsWith('-')).map(
    ({ line }) => line,
  );
  for (const title of damaged)
    process.stderr.write(`The disk damaged "${title}", so its cables are not listed; cupel assay says what to do.\n`);
  if (options.json) {
    process.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
    return;
  }
  process.stdout.write(`${countSentence(found.length, cables.length)}\n`);
  if (found.length === 0) return;
  const { shelfTable } = await import('../../../report/text/shelfTable.ts');
  const width = process.stdout.columns ?? USUAL_WIDTH;
  process.stdout.write(`\n${shelfTable(found, { units: options.units, width, ascii: options.ascii })}`);
}

function countSentence(found: number, all: number): string {
  if (all === 0) return 'No cable is on the shelf yet.';
  const cables = `${all} ${all === 1 ? 'cable' : 'cables'}`;
  return found === all ? `${cables} on the shelf.` : `${found} of ${cables} on the shelf.`;
}

async function allCables() {
  const { openShelf } = await import('../../store/openShelf.ts');
  const { lineBook, wholeShelf } = await import('../../shelf/lineBook.ts');
  const { linesFile, rememberedIn } = await import('../../shelf/rememberedLines.ts');
  const store = await openShelf();
  try {
    return await wholeShelf(lineBook(store, rememberedIn(linesFile())), 'bench');
  } finally {
    await store.close();
  }
}
