import { Command } from 'commander';
import type { Findings } from '../../../findings/schema.ts';
import { findingsText } from '../../../report/findingsText.ts';
import { readDraws, readLevel, readUnits, type TableUnits } from '../options.ts';

interface AssayOptions {
  json: boolean;
  level: number;
  /** Not given: 'auto' for --json, none for the table, which a person waits for. */
  draws?: number | 'auto';
  units: TableUnits;
  ascii: boolean;
}

/** Widest table that is printed, in columns. */
const WIDEST = 80;

export function assayCommand(): Command {
  return new Command('assay')
    .summary('compute and print what is inside each cable')
    .description('Computes what is inside each cable of a data package, or of a trial on the shelf, and prints it.')
    .argument('<package>', 'folder or .zip of a data package, or the name of a trial on the shelf')
    .option('--json', 'print the findings in their machine-readable form', false)
    .option('--level <share>', 'share of cases in which an interval holds the true value', readLevel, 0.95)
    .option(
      '--draws <n>',
      'random draws that check the closed form: auto (usual with --json), a number, or 0 (usual without)',
      readDraws,
    )
    .option('--units <list>', 'units of the table: mm2, awg or kcmil; mm or in; m or ft', readUnits, {})
    .option('--ascii', 'draw the table with characters that every terminal has', false)
    .addHelpText(
      'after',
      '\nExamples:\n  cupel assay demo --units awg,in,ft\n  cupel assay "spring test.zip" --json --draws 0 > findings.json',
    )
    .action(assay);
}

async function assay(named: string, options: AssayOptions): Promise<void> {
  const { journalOf } = await import('../journalOf.ts');
  const { entries } = await journalOf(named);
  const { findingsOf } = await import('../../../findings/findings.ts');
  const { fold } = await import('../../../trial/fold.ts');
  const draws = options.draws ?? (options.json ? 'auto' : 0);
  const findings = findingsOf(fold(entries), { level: options.level, draws });
  process.stdout.write(options.json ? findingsText(findings) : await table(findings, options));
}

async function table(findings: Findings, options: AssayOptions): Promise<string> {
  const { assayTable } = await import('../../../report/text/assayTable.ts');
  const width = Math.min(process.stdout.columns ?? WIDEST, WIDEST);
  return assayTable(findings, { units: options.units, width, ascii: options.ascii });
}
