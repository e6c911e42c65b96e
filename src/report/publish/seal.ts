import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { type PartComputed, partFindings } from '../../findings/partFindings.ts';
import { ENGINE_VERSION } from '../../findings/version.ts';
import type { Entry } from '../../journal/entry.ts';
import type { PartPlace } from '../../journal/kinds/seal.ts';
import { mergeEntries } from '../../journal/merge.ts';
import { contentHash } from '../../trial/content.ts';
import type { SealedPart } from '../../trial/trial.ts';
import { findingsText } from '../findingsText.ts';
import { writePackage } from '../package/writePackage.ts';

export interface SealAsked {
  part: string;
  title: string;
  places: readonly PartPlace[];
  level: number;
  draws: number;
  hidden: boolean;
  /** ISO 8601: when it is sealed. */
  at: string;
  by: string;
}

/** SHA-256 of findings as they are written. */
export const findingsHash = (computed: PartComputed): string =>
  bytesToHex(sha256(utf8ToBytes(findingsText(computed.findings))));

/**
 * The row that seals a part: it names the last entry, and fixes what the rows and the findings are by their hashes.
 *
 * @throws RangeError while names are hidden, for a part without places, and where nothing was said yet.
 */
export function sealRow(entries: readonly Entry[], asked: SealAsked): Record<string, string> {
  const said = mergeEntries(entries).filter(({ kind }) => kind !== 'seal');
  const last = said[said.length - 1];
  if (!last) throw new RangeError('there is nothing to seal yet');
  if (asked.places.length === 0) throw new RangeError('a part needs a place: inside, bend, jacket, amps or standing');
  const { level, draws, places } = asked;
  const computed = partFindings(said, { places, upTo: last.id, level, draws });
  if (computed.trial.blinding.blind) throw new RangeError('names are hidden: show them before a part is sealed');
  return {
    part: asked.part,
    title: asked.title,
    places: places.join(', '),
    up_to: last.id,
    content: contentHash(computed.trial),
    findings: findingsHash(computed),
    level: String(level),
    draws: String(draws),
    version: ENGINE_VERSION,
    hidden: asked.hidden ? 'yes' : 'no',
    at: asked.at,
    by: asked.by,
  };
}

/** A sealed part computed again. */
export interface Unsealed extends PartComputed {
  part: SealedPart;
  /** The rows are those that were sealed. */
  sameContent: boolean;
  /** Every digit of the findings is. */
  sameFindings: boolean;
}

/**
 * Computes a sealed part again from the journal that it was sealed in. Where the journal came from a package, its entries have other
 * ids; then the rows as they stand now are tried, and null is given when they are not those that were sealed.
 */
export function unseal(entries: readonly Entry[], part: SealedPart): Unsealed | null {
  const { places, level, draws } = part;
  const tried = entries.some(({ id }) => id === part.upTo) ? [part.upTo] : [null];
  for (const upTo of tried) {
    const computed = partFindings(entries, { places, upTo, level, draws });
    const sameContent = contentHash(computed.trial) === part.content;
    if (sameContent || upTo !== null)
      return { ...computed, part, sameContent, sameFindings: findingsHash(computed) === part.findings };
  }
  return null;
}

/** The files of a sealed part: a package of its own, its findings with it. */
export function sealedPackage({ trial, findings }: PartComputed): Map<string, string> {
  return new Map([...writePackage(trial), ['findings.json', findingsText(findings)]]);
}
