import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Store, StoreRefusal } from '../../src/edge/store/store.ts';
import { arrivalContract } from './arrival.ts';
import { blobContract } from './blobs.ts';
import { deviceContract } from './devices.ts';
import { entryOf, idOf } from './entries.ts';

export { entryOf, idOf };

/** What every store promises, whatever it is made of. `open` answers a fresh, empty one. */
export function storeContract(name: string, open: () => Promise<Store>): void {
  arrivalContract(name, open);
  blobContract(name, open);
  deviceContract(name, open);

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
      expect(await store.append('fen', [entryOf(1), entryOf(2)])).toEqual({ added: 2, known: 0, last: 2 });
      expect(await store.append('fen', [entryOf(2), entryOf(3)])).toEqual({ added: 1, known: 1, last: 3 });
      expect(await store.append('fen', [entryOf(4), entryOf(4)])).toEqual({ added: 1, known: 1, last: 4 });
      expect(await store.entries('fen')).toHaveLength(4);
    });

    it('keeps a list whose every text is as long as a door lets it be', async () => {
      const long = entryOf(1, { by: 'é'.repeat(200), body: { note: '電'.repeat(10_000), empty: '' } });
      await store.append('fen', [long]);
      expect(await store.entries('fen')).toEqual([long]);
    });

    it('never changes an entry that it has', async () => {
      await store.append('fen', [entryOf(1)]);
      await store.append('fen', [entryOf(1, { body: { value: '99' } })]);
      expect((await store.entries('fen'))[0]?.body.value).toBe('39.27');
    });

    it('knows which ids it holds, trial by trial', async () => {
      await store.append('fen', [entryOf(1), entryOf(2)]);
      expect(await store.heldIds('fen', [idOf(2), idOf(3), ''])).toEqual(new Set([idOf(2)]));
      expect(await store.heldIds('moor', [idOf(1)])).toEqual(new Set());
      expect(await store.heldIds('fen', [])).toEqual(new Set());
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
      expect(await store.append('fen', [])).toEqual({ added: 0, known: 0, last: 0 });
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

    it('lists why a trial was put away, and counts no cable that was put aside, until they are taken up again', async () => {
      const act = (n: number, about: string, which: string, done = 'put aside') =>
        entryOf(n, { kind: 'withdrawal', body: { withdrawal: `w${n}`, act: done, about, which, why: 'made twice' } });
      const cable = (n: number, name: string) => entryOf(n, { kind: 'cable', body: { cable: name } });
      await store.append('fen', [cable(1, 'a'), cable(2, 'b'), act(3, 'cable', 'b'), act(4, 'trial', '')]);
      expect(await store.trials()).toMatchObject([{ trial: 'fen', cables: 1, putAway: 'made twice' }]);
      await store.append('fen', [act(5, 'trial', '', 'taken up again'), act(6, 'cable', 'b', 'taken up again')]);
      expect(await store.trials()).toEqual([
        { trial: 'fen', title: 'fen', place: '', cables: 2, entries: 6, openedOn: null },
      ]);
    });

    it('has a name of its own that stays', async () => {
      const name = await store.name();
      expect(name).toMatch(/^[0-9a-f-]{32,36}$/);
      await store.append('fen', [entryOf(1)]);
      expect(await store.name()).toBe(name);
    });

    it('takes another name when it is told to', async () => {
      const name = await store.name();
      await store.rename();
      expect(await store.name()).toMatch(/^[0-9a-f-]{32,36}$/);
      expect(await store.name()).not.toBe(name);
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
