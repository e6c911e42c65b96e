import { Command } from 'commander';
import type { Findings } from '../../../findings/schema.ts';
import { EXIT, Failure } from '../failure.ts';
import type { Difference } from '../firstDifference.ts';

/**
 * Largest relative difference that another processor's or another Node.js's exponential and logarithm may leave in a
 * figure: far below any digit that is shown. Ours.
 */
const MACHINE_DIFFERENCE = 1e-9;

export function verifyCommand(): Command {
  return new Command('verify')
    .summary('compute a published package again and compare')
    .description(
      'Reads a data package and computes it again. When it holds findings.json, every figure in there is compared; exit code 1 says that something differs.',
    )
    .argument('<package>', 'folder or .zip of a data package')
    .addHelpText('after', '\nExample:\n  cupel verify fenwater.zip')
    .action(verify);
}

async function verify(path: string): Promise<void> {
  const { soundPackage } = await import('../packageAt.ts');
  const read = soundPackage(path);
  const { fold } = await import('../../../trial/fold.ts');
  const { contentHash } = await import('../../../trial/content.ts');
  const trial = fold(read.entries);
  const content = contentHash(trial);
  process.stdout.write(`${path} reads clean: ${read.entries.length} rows, content ${content}.\n`);
  const { findingsOf } = await import('../../../findings/findings.ts');
  if (read.findings === null) {
    findingsOf(trial, { level: 0.95, draws: 0 });
    process.stdout.write(
      'It holds no findings.json, so there are no published figures to compare; it can be computed.\n',
    );
    return;
  }
  const published = publishedFindings(read.findings, path);
  if (published.engine.content !== content)
    throw new Failure(
      `findings.json in ${path} was computed from other data (content ${published.engine.content}): the tables were changed afterwards.`,
      EXIT.dataSaysNo,
    );
  const computed = findingsOf(trial, { level: published.engine.level, draws: published.engine.draws });
  process.stdout.write(await sameness(published, computed));
}

function publishedFindings(text: string, path: string): Findings {
  const parsed = parsedJson(text) as Findings | null;
  const engine = parsed?.engine;
  if (typeof engine?.content === 'string' && typeof engine.level === 'number' && typeof engine.draws === 'number')
    return parsed as Findings;
  throw new Failure(
    `findings.json in ${path} cannot be read as findings; write it again with cupel export.`,
    EXIT.dataSaysNo,
  );
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

async function sameness(published: Findings, computed: Findings): Promise<string> {
  const { compareJson } = await import('../firstDifference.ts');
  // Through JSON and back, so that both sides went the same way.
  const { first, largest } = compareJson(published, JSON.parse(JSON.stringify(computed)), MACHINE_DIFFERENCE);
  if (first !== null) throw new Failure(differenceSentence(first, published, computed), EXIT.dataSaysNo);
  if (largest === 0) return 'Computed again: every digit of findings.json is the same.\n';
  return `Computed again: every figure of findings.json is the same to within ${largest.toExponential(0)} of itself.\n`;
}

function differenceSentence({ place, published, computed }: Difference, theirs: Findings, ours: Findings): string {
  const versions =
    theirs.engine.version === ours.engine.version
      ? ''
      : ` (published by version ${theirs.engine.version}, computed by ${ours.engine.version})`;
  return `findings.json differs first at ${place}: published ${shown(published)}, computed ${shown(computed)}${versions}.`;
}

function shown(value: unknown): string {
  return value === undefined ? 'nothing' : JSON.stringify(value).slice(0, 120);
}
