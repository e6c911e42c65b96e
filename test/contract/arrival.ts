import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../src/edge/store/store.ts';
import { entryOf, idOf } from './entries.ts';

const WRITERS = 6;
const ROUNDS = 15;

/** What every store promises about the order in which entries arrived. */
export function arrivalContract(name: string, open: () => Promise<Store>): void {
  describe(`${name}: arrival`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(async () => {
      await store.close();
    });
    const idsSince = async (seq: number, limit?: number) => {
      const { entries, next } = await store.entriesSince('fen', seq, limit);
      return { ids: entries.map((entry) => entry.id), next };
    };

    it('is nothing for a trial that is not there', async () => {
      expect(await store.entriesSince('fen', 0)).toEqual({ entries: [], next: 0 });
      expect(await store.entriesSince('fen', 12)).toEqual({ entries: [], next: 12 });
    });

    it('is the same to whoever would put up with damage, where there is none', async () => {
      await store.append(
        'fen',
        [5, 4, 3, 2, 1].map((n) => entryOf(n)),
      );
      for (const [seq, limit] of [[0], [0, 2], [2, 2], [4, 7], [5], [12]] as const)
        expect(await store.readable('fen', seq, limit)).toEqual({
          ...(await store.entriesSince('fen', seq, limit)),
          damaged: [],
          advice: '',
        });
      expect(await store.readable('moor', 0)).toEqual({ entries: [], next: 0, damaged: [], advice: '' });
    });

    it('is numbered from 1, whatever the ids, and each entry once', async () => {
      expect(await store.append('fen', [entryOf(9), entryOf(2)])).toMatchObject({ added: 2, last: 2 });
      expect(await store.append('fen', [entryOf(2), entryOf(5), entryOf(5)])).toEqual({ added: 1, known: 2, last: 3 });
      expect(await store.append('fen', [entryOf(9)])).toEqual({ added: 0, known: 1, last: 3 });
      expect(await store.append('fen', [])).toEqual({ added: 0, known: 0, last: 3 });
      expect(await store.append('moor', [entryOf(9, { trial: 'moor' })])).toMatchObject({ last: 1 });
      expect(await idsSince(0)).toEqual({ ids: [9, 2, 5].map(idOf), next: 3 });
      expect(await store.entriesSince('fen', 0, 1)).toEqual({ entries: [entryOf(9)], next: 1 });
    });

    it('is read on from where one stopped', async () => {
      await store.append(
        'fen',
        [5, 4, 3, 2, 1].map((n) => entryOf(n)),
      );
      expect(await idsSince(0, 2)).toEqual({ ids: [5, 4].map(idOf), next: 2 });
      expect(await idsSince(2, 2)).toEqual({ ids: [3, 2].map(idOf), next: 4 });
      expect(await idsSince(4, 2)).toEqual({ ids: [1].map(idOf), next: 5 });
      expect(await idsSince(5, 2)).toEqual({ ids: [], next: 5 });
      await store.append('fen', [entryOf(0)]);
      expect(await idsSince(5)).toEqual({ ids: [idOf(0)], next: 6 });
    });

    it('lets a reader miss nothing while many write', async () => {
      let writing = true;
      const write = async (writer: number) => {
        for (let round = 0; round < ROUNDS; round += 1)
          await store.append(
            'fen',
            [0, 1, 2].map((k) => entryOf((round * WRITERS + writer) * 3 + k)),
          );
      };
      const read = async () => {
        const seen: string[] = [];
        let seq = 0;
        for (let last = false; ; ) {
          const { entries, next } = await store.entriesSince('fen', seq, 7);
          seen.push(...entries.map((entry) => entry.id));
          expect(next).toBe(seq + entries.length);
          seq = next;
          if (last && entries.length === 0) return seen;
          last = !writing;
          if (entries.length === 0) await new Promise((resume) => setTimeout(resume, 1));
        }
      };
      const reading = Promise.all([read(), read()]);
      await Promise.all(Array.from({ length: WRITERS }, (_, writer) => write(writer)));
      writing = false;
      const wanted = Array.from({ length: WRITERS * ROUNDS * 3 }, (_, n) => idOf(n));
      for (const seen of await reading) expect([...seen].sort()).toEqual(wanted);
    });

    it('counts an entry once that several send at the same time', async () => {
      const sent = Array.from({ length: WRITERS }, () => store.append('fen', [entryOf(1), entryOf(2)]));
      const outcomes = await Promise.all(sent);
      expect(outcomes.reduce((sum, { added }) => sum + added, 0)).toBe(2);
      expect(outcomes.every(({ last }) => last === 2)).toBe(true);
      expect(await idsSince(0)).toEqual({ ids: [1, 2].map(idOf), next: 2 });
    });
  });
}
