import { Command } from 'commander';
import type { Findings } from '../../../findings/schema.ts';
import type { Trial } from '../../../trial/trial.ts';
import { EXIT, Failure } from '../failure.ts';
import type { SoundPackage } from '../packageAt.ts';

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
  await verifyParts(trial, read.sealed);
  const { findingsOf } = await import('../../../findings/findings.ts');
  if (read.findings === null) {
    findingsOf(trial, { level: 0.95, draws: 0 });
    process.stdout.write(
      'It holds no findings.json, so there are no published figures to compare; it can be computed.\n',
    );
    return;
  }
  const published = publishedFindings(read.findings, path);
  const { level, draws } = published.engine;
  if (published.engine.content !== content)
    throw new Failure(await whatChanged(published, trial, read.descriptor, path), EXIT.dataSaysNo);
  process.stdout.write(await sameness(published, findingsOf(trial, { level, draws })));
}

/** Computes every sealed part again; ends the command at the first that is not as it was sealed. */
async function verifyParts({ parts }: Trial, sealed: SoundPackage['sealed']): Promise<void> {
  if (parts.length === 0) return;
  const { verifySealed } = await import('../verifySealed.ts');
  const now = new Date().toISOString();
  for (const [i, part] of parts.entries()) {
    const { outcome, text } = verifySealed(part, sealed.get(i + 1), MACHINE_DIFFERENCE, now);
    if (outcome === 'differs' || outcome === 'not here') throw new Failure(text, EXIT.dataSaysNo);
    process.stdout.write(`${text}\n`);
  }
}

function publishedFindings(text: string, path: string): Findings {
  const parsed = parsedJson(text) as Findings | null;
  const engine = parsed?.engine;
  if (
    typeof engine?.content === 'string' &&
    typeof engine.level === 'number' &&
    typeof engine.draws === 'number' &&
    Array.isArray(parsed?.cables)
  )
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
  const { first, largest } = await compared(published, computed);
  if (first !== null) {
    const versions =
      published.engine.version === computed.engine.version
        ? ''
        : ` (published by version ${published.engine.version}, computed by ${computed.engine.version})`;
    throw new Failure(`findings.json differs first at ${first}${versions}.`, EXIT.dataSaysNo);
  }
  if (largest === 0) return 'Computed again: every digit of findings.json is the same.\n';
  return `Computed again: every figure of findings.json is the same to within ${largest.toExponential(0)} of itself.\n`;
}

/** The tables are not those that the findings were computed from: which ones, and what follows for the figures. */
async function whatChanged(
  published: Findings,
  trial: Trial,
  descriptor: string | null,
  path: string,
): Promise<string> {
  const { findingsOf } = await import('../../../findings/findings.ts');
  const { writePackage } = await import('../../../report/package/writePackage.ts');
  const { changedTables } = await import('../../../report/package/changedTables.ts');
  const tables = descriptor === null ? null : changedTables(descriptor, writePackage(trial));
  const where =
    tables === null || tables.length === 0
      ? 'the package does not say which table or row'
      : `rows of ${tables.join(', ')}; the package does not say which rows`;
  const computed = findingsOf(trial, { level: published.engine.level, draws: 0 });
  const { first } = await compared(withoutDraws(published), withoutDraws(computed));
  const follows =
    first === null
      ? 'Computed again, every figure is the same all the same.'
      : `Computed again, the first difference is at ${first}.`;
  return `The tables of ${path} were changed after findings.json was computed from them: ${where}. ${follows}`;
}

/** Findings without what hangs on the content's hash: the draws are others as soon as a letter of the tables is. */
function withoutDraws(findings: Findings): Findings {
  return { ...findings, engine: {} as never, cables: findings.cables.map((c) => ({ ...c, monte_carlo: null })) };
}

/** The first difference as `Quill, conductor_area.value: published 28.6, computed 28.7`; null when there is none. */
async function compared(published: Findings, computed: Findings): Promise<{ first: string | null; largest: number }> {
  const { compareFindings } = await import('../firstFinding.ts');
  // Through JSON and back, so that both sides went the same way.
  const { first, largest } = compareFindings(published, JSON.parse(JSON.stringify(computed)), MACHINE_DIFFERENCE);
  if (first === null) return { first: null, largest };
  const place = first.cable === null ? first.place : `${first.cable}, ${first.place}`;
  return { first: `${place}: published ${shown(first.published)}, computed ${shown(first.computed)}`, largest };
}

function shown(value: unknown): string {
  return value === undefined ? 'nothing' : JSON.stringify(value).slice(0, 120);
}
