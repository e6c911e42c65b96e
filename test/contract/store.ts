import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { LARGEST_BLOB, type Store, StoreRefusal } from '../../src/edge/store/store.ts';
import type { Entry } from '../../src/journal/entry.ts';

/** A UUIDv7-shaped id whose order is that of `n`. */
export function idOf(n: number): string {
  const time = n.toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-000000000000`;
}

export function entryOf(n: number, changes: Partial<Entry> = {}): Entry {
  return {
    id: idOf(n),
    trial: 'fen',
    kind: 'reading',
    at: '2026-05-01T10:00:00.000Z',
    by: 'J. Marsh',
    device: 'bench',
    body: { reading: `r${n}`, value: '39.27', note: 'ß 電 🧵 "quoted"\nnext' },
    ...changes,
  };
}

/** What every store promises, whatever it is made of. `open` answers a fresh, empty one. */
export function storeContract(name: string, open: () => Promise<Store>): void {
  describe(`${name} as a store`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(async () => {
      await store.close();
    });

    it('is empty at first', async () => {
      expect(await store.trials()).toEqual([]);
      expect(await store.entries('fen')).toEqual([]);
      expect(await store.has('fen')).toBe(false);
    });

    it('gives back what was appended, in the order of the ids and letter for letter', async () => {
      await store.append('fen', [entryOf(3), entryOf(1)]);
      await store.append('fen', [entryOf(2, { kind: 'a-kind-from-tomorrow', body: { __proto__x: '1', '': '' } })]);
      const ids = (await store.entries('fen')).map((entry) => entry.id);
      expect(ids).toEqual([1, 2, 3].map(idOf));
      expect((await store.entries('fen'))[0]).toEqual(entryOf(1));
      expect((await store.entries('fen'))[1]?.kind).toBe('a-kind-from-tomorrow');
    });

    it('takes the same entries again without a change', async () => {
      expect(await store.append('fen', [entryOf(1), entryOf(2)])).toEqual({ added: 2, known: 0 });
      expect(await store.append('fen', [entryOf(2), entryOf(3)])).toEqual({ added: 1, known: 1 });
      expect(await store.append('fen', [entryOf(4), entryOf(4)])).toEqual({ added: 1, known: 1 });
      expect(await store.entries('fen')).toHaveLength(4);
    });

    it('never changes an entry that it has', async () => {
      await store.append('fen', [entryOf(1)]);
      await store.append('fen', [entryOf(1, { body: { value: '99' } })]);
      expect((await store.entries('fen'))[0]?.body.value).toBe('39.27');
    });

    it('pages by id', async () => {
      await store.append(
        'fen',
        [1, 2, 3, 4, 5].map((n) => entryOf(n)),
      );
      const first = await store.entries('fen', '', 2);
      const second = await store.entries('fen', first[1]?.id, 2);
      const third = await store.entries('fen', second[1]?.id, 2);
      expect([first, second, third].map((page) => page.map((entry) => entry.id))).toEqual([
        [1, 2].map(idOf),
        [3, 4].map(idOf),
        [5].map(idOf),
      ]);
      expect(await store.entries('fen', idOf(5))).toEqual([]);
    });

    it('keeps trials apart, even with the same ids', async () => {
      await store.append('fen', [entryOf(1)]);
      await store.append('moor', [entryOf(1, { trial: 'moor', body: { value: '7' } })]);
      expect((await store.entries('moor'))[0]?.body.value).toBe('7');
      expect(await store.entries('fen')).toHaveLength(1);
    });

    it('keeps none of a list in which one entry belongs to another trial', async () => {
      await expect(store.append('fen', [entryOf(1), entryOf(2, { trial: 'moor' })])).rejects.toThrow(StoreRefusal);
      expect(await store.has('fen')).toBe(false);
      expect(await store.trials()).toEqual([]);
    });

    it('makes no trial out of nothing', async () => {
      expect(await store.append('fen', [])).toEqual({ added: 0, known: 0 });
      expect(await store.trials()).toEqual([]);
    });

    it('lists trials with what was last said of them', async () => {
      await store.append('fen', [
        entryOf(1, { kind: 'trial', body: { trial: 'fen', title: 'First words', opened_on: '2026-04-01' } }),
        entryOf(2, {
          kind: 'trial',
          body: { trial: 'fen', title: 'Six cables', place: 'Barn', opened_on: '2026-05-01' },
        }),
        entryOf(3, { kind: 'cable', body: { cable: 'a' } }),
        entryOf(4, { kind: 'cable', body: { cable: 'a', note: 'corrected' } }),
        entryOf(5, { kind: 'cable', body: { cable: 'b' } }),
      ]);
      await store.append('moor', [entryOf(9, { trial: 'moor' })]);
      expect(await store.trials()).toEqual([
        { trial: 'fen', title: 'Six cables', place: 'Barn', cables: 2, entries: 5, openedOn: '2026-05-01' },
        { trial: 'moor', title: 'moor', place: '', cables: 0, entries: 1, openedOn: null },
      ]);
    });

    it('keeps a blob under the SHA-256 of its bytes', async () => {
      // FIPS 180-2, appendix B.1: SHA-256 of "abc".
      const name = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
      const bytes = new TextEncoder().encode('abc');
      expect(await store.putBlob('fen', bytes)).toBe(name);
      expect(await store.putBlob('fen', bytes)).toBe(name);
      expect(await store.getBlob('fen', name)).toEqual(bytes);
      expect(await store.getBlob('moor', name)).toBeNull();
    });

    it('refuses a blob that is too large', async () => {
      await expect(store.putBlob('fen', new Uint8Array(LARGEST_BLOB + 1))).rejects.toThrow(StoreRefusal);
    });

    it('holds the union of all lists, whatever their order and however often they come', async () => {
      let run = 0;
      await fc.assert(
        fc.asyncProperty(
          fc.array(fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 12 }), { maxLength: 6 }),
          async (lists) => {
            run += 1;
            const trial = `t${run}`;
            let added = 0;
            for (const list of lists)
              added += (
                await store.append(
                  trial,
                  list.map((n) => entryOf(n, { trial })),
                )
              ).added;
            const wanted = [...new Set(lists.flat())].sort((a, b) => a - b).map(idOf);
            expect((await store.entries(trial)).map((entry) => entry.id)).toEqual(wanted);
            expect(added).toBe(wanted.length);
          },
        ),
        { seed: 20261125, numRuns: 40 },
      );
    });
  });
}
