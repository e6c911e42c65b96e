import { photoAt } from './photos.ts';
import { tableHash } from './tableHash.ts';

/**
 * Which tables no longer hold the rows that they were written with, by file name: those that the package's descriptor
 * gives another hash, those that are new, and those that are gone. A table that was only saved anew by another program,
 * with other quotation marks or line ends, is not among them.
 *
 * @param descriptor text of `datapackage.json`
 * @param written the package's files as Cupel writes what is in them now
 * @returns null when the descriptor does not say, as in packages of other programs: then nobody can tell
 */
export function changedTables(descriptor: string, written: ReadonlyMap<string, string>): string[] | null {
  const hashes = hashesIn(descriptor);
  if (hashes === null) return null;
  const now = [...written].filter(([file]) => file.endsWith('.csv'));
  const changed = now.filter(([file, text]) => hashes.get(file) !== tableHash(text)).map(([file]) => file);
  const gone = [...hashes.keys()].filter((file) => !written.has(file));
  return [...changed, ...gone];
}

/** File name → hash; null unless every table has one of the kind that Cupel writes. */
function hashesIn(descriptor: string): Map<string, string> | null {
  const resources = resourcesIn(descriptor);
  const hashes = new Map<string, string>();
  for (const { path, hash } of resources) {
    // Photos are named by their content, so one that changed is refused when it is read.
    if (typeof path === 'string' && photoAt(path) !== null) continue;
    if (typeof path !== 'string' || typeof hash !== 'string' || !hash.startsWith('sha256:')) return null;
    hashes.set(path, hash);
  }
  return hashes.size === 0 ? null : hashes;
}

function resourcesIn(descriptor: string): { path?: unknown; hash?: unknown }[] {
  try {
    const { resources } = JSON.parse(descriptor) as { resources?: unknown };
    return Array.isArray(resources) ? resources.filter((one) => typeof one === 'object' && one !== null) : [];
  } catch {
    return [];
  }
}
