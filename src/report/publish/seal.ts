import { type PartComputed, partFindings } from '../../findings/partFindings.ts';
import { ENGINE_VERSION } from '../../findings/version.ts';
import type { Entry } from '../../journal/entry.ts';
import type { PartPlace } from '../../journal/kinds/seal.ts';
import { mergeEntries } from '../../journal/merge.ts';
import { isPartName, PART_NAME_RULE } from '../../journal/partName.ts';
import { shownCell } from '../../journal/rowCheck.ts';
import { textHash } from '../../journal/textHash.ts';
import { contentHash } from '../../trial/content.ts';
import { holdsCells } from '../../trial/heldRows.ts';
import { partEntries } from '../../trial/partEntries.ts';
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

const shownName = (part: string): string =>
  part.trim() === '' ? 'the part has no name' : `the part was called ${shownCell(part)}`;

/** SHA-256 of findings as they are written. */
export const findingsHash = (computed: PartComputed): string => textHash(findingsText(computed.findings));

/**
 * The row that seals a part: it names the last entry, and fixes what the rows and the findings are by their hashes.
 *
 * @throws RangeError for a name that no part may have, while names are hidden, for a part without places, and where nothing was said
 *   yet.
 */
export function sealRow(entries: readonly Entry[], asked: SealAsked): Record<string, string> {
  if (!isPartName(asked.part)) throw new RangeError(`${shownName(asked.part)}; expected ${PART_NAME_RULE}`);
  const said = mergeEntries(entries).filter(({ kind }) => kind !== 'seal');
  const last = said[said.length - 1];
  if (!last) throw new RangeError('there is nothing to seal yet');
  if (asked.places.length === 0) throw new RangeError('a part needs a place: inside, bend, jacket, amps or standing');
  const { level, draws, places } = asked;
  const computed = partFindings(said, { places, holds: null, level, draws });
  if (computed.trial.blinding.blind) throw new RangeError('names are hidden: show them before a part is sealed');
  return {
    part: asked.part,
    title: asked.title,
    places: places.join(', '),
    up_to: last.id,
    content: contentHash(computed.trial),
    findings: findingsHash(computed),
    ...holdsCells(partEntries(said, { places, holds: null })),
    level: String(level),
    draws: String(draws),
    version: ENGINE_VERSION,
    hidden: asked.hidden ? 'yes' : 'no',
    at: asked.at,
    by: asked.by,
  };
}

/** The part that holds the same rows and findings as a new seal, under another name; null where none does. */
export function sameAs(parts: readonly SealedPart[], row: Readonly<Record<string, string>>): SealedPart | null {
  return parts.find(({ content, findings }) => content === row.content && findings === row.findings) ?? null;
}

/** A sealed part computed again. */
export interface Unsealed extends PartComputed {
  part: SealedPart;
  /** Every digit of the findings is. */
  sameFindings: boolean;
}

/**
 * Computes a sealed part again from a journal: from the rows that it held when it was sealed, whatever was said or has arrived since.
 *
 * A journal that came out of a package has only the last row of each name; where one that was sealed is gone, null is given.
 */
export function unseal(entries: readonly Entry[], part: SealedPart): Unsealed | null {
  const { places, level, draws, holds } = part;
  const computed = partFindings(entries, { places, holds, level, draws });
  if (contentHash(computed.trial) !== part.content) return null;
  return { ...computed, part, sameFindings: findingsHash(computed) === part.findings };
}

/** The files of a sealed part: a package of its own, its findings with it. */
export function sealedPackage({ trial, findings }: PartComputed): Map<string, string> {
  return new Map([...writePackage(trial), ['findings.json', findingsText(findings)]]);
}
