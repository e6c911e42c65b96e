import type { ReadingStore, Store } from '../store.ts';
import { pagesOf } from './seal.ts';

/** Copies every journal, in its order of arrival, and every blob. Devices are not copied: who may ask is no record. */
export async function copyStore(from: ReadingStore, to: Pick<Store, 'append' | 'putBlob'>): Promise<void> {
  for (const trial of await from.trialNames()) {
    for await (const page of pagesOf(from, trial)) await to.append(trial, page);
    for (const name of await from.blobNames(trial)) {
      const bytes = await from.getBlob(trial, name);
      if (bytes !== null) await to.putBlob(trial, bytes);
    }
  }
}
