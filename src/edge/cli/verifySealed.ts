import type { Findings } from '../../findings/schema.ts';
import { ENGINE_VERSION } from '../../findings/version.ts';
import { nameInTable } from '../../report/package/changedRows.ts';
import { type PackageReading, readPackage } from '../../report/package/readPackage.ts';
import { refusalText } from '../../report/package/refusal.ts';
import { findingsHash, type Unsealed, unseal } from '../../report/publish/seal.ts';
import { rowMark } from '../../trial/heldRows.ts';
import type { SealedPart } from '../../trial/trial.ts';
import { countDifferences } from './countDifferences.ts';
import { compareFindings, placeText, sideText } from './firstFinding.ts';
import { asWritten, readFindings } from './writtenFindings.ts';

export interface SealedCheck {
  part: SealedPart;
  /**
   * 'same': digits and hashes; 'near': hashes of the rows, figures to within another machine's last digits; 'other version': as it
   * was sealed, and this version computes otherwise; 'differs': it was changed.
   */
  outcome: 'same' | 'near' | 'other version' | 'differs' | 'not here';
  text: string;
}

const title = ({ part, title: t }: SealedPart): string => (t === '' ? `Part ${part}` : `Part ${part}, ${t}`);

/**
 * Reads a sealed part out of its own folder and computes it again: its rows must have the sealed hash, its findings every digit.
 *
 * @param files the part's folder; undefined when the package has none
 * @param tolerance largest relative difference that another machine may leave in a figure
 */
export function verifySealed(
  part: SealedPart,
  files: ReadonlyMap<string, Uint8Array> | undefined,
  tolerance: number,
  now: string,
): SealedCheck {
  if (!files) {
    const text = part.hidden ? 'hidden and not in the package.' : 'not in the package: its rows as sealed are missing.';
    return { part, outcome: part.hidden ? 'same' : 'not here', text: `${title(part)} is ${text}` };
  }
  const said = (outcome: SealedCheck['outcome'], text: string): SealedCheck => ({
    part,
    outcome,
    text: `${title(part)}: ${text}`,
  });
  const read = readPackage(new Map(files), { now });
  if (read.refusals.length > 0) return said('differs', refusalText(read.refusals[0]!));
  const again = unseal(read.entries, part);
  if (!again) return said('differs', `its rows are not those that were sealed.${strangeRows(part, read)}`);
  const written = files.get('findings.json');
  const published = written === undefined ? null : readFindings(written);
  if (published === null) return said('differs', 'its findings.json cannot be read.');
  return said(...heldAgainst(published, again, tolerance));
}

/** What the findings that came along are to those that were sealed and to those that are computed now. */
function heldAgainst(published: Findings, again: Unsealed, tolerance: number): [SealedCheck['outcome'], string] {
  const { part } = again;
  const computed = asWritten(again.findings);
  const same = JSON.stringify(published) === JSON.stringify(computed);
  if (same && again.sameFindings)
    return ['same', 'rows and findings are those that were sealed, every digit and both hashes.'];
  const versions = `sealed by version ${part.version || 'unknown'}, this is ${ENGINE_VERSION}`;
  const asSealed = findingsHash({ trial: again.trial, findings: published }) === part.findings;
  if (!asSealed && same)
    return [
      'other version',
      `its rows are those that were sealed. Its findings.json is what this version of Cupel computes from them, not the text that was sealed, which is not in the package (${versions}).`,
    ];
  // A version of another name that computes the same is no difference.
  computed.engine.version = published.engine.version;
  const { first, largest } = compareFindings(published, computed, tolerance);
  const place = first && placeText(first);
  if (!asSealed)
    return [
      'differs',
      first
        ? `its findings differ first at ${place}, and are not those that were sealed.`
        : 'its findings.json is not the one that was sealed.',
    ];
  if (!first)
    return ['near', `rows are those that were sealed, every figure to within ${largest.toExponential(0)} of itself.`];
  const count = countDifferences(published, computed, tolerance);
  const places = count === 1 ? 'one place' : `${count} places`;
  return [
    'other version',
    `rows and findings are as they were sealed, by both hashes. This version of Cupel computes ${places} of the findings otherwise, first ${place}: sealed ${sideText(first.published)}, computed ${sideText(first.computed)} (${versions}). Nothing was changed since it was sealed.`,
  ];
}

const MOST_NAMED = 5;

/** Which rows of the folder the seal does not hold; empty where it does not say, or where rows are only missing. */
function strangeRows({ holds }: SealedPart, { entries }: PackageReading): string {
  if (holds === null) return '';
  const strange = entries
    .filter((entry) => !holds.has(rowMark(entry)))
    .map((entry) => nameInTable(entry) ?? `a ${entry.kind}`);
  if (strange.length === 0) return ' Rows are missing, or there twice.';
  const more = strange.length > MOST_NAMED ? ` and ${strange.length - MOST_NAMED} more` : '';
  return ` It holds no such row as: ${strange.slice(0, MOST_NAMED).join(', ')}${more}.`;
}
