import type { Entry } from '../../journal/entry.ts';
import { sealedPath } from '../../report/package/sealedFiles.ts';
import { sealedPackage, unseal } from '../../report/publish/seal.ts';
import type { Trial } from '../../trial/trial.ts';

export interface SealedWritten {
  files: Map<string, string | Uint8Array>;
  /** Parts whose rows as sealed are known no more. */
  lost: string[];
}

/**
 * The folders of the sealed parts of a trial, computed again from its journal; from `brought`, a package that holds them, where the
 * journal does not. Hidden parts are left out.
 */
export function sealedParts(
  entries: readonly Entry[],
  { parts }: Trial,
  brought: ReadonlyMap<number, ReadonlyMap<string, Uint8Array>> = new Map(),
): SealedWritten {
  const files = new Map<string, string | Uint8Array>();
  const lost: string[] = [];
  parts.forEach((part, i) => {
    if (part.hidden) return;
    const again = unseal(entries, part);
    const known = again ? sealedPackage(again) : brought.get(i + 1);
    if (!known) lost.push(part.part);
    for (const [file, content] of known ?? []) files.set(sealedPath(i + 1, file), content);
  });
  return { files, lost };
}
