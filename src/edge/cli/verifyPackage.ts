import { findingsOf } from '../../findings/findings.ts';
import type { Findings } from '../../findings/schema.ts';
import { changedRows } from '../../report/package/changedRows.ts';
import { changedTables } from '../../report/package/changedTables.ts';
import { readPackage } from '../../report/package/readPackage.ts';
import { writePackage } from '../../report/package/writePackage.ts';
import { contentHash } from '../../trial/content.ts';
import { fold } from '../../trial/fold.ts';
import type { Trial } from '../../trial/trial.ts';
import { countDifferences } from './countDifferences.ts';
import { compareFindings, placeText, sideText } from './firstFinding.ts';
import type { SoundPackage } from './packageAt.ts';
import { verifySealed } from './verifySealed.ts';
import { asWritten, readFindings } from './writtenFindings.ts';

/**
 * Largest relative difference that another processor's or another Node.js's exponential and logarithm may leave in a
 * figure: far below any digit that is shown. Ours.
 */
const MACHINE_DIFFERENCE = 1e-9;

/** One thing that was looked at. */
export interface Checked {
  /** 'other version': nothing was changed, and this version of the program computes otherwise. */
  outcome: 'holds' | 'other version' | 'fails';
  text: string;
}

/**
 * Everything that a package can be held against: its tables and their hashes first, then each sealed part, then its findings. What
 * fails stops nothing that comes after it.
 *
 * @param path how the package is named in sentences
 * @param now ISO 8601
 */
export function verifyPackage(read: SoundPackage, path: string, now: string): Checked[] {
  const trial = fold(read.entries);
  const content = contentHash(trial);
  const published = read.findings === null ? null : readFindings(read.findings);
  const parts = trial.parts.map((part, i): Checked => {
    const { outcome, text } = verifySealed(part, read.sealed.get(i + 1), MACHINE_DIFFERENCE, now);
    if (outcome === 'same' || outcome === 'near') return { outcome: 'holds', text };
    return { outcome: outcome === 'other version' ? 'other version' : 'fails', text };
  });
  const tables = tablesChecked(read, trial, content, published, path, now);
  const findings = findingsChecked(read, trial, content, published, path);
  const all = [...(tables === null ? [] : [tables]), ...parts, findings];
  if (all.some(({ outcome }) => outcome === 'fails')) return all;
  return [{ outcome: 'holds', text: `${path} reads clean: ${read.entries.length} rows, content ${content}.` }, ...all];
}

type Engine = Pick<Findings['engine'], 'content'>;

/** What is wrong with the tables; null where nothing is. */
function tablesChecked(
  read: SoundPackage,
  trial: Trial,
  content: string,
  published: { engine: Engine } | null,
  path: string,
  now: string,
): Checked | null {
  const contentHolds = published === null ? null : published.engine.content === content;
  const changed = read.descriptor === null ? null : changedTables(read.descriptor, writePackage(trial));
  // Where the content holds, a table that another version writes otherwise was not changed.
  const tables = contentHolds ? (changed ?? []).filter((file) => OUTSIDE_CONTENT.has(file)) : (changed ?? []);
  if (contentHolds !== false && tables.length === 0) return null;
  const after = contentHolds === false ? 'findings.json was computed from them' : 'the package was written';
  const where =
    tables.length === 0
      ? 'the package does not say which table or row'
      : `rows of ${tables.join(', ')}; ${whichRows(read, tables, now)}`;
  return { outcome: 'fails', text: `The tables of ${path} were changed after ${after}: ${where}.` };
}

/** Tables that the hash of the content leaves out: they speak of the publishing. */
const OUTSIDE_CONTENT: ReadonlySet<string> = new Set(['parts.csv', 'replies.csv']);
const MOST_NAMED = 8;

/** Rows of those tables that read otherwise in a sealed part, which has its own copy. */
function whichRows({ entries, sealed }: SoundPackage, tables: readonly string[], now: string): string {
  const known = [...sealed.values()].flatMap((files) => readPackage(new Map(files), { now }).entries);
  const rows = changedRows(entries, known).filter((name) => tables.includes(name.split(' ')[0]!));
  if (rows.length === 0) return 'the package does not say which rows';
  const more = rows.length > MOST_NAMED ? ` and ${rows.length - MOST_NAMED} more` : '';
  return `otherwise than in a sealed part reads ${rows.slice(0, MOST_NAMED).join(', ')}${more}`;
}

function findingsChecked(
  read: SoundPackage,
  trial: Trial,
  content: string,
  published: Findings | null,
  path: string,
): Checked {
  if (read.findings === null) {
    findingsOf(trial, { level: 0.95, draws: 0 });
    const text = 'It holds no findings.json, so there are no published figures to compare; it can be computed.';
    return { outcome: 'holds', text };
  }
  if (published === null)
    return {
      outcome: 'fails',
      text: `findings.json in ${path} cannot be read as findings; write it again with cupel export.`,
    };
  const { level, draws } = published.engine;
  if (published.engine.content !== content) return ofOtherTables(published, trial);
  const computed = asWritten(findingsOf(trial, { level, draws }));
  const { version } = computed.engine;
  // A version of another name that computes the same is no difference.
  computed.engine.version = published.engine.version;
  const { first, largest } = compared(published, computed);
  if (first === null && largest === 0)
    return { outcome: 'holds', text: 'Computed again: every digit of findings.json is the same.' };
  if (first === null)
    return {
      outcome: 'holds',
      text: `Computed again: every figure of findings.json is the same to within ${largest.toExponential(0)} of itself.`,
    };
  const count = countDifferences(published, computed, MACHINE_DIFFERENCE);
  const versions =
    published.engine.version === version
      ? ''
      : ` (published by version ${published.engine.version}, computed by ${version}; nothing in the package tells whether the version did it)`;
  const places = count === 1 ? 'in one place' : `in ${count} places`;
  return { outcome: 'fails', text: `findings.json differs first at ${first}; ${places} in all${versions}.` };
}

/** What follows for the figures where the tables are not those that they were computed from. */
function ofOtherTables(published: Findings, trial: Trial): Checked {
  const computed = asWritten(findingsOf(trial, { level: published.engine.level, draws: 0 }));
  const { first } = compared(withoutDraws(published), withoutDraws(computed));
  return {
    outcome: 'fails',
    text:
      first === null
        ? 'Computed again from the tables as they are, every figure of findings.json is the same all the same.'
        : `Computed again from the tables as they are, the first difference is at ${first}. Cables share tools, so one changed reading moves figures of others too.`,
  };
}

/** Findings without what hangs on the content's hash: the draws are others as soon as a letter of the tables is. */
function withoutDraws(findings: Findings): Findings {
  return { ...findings, engine: {} as never, cables: findings.cables.map((c) => ({ ...c, monte_carlo: null })) };
}

/** The first difference as `Quill, conductor_area.value: published 28.6, computed 28.7`; null when there is none. */
function compared(published: Findings, computed: Findings): { first: string | null; largest: number } {
  const { first, largest } = compareFindings(published, computed, MACHINE_DIFFERENCE);
  if (first === null) return { first: null, largest };
  const sides = `published ${sideText(first.published)}, computed ${sideText(first.computed)}`;
  return { first: `${placeText(first)}: ${sides}`, largest };
}
