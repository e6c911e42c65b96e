import type { BroughtFile } from '../worker/jobs.ts';

const MEGABYTE = 1024 * 1024;
/** Larger files are refused before a byte is read: no table of readings comes near. */
export const LARGEST_FILE = 200 * MEGABYTE;
/** A .zip may hold photos, as many as a package may have. */
const LARGEST_ZIP = 1200 * MEGABYTE;

const mostOf = (path: string) => (/\.zip$/i.test(path) ? LARGEST_ZIP : LARGEST_FILE);

/** Files that came in, with a name for them all, or one sentence that says why they were left out. */
export type Brought = { ok: true; name: string; files: BroughtFile[] } | { ok: false; sentence: string };

/** What was chosen in a file field: single files, a .zip, or a whole folder. */
export async function broughtByField(list: FileList): Promise<Brought> {
  return readAll([...list].map((file) => ({ path: file.webkitRelativePath || file.name, file })));
}

/** What was dropped on the page: folders are walked through. */
export async function broughtByDrop(transfer: DataTransfer): Promise<Brought> {
  // The list dies with the event, so the entries are taken out of it before anything is awaited.
  const entries = [...transfer.items].map((item) => item.webkitGetAsEntry()).filter((entry) => entry !== null);
  if (entries.length === 0) return readAll([...transfer.files].map((file) => ({ path: file.name, file })));
  const found: Found[] = [];
  for (const entry of entries) await walk(entry, '', found);
  return readAll(found);
}

interface Found {
  path: string;
  file: File;
}

async function walk(entry: FileSystemEntry, above: string, found: Found[]): Promise<void> {
  const path = `${above}${entry.name}`;
  if (entry.isFile) {
    found.push({
      path,
      file: await new Promise<File>((done, fail) => (entry as FileSystemFileEntry).file(done, fail)),
    });
    return;
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((done, fail) => reader.readEntries(done, fail));
    if (some.length === 0) return;
    for (const inner of some) await walk(inner, `${path}/`, found);
  }
}

async function readAll(found: readonly Found[]): Promise<Brought> {
  if (found.length === 0) {
    return {
      ok: false,
      sentence: 'Found nothing in it; expected a folder, a .zip or CSV files such as cables.csv and readings.csv.',
    };
  }
  const large = found.find(({ path, file }) => file.size > mostOf(path));
  if (large !== undefined) {
    const size = Math.ceil(large.file.size / MEGABYTE);
    const most = mostOf(large.path) / MEGABYTE;
    return {
      ok: false,
      sentence: `Found ${large.path} with ${size} MB; expected at most ${most} MB. Readings are text and far smaller.`,
    };
  }
  const files = await Promise.all(found.map(async ({ path, file }) => ({ path, bytes: await bytesOf(path, file) })));
  return { ok: true, name: nameOf(found), files };
}

/** A photo named by its content, in whatever folder the package lies. */
const PHOTO = /(^|\/)photos\/[0-9a-f]{64}\.[a-z0-9]{1,5}$/i;

/** Photos and films lie beside the readings in many folders: only tables and the package's own photos are read. */
async function bytesOf(path: string, file: File): Promise<Uint8Array> {
  const wanted = /\.(csv|json|zip|txt|tsv)$/i.test(path) || PHOTO.test(path);
  return wanted ? new Uint8Array(await file.arrayBuffer()) : new Uint8Array();
}

/** The folder's name, else the .zip's without its ending, else that of the first file. */
function nameOf(found: readonly Found[]): string {
  const first = found[0]?.path ?? '';
  return (first.includes('/') ? (first.split('/')[0] ?? first) : first).replace(/\.(zip|csv|json|txt)$/i, '');
}
