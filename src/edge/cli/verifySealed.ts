import type { Findings } from '../../findings/schema.ts';
import { readPackage } from '../../report/package/readPackage.ts';
import { refusalText } from '../../report/package/refusal.ts';
import { findingsHash, unseal } from '../../report/publish/seal.ts';
import type { SealedPart } from '../../trial/trial.ts';
import { compareFindings } from './firstFinding.ts';

export interface SealedCheck {
  part: SealedPart;
  /** 'same': digits and hashes; 'near': hashes of the rows, figures to within another machine's last digits. */
  outcome: 'same' | 'near' | 'differs' | 'not here';
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
  const named = title(part);
  if (!files) {
    const text = part.hidden
      ? `${named} is hidden and not in the package.`
      : `${named} is not in the package: its rows as sealed are missing.`;
    return { part, outcome: part.hidden ? 'same' : 'not here', text };
  }
  const differs = (text: string): SealedCheck => ({ part, outcome: 'differs', text: `${named}: ${text}` });
  const read = readPackage(new Map(files), { now });
  if (read.refusals.length > 0) return differs(refusalText(read.refusals[0]!));
  const again = unseal(read.entries, part);
  if (!again) return differs('its rows are not those that were sealed.');
  const published = publishedIn(files);
  if (again.sameFindings && published !== null && JSON.stringify(published) === JSON.stringify(again.findings))
    return {
      part,
      outcome: 'same',
      text: `${named}: rows and findings are those that were sealed, every digit and both hashes.`,
    };
  if (published === null) return differs('its findings.json cannot be read.');
  const { first, largest } = compareFindings(published, JSON.parse(JSON.stringify(again.findings)), tolerance);
  if (first) {
    const where = first.cable === null ? first.place : `${first.cable}, ${first.place}`;
    return differs(`its findings differ first at ${where}.`);
  }
  if (findingsHash({ trial: again.trial, findings: published }) !== part.findings)
    return differs('its findings.json is not the one that was sealed.');
  return {
    part,
    outcome: 'near',
    text: `${named}: rows are those that were sealed, every figure to within ${largest.toExponential(0)} of itself.`,
  };
}

function publishedIn(files: ReadonlyMap<string, Uint8Array>): Findings | null {
  const bytes = files.get('findings.json');
  try {
    return bytes ? (JSON.parse(new TextDecoder().decode(bytes)) as Findings) : null;
  } catch {
    return null;
  }
}
