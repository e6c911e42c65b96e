import { extname } from 'node:path';
import { Command, Option } from 'commander';
import type { ReportPaper } from '../../../report/publish/print/reportTypst.ts';
import { EXIT, Failure } from '../failure.ts';
import { readDraws, readLevel, readUnits, type TableUnits } from '../options.ts';

interface ReportOptions {
  output: string;
  replace: boolean;
  paper: ReportPaper;
  part?: string;
  units: TableUnits;
  level: number;
  draws: number | 'auto';
}

export function reportCommand(): Command {
  return new Command('report')
    .summary('write a report as a web page or a PDF')
    .description(
      'Writes everything that was found as one file: .html, which needs no network and prints well, or .pdf.',
    )
    .argument('<package>', 'folder or .zip of a data package, or the name of a trial on the shelf')
    .requiredOption('-o, --output <file>', 'file that ends in .html or .pdf, to write')
    .option('--replace', 'write over a file that is there already', false)
    .addOption(new Option('--paper <size>', 'paper of a PDF').choices(['a4', 'letter']).default('a4'))
    .option('--part <name>', 'a sealed part, with what changed since')
    .option('--units <list>', 'units of the figures: mm2, awg or kcmil; mm or in; m or ft', readUnits, {})
    .option('--level <share>', 'share of cases in which an interval holds the true value', readLevel, 0.95)
    .option('--draws <n>', 'random draws that check the closed form: auto, a number, or 0 for none', readDraws, 0)
    .addHelpText(
      'after',
      '\nExamples:\n  cupel report demo -o demo.html\n  cupel report fenwater -o "part 1.pdf" --part 1 --paper letter',
    )
    .action(report);
}

async function report(named: string, options: ReportOptions): Promise<void> {
  const ending = extname(options.output).toLowerCase();
  if (ending !== '.html' && ending !== '.pdf')
    throw new Failure(`--output was "${options.output}"; expected a file that ends in .html or .pdf.`, EXIT.wrongUse);
  const { refuseWithoutFolder } = await import('../../files/refuseWithoutFolder.ts');
  refuseWithoutFolder(options.output);
  const { publishedOf } = await import('../publishedOf.ts');
  const { reportDocument } = await import('../../../report/publish/document/reportDocument.ts');
  const { made, ...input } = await publishedOf(named, options);
  const document = reportDocument({ ...input, units: options.units });
  const { writeWholeFile } = await import('../../files/writeFile.ts');
  const content = ending === '.html' ? await page(document) : await sheets(document, options.paper, made);
  writeWholeFile(options.output, content, options.replace);
  process.stdout.write(`${document.title}: report written to ${options.output}.\n`);
}

type Document = Parameters<typeof import('../../../report/publish/html/reportHtml.ts').reportHtml>[0];

async function page(document: Document): Promise<string> {
  const { reportHtml } = await import('../../../report/publish/html/reportHtml.ts');
  const { embeddedFonts } = await import('../../publish/fonts.ts');
  return reportHtml(document, { fonts: embeddedFonts() });
}

async function sheets(document: Document, paper: ReportPaper, made: number): Promise<Uint8Array> {
  const { reportTypst } = await import('../../../report/publish/print/reportTypst.ts');
  const { reportPdf } = await import('../../publish/pdf.ts');
  return reportPdf(reportTypst(document, paper), made);
}
