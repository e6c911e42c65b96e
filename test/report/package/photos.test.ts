import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changedTables } from '../../../src/report/package/changedTables.ts';
import { photoFiles, photosNamed, type WrittenPhoto } from '../../../src/report/package/photos.ts';
import { type PackageReading, readPackage } from '../../../src/report/package/readPackage.ts';
import { refusalText } from '../../../src/report/package/refusal.ts';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { unzipPackage, zipPackage } from '../../../src/report/package/zip.ts';
import { contentHash } from '../../../src/trial/content.ts';
import { fold } from '../../../src/trial/fold.ts';
import { entry, onePiece } from '../../trial/entries.ts';
import { NOW } from './files.ts';

const shaOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const photoOf = (bytes: Uint8Array): WrittenPhoto => ({ name: shaOf(bytes), bytes, ending: 'jpg', type: 'image/jpeg' });

/** A trial with a note for each photo, and one note that names a file instead. */
const trialWith = (photos: readonly WrittenPhoto[]) =>
  fold([
    ...onePiece(),
    entry('note', { note: 'n0', about: 'trial', text: 'words', photo: 'IMG_0001.jpg' }),
    ...photos.map(({ name }, i) => entry('note', { note: `n${i + 1}`, about: 'specimen', which: 'q1', photo: name })),
  ]);

const through = (photos: readonly WrittenPhoto[], trial = trialWith(photos)): PackageReading =>
  readPackage(
    unzipPackage(
      zipPackage(new Map<string, string | Uint8Array>([...writePackage(trial, photos), ...photoFiles(photos)])),
    ),
    { now: NOW },
  );

describe('a package with photos', () => {
  const one = photoOf(new Uint8Array([0xff, 0xd8, 0xff, 1]));
  const two = photoOf(new Uint8Array([0xff, 0xd8, 0xff, 2]));

  it('gives back rows and photos as they were', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.uint8Array({ minLength: 1 }), { selector: shaOf, maxLength: 5 }), (contents) => {
        const photos = contents.map((bytes) => photoOf(bytes));
        const trial = trialWith(photos);
        const read = through(photos, trial);
        expect(read.refusals).toEqual([]);
        expect(contentHash(fold(read.entries))).toBe(contentHash(trial));
        expect(read.photos.map(({ name }) => name).sort()).toEqual(photosNamed(trial).sort());
        for (const { name, bytes } of read.photos) expect(shaOf(bytes)).toBe(name);
      }),
      { seed: 20261125, numRuns: 50 },
    );
  });

  it('describes each photo with its hash and size, and is a plain data package then', () => {
    const described = JSON.parse(writePackage(trialWith([one]), [one]).get('datapackage.json')!);
    expect(described.profile).toBe('data-package');
    expect(described.resources.at(-1)).toEqual({
      name: `photo-${one.name.slice(0, 16)}`,
      path: `photos/${one.name}.jpg`,
      profile: 'data-resource',
      format: 'jpg',
      mediatype: 'image/jpeg',
      bytes: 4,
      hash: `sha256:${one.name}`,
    });
    expect(JSON.parse(writePackage(trialWith([])).get('datapackage.json')!).profile).toBe('tabular-data-package');
  });

  it('carries the small picture of a photo too, and counts the photo alone', () => {
    const trial = fold([
      ...onePiece(),
      entry('note', { note: 'n1', about: 'specimen', which: 'q1', photo: one.name, thumbnail: two.name }),
    ]);
    const { photos } = through([one, two], trial);
    expect(photos.map(({ name, small }) => [name, small])).toEqual(
      [one, two].map(({ name }) => [name, name === two.name]).sort(),
    );
    const bare = readPackage(unzipPackage(zipPackage(writePackage(trial))), { now: NOW });
    expect(bare.notes).toContain('One photo that its rows name did not come along.');
  });

  it('says how many were left out', () => {
    const read = readPackage(unzipPackage(zipPackage(writePackage(trialWith([one, two])))), { now: NOW });
    expect(read.refusals).toEqual([]);
    expect(read.notes).toContain('2 photos that its rows name did not come along.');
  });

  it('refuses a photo that is not the one its name stands for', () => {
    const changed = { ...one, bytes: two.bytes };
    const { refusals, photos, entries } = through([changed], trialWith([one]));
    expect(refusals.map(refusalText)).toEqual([
      `photos/${one.name}.jpg: found a photo that is not the one its name stands for; expected the photo whose SHA-256 begins with ${one.name.slice(0, 12)}. It was changed or damaged on the way; take it from where the package was made.`,
    ]);
    expect([photos, entries]).toEqual([[], []]);
  });

  it('does not count photos among the tables that were changed', () => {
    const trial = trialWith([one]);
    expect(changedTables(writePackage(trial, [one]).get('datapackage.json')!, writePackage(trial))).toEqual([]);
  });
});
