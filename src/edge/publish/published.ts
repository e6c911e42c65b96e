import { findingsOf } from '../../findings/findings.ts';
import { partFindings } from '../../findings/partFindings.ts';
import type { Entry } from '../../journal/entry.ts';
import { readPackage } from '../../report/package/readPackage.ts';
import { changedSince, correctionsAfter } from '../../report/publish/changedSince.ts';
import type { ReportInput } from '../../report/publish/document/reportDocument.ts';
import { unseal } from '../../report/publish/seal.ts';
import { entriesByCode } from '../../trial/byCode.ts';
import { corrections } from '../../trial/corrections.ts';
import { fold } from '../../trial/fold.ts';
import type { SealedPart, Trial } from '../../trial/trial.ts';

export interface PublishAsked {
  /** Name of a sealed part; undefined for the trial as it stands. */
  part?: string;
  level: number;
  draws: number | 'auto';
}

export interface JournalBrought {
  entries: readonly Entry[];
  /** The files of sealed parts that a package brought along, by their number. */
  sealed: ReadonlyMap<number, ReadonlyMap<string, Uint8Array>>;
}

export type Published = Pick<ReportInput, 'entries' | 'trial' | 'findings' | 'part' | 'changed'>;

/** Why something cannot be published as asked. */
export class NotPublished extends Error {}

/**
 * What a report or a card is made from: the trial as it stands, by its codes while names are hidden; or a sealed part with what
 * changed since.
 *
 * @param now ISO 8601
 * @throws NotPublished with one sentence
 */
export function published({ entries, sealed }: JournalBrought, asked: PublishAsked, now: string): Published {
  const trial = fold(entries);
  if (asked.part !== undefined) return ofPart(entries, trial, sealed, asked.part, now);
  const shown = trial.blinding.blind ? entriesByCode(entries, trial) : entries;
  const shownTrial = trial.blinding.blind ? fold(shown) : trial;
  const { level, draws } = asked;
  return {
    entries: shown,
    trial: shownTrial,
    findings: findingsOf(shownTrial, { level, draws }),
    part: null,
    changed: null,
  };
}

function ofPart(
  entries: readonly Entry[],
  trial: Trial,
  sealed: JournalBrought['sealed'],
  name: string,
  now: string,
): Published {
  const at = trial.parts.findIndex(({ part }) => part === name);
  const part = trial.parts[at];
  if (!part) {
    const known = trial.parts.map((p) => p.part).join(', ');
    throw new NotPublished(`No part ${name} was sealed${known === '' ? '' : `; there is ${known}`}.`);
  }
  const again = unseal(entries, part) ?? fromFolder(part, sealed.get(at + 1), now);
  if (!again)
    throw new NotPublished(
      `The rows of part ${name} as it was sealed are not known here; take the package that holds them.`,
    );
  const { places, level, draws } = part;
  const today = partFindings(entries, { places, holds: null, level, draws }).findings;
  const after = correctionsAfter(corrections(entries, trial), part, entries);
  // Replies are printed with every later export, whenever they came.
  return {
    entries,
    trial: { ...again.trial, replies: trial.replies },
    findings: again.findings,
    part,
    changed: changedSince(again.findings, today, after),
  };
}

function fromFolder(part: SealedPart, files: ReadonlyMap<string, Uint8Array> | undefined, now: string) {
  return files ? unseal(readPackage(new Map(files), { now }).entries, part) : null;
}
