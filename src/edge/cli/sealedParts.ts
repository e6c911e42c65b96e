import type { Entry } from '../../journal/entry.ts';
import { sealedPath } from '../../report/package/sealedFiles.ts';
import { findingsHash, sealedPackage, type Unsealed, unseal } from '../../report/publish/seal.ts';
import type { SealedPart, Trial } from '../../trial/trial.ts';
import { readFindings } from './writtenFindings.ts';

type Folder = ReadonlyMap<string, string | Uint8Array>;

export interface SealedWritten {
  files: Map<string, string | Uint8Array>;
  /** Parts whose rows as sealed are known no more. */
  lost: string[];
  /** Parts whose findings as sealed are known no more: what this version of the program computes is written in their place. */
  otherwise: SealedPart[];
}

/**
 * The folders of the sealed parts of a trial, computed again from its journal; out of `brought`, a package that holds them, where the
 * journal has their rows no more or this version computes other findings than were sealed. Hidden parts are left out.
 */
export function sealedParts(
  entries: readonly Entry[],
  { parts }: Trial,
  brought: ReadonlyMap<number, ReadonlyMap<string, Uint8Array>> = new Map(),
): SealedWritten {
  const files = new Map<string, string | Uint8Array>();
  const lost: string[] = [];
  const otherwise: SealedPart[] = [];
  parts.forEach((part, i) => {
    if (part.hidden) return;
    const again = unseal(entries, part);
    const folder = brought.get(i + 1);
    const sealed = again === null ? folder : asSealed(again, folder);
    if (again === null && !folder) lost.push(part.part);
    if (again !== null && !sealed) otherwise.push(part);
    const written: Folder = sealed ?? (again ? sealedPackage(again) : new Map());
    for (const [file, content] of written) files.set(sealedPath(i + 1, file), content);
  });
  return { files, lost, otherwise };
}

/** The part with the findings that were sealed: computed, or as they were brought along; undefined when neither is it. */
function asSealed(again: Unsealed, folder: ReadonlyMap<string, Uint8Array> | undefined): Folder | undefined {
  if (again.sameFindings) return sealedPackage(again);
  const text = folder?.get('findings.json');
  const findings = text === undefined ? null : readFindings(text);
  if (text === undefined || findings === null) return undefined;
  if (findingsHash({ trial: again.trial, findings }) !== again.part.findings) return undefined;
  return new Map<string, string | Uint8Array>([...sealedPackage(again), ['findings.json', text]]);
}
