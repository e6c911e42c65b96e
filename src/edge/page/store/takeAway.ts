import type { Photo } from '../../../report/package/photos.ts';
import { Bench } from '../worker/bench.ts';
import type { Assay } from './assay.ts';
import { bytesOfPhoto } from './photoBytes.ts';
import { handOver, plainName } from './publish/files.ts';
import { sentenceOf } from './sentenceOf.ts';

/**
 * Packs a trial and hands the .zip to the browser's downloads; answers with a sentence on what came of it.
 *
 * @param names SHA-256 of the photos that are to come along
 */
export async function savePackage({ trial, entries, findings }: Assay, names: readonly string[]): Promise<string> {
  const bench = new Bench();
  try {
    const photos = await photosHere(trial, names);
    const bytes = await bench.ask('pack', { entries, findings, photos });
    const file = `${plainName(trial)}.zip`;
    handOver(new Blob([bytes as BlobPart], { type: 'application/zip' }), file);
    return `${file} is among your downloads.${leftBehind(names.length - photos.length)}`;
  } catch (error) {
    return sentenceOf(error);
  } finally {
    bench.stop();
  }
}

async function photosHere(trial: string, names: readonly string[]): Promise<Photo[]> {
  const photos: Photo[] = [];
  for (const name of names) {
    const bytes = await bytesOfPhoto(trial, name);
    if (bytes !== null) photos.push({ name, bytes });
  }
  return photos;
}

function leftBehind(count: number): string {
  if (count === 0) return '';
  return count === 1
    ? ' One photo could not be had: it may still be on the device that took it.'
    : ` ${count} photos could not be had: they may still be on the devices that took them.`;
}
