import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { BlobRefusal, LARGEST_BLOB, type Store } from '../../src/edge/store/store.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

/** What every store promises about photos and logs. */
export function blobContract(name: string, open: () => Promise<Store>): void {
  describe(`${name}: blobs`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(async () => {
      await store.close();
    });

    it('are kept under the SHA-256 of their bytes, each once', async () => {
      // FIPS 180-2, appendix B.1: SHA-256 of "abc".
      const sum = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
      expect(await store.putBlob('fen', bytesOf('abc'))).toBe(sum);
      expect(await store.putBlob('fen', bytesOf('abc'))).toBe(sum);
      expect(await store.getBlob('fen', sum)).toEqual(bytesOf('abc'));
      expect(await store.blobNames('fen')).toEqual([sum]);
    });

    it('belong to one trial', async () => {
      const sum = await store.putBlob('fen', bytesOf('abc'));
      expect(await store.getBlob('moor', sum)).toBeNull();
      expect(await store.blobNames('moor')).toEqual([]);
      expect(await store.getBlob('fen', '0'.repeat(64))).toBeNull();
    });

    it('may come before the first entry of their trial', async () => {
      const names = ['moor', 'ｆen', '🧵', 'fen'];
      for (const trial of names) await store.putBlob(trial, bytesOf(trial));
      expect(await store.has('moor')).toBe(false);
      expect(await store.trials()).toEqual([]);
      // In the order of their bytes, in which U+FF46 comes before U+1F9F5; JavaScript's own order is the other way round.
      expect(await store.trialNames()).toEqual(['fen', 'moor', 'ｆen', '🧵']);
    });

    it('come back byte for byte', async () => {
      const every = Uint8Array.from({ length: 70_000 }, (_, n) => (n * 31) % 256);
      every.set([0xff, 0xd8, 0xff, 0xe0]);
      expect(await store.getBlob('fen', await store.putBlob('fen', every))).toEqual(every);
    });

    it('are listed in the order of their names', async () => {
      const names = [];
      for (const text of ['1', '2', '3', '4']) names.push(await store.putBlob('fen', bytesOf(text)));
      expect(await store.blobNames('fen')).toEqual(names.sort());
    });

    it('are refused when they are too large, empty, or of a kind that is not taken', async () => {
      for (const unfit of [new Uint8Array(LARGEST_BLOB + 1).fill(65), new Uint8Array(), bytesOf('<svg onload="x">')])
        await expect(store.putBlob('fen', unfit)).rejects.toThrow(BlobRefusal);
      expect(await store.blobNames('fen')).toEqual([]);
    });
  });
}
