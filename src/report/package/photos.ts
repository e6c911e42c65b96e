/** The photos of a package: files `photos/<sha256>.<ending>`, each named by its content. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { TypedRow } from '../../trial/trial.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A photo, or whatever else a row names by its content. */
export interface Photo {
  /** SHA-256 of its bytes, in hexadecimal. */
  name: string;
  bytes: Uint8Array;
  /** True where it is only the small picture of another one, which nobody counts. */
  small?: boolean;
}

/** A photo as it is written: with the ending and the media type that its first bytes tell. */
export interface WrittenPhoto extends Photo {
  ending: string;
  type: string;
}

const SHA_256 = /^[0-9a-f]{64}$/;
const PHOTO_PATH = /^photos\/([0-9a-f]{64})\.[a-z0-9]{1,5}$/i;

interface Naming {
  notes: readonly TypedRow[];
  evidence: readonly TypedRow[];
}

/** The column of a note that names the small picture of its photo. */
const SMALL = 'thumbnail';

/** Names of the photos that the rows of a trial name by their content, small ones too, each once, in the order of the rows. */
export function photosNamed({ notes, evidence }: Naming): string[] {
  return namesIn([...notes, ...evidence].flatMap(({ row }) => Object.values(row)));
}

/** Of those the ones that are only the small picture of another. */
export function smallPhotos({ notes, evidence }: Naming): Set<string> {
  const cells = [...notes, ...evidence].flatMap(({ row }) => Object.entries(row));
  const own = new Set(namesIn(cells.flatMap(([column, text]) => (column === SMALL ? [] : [text]))));
  return new Set(namesIn(cells.map(([, text]) => text)).filter((name) => !own.has(name)));
}

const namesIn = (texts: readonly string[]): string[] =>
  [...new Set(texts.map((text) => text.trim()))].filter((text) => SHA_256.test(text));

/** Where a photo lies in the package. */
export const photoPath = ({ name, ending }: Pick<WrittenPhoto, 'name' | 'ending'>): string =>
  `photos/${name}.${ending}`;

/** The name that a path gives a photo; null where it is no path of one. */
export const photoAt = (path: string): string | null => PHOTO_PATH.exec(path)?.[1]?.toLowerCase() ?? null;

/** The files of the photos, to be put beside the tables. */
export const photoFiles = (photos: readonly WrittenPhoto[]): Map<string, Uint8Array> =>
  new Map(photos.map((photo) => [photoPath(photo), photo.bytes]));

/** The photos among files, path → bytes; one that is not what its name says is refused. */
export function readPhotos(files: ReadonlyMap<string, Uint8Array>): { photos: Photo[]; refusals: Refusal[] } {
  const photos: Photo[] = [];
  const refusals: Refusal[] = [];
  for (const [path, bytes] of files) {
    const name = photoAt(path);
    if (name === null) continue;
    const own = bytesToHex(sha256(bytes));
    if (own === name) photos.push({ name, bytes });
    else
      refusals.push(
        refusal(path, null, null, {
          found: 'a photo that is not the one its name stands for',
          expected: `the photo whose SHA-256 begins with ${name.slice(0, 12)}`,
          advice: 'It was changed or damaged on the way; take it from where the package was made.',
        }),
      );
  }
  return { photos, refusals };
}

/** What to say where rows name photos that did not come along; empty when all did, or none was named. */
export function photosLeftOut(trial: Naming, photos: readonly Photo[]): string[] {
  const here = new Set(photos.map(({ name }) => name));
  const small = smallPhotos(trial);
  const lacking = photosNamed(trial).filter((name) => !here.has(name) && !small.has(name)).length;
  if (lacking === 0) return [];
  return [
    lacking === 1
      ? 'One photo that its rows name did not come along.'
      : `${lacking} photos that its rows name did not come along.`,
  ];
}
