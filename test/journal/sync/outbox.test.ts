import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/journal/entry.ts';
import {
  acknowledged,
  emptyOutbox,
  letGo,
  MOST_IN_BATCH,
  met,
  type Outbox,
  received,
  refused,
  say,
  toSend,
  waiting,
} from '../../../src/journal/sync/outbox.ts';

const idOf = (n: number) => `00000000-${n.toString(16).padStart(4, '0')}-7000-8000-000000000000`;
const entryOf = (n: number, body: Record<string, string> = { reading: `r${n}` }): Entry => ({
  id: idOf(n),
  trial: 'club',
  kind: 'reading',
  at: '2026-10-03T10:00:00Z',
  by: '',
  device: '',
  body,
});
const saying = (...numbers: number[]): Outbox =>
  numbers.reduce((state, n) => say(state, entryOf(n)), emptyOutbox('club'));
const held = (state: Outbox) => state.journal.map(({ id }) => id);

describe('an outbox', () => {
  it('sends what was said, in the order in which it was said, until it is acknowledged', () => {
    const state = saying(3, 1, 2);
    expect(held(state)).toEqual([1, 2, 3].map(idOf));
    expect(toSend(state).map(({ id }) => id)).toEqual([3, 1, 2].map(idOf));
    expect(toSend(state)).toEqual(toSend(state));
    const after = acknowledged(state, [idOf(3), idOf(9)]);
    expect(waiting(after)).toEqual([1, 2].map(idOf));
    expect(toSend(acknowledged(after, waiting(after)))).toEqual([]);
  });

  it('says nothing twice', () => {
    const state = saying(1);
    expect(say(state, entryOf(1))).toBe(state);
    expect(say(acknowledged(state, [idOf(1)]), entryOf(1)).unacknowledged).toEqual([]);
  });

  it('sends so many at once, and not too much', () => {
    const many = saying(...Array.from({ length: MOST_IN_BATCH + 5 }, (_, i) => i));
    expect(toSend(many)).toHaveLength(MOST_IN_BATCH);
    const heavy = [1, 2, 3].reduce(
      (state, n) => say(state, entryOf(n, { note: 'x'.repeat(600) })),
      emptyOutbox('club'),
    );
    expect(toSend(heavy, 200, 1500)).toHaveLength(2);
    expect(toSend(heavy, 200, 100)).toHaveLength(1);
  });

  it('holds what it reads once, and knows its own again', () => {
    const state = received(saying(2), [entryOf(1), entryOf(2), entryOf(1)], 2, 0);
    expect(held(state)).toEqual([1, 2].map(idOf));
    expect(waiting(state)).toEqual([]);
    expect(state.after).toBe(2);
    const again = received(state, [entryOf(1)], 1, 0);
    expect(again).toBe(state);
    expect(received(state, [], 7, 2).journal).toBe(state.journal);
  });

  it('takes the server at its word where two entries have one id', () => {
    const theirs = entryOf(1, { reading: 'another' });
    expect(received(saying(1), [theirs], 1, 0).journal).toEqual([theirs]);
  });

  it('sends everything again to a store that was put back from an older copy', () => {
    const state = received(acknowledged(met(saying(1, 2), 'first'), [idOf(1), idOf(2)]), [entryOf(3)], 3, 0);
    expect(met(state, 'first')).toBe(state);
    const restored = met(state, 'second');
    expect([restored.after, waiting(restored)]).toEqual([0, [1, 2, 3].map(idOf)]);
  });

  it('does not read past what the answer to an older question leaves out', () => {
    const restored = met(received(met(saying(), 'first'), [entryOf(1)], 5, 0), 'second');
    const state = received(restored, [entryOf(2)], 6, 5);
    expect([state.after, held(state)]).toEqual([0, [1, 2].map(idOf)]);
  });

  describe('of which the server would not take one', () => {
    const why = new Map([
      [idOf(2), 'Found a furlong.'],
      [idOf(9), 'Not ours.'],
    ]);
    const state = refused(saying(1, 2, 3), why);

    it('keeps it with the sentence, sends it no more, and holds no other back', () => {
      expect(state.refused).toEqual({ [idOf(2)]: 'Found a furlong.' });
      expect(held(state)).toEqual([1, 2, 3].map(idOf));
      expect(waiting(state)).toContain(idOf(2));
      expect(toSend(state).map(({ id }) => id)).toEqual([1, 3].map(idOf));
      expect(toSend(state, 1).map(({ id }) => id)).toEqual([idOf(1)]);
      expect(toSend(acknowledged(state, [idOf(1), idOf(3)]))).toEqual([]);
      expect(refused(state, why)).toBe(state);
    });

    it('lets go of it only when somebody says so, and of nothing else', () => {
      const left = letGo(state, idOf(2));
      expect([held(left), waiting(left), left.refused]).toEqual([[1, 3].map(idOf), [1, 3].map(idOf), {}]);
      expect(letGo(state, idOf(1))).toBe(state);
    });

    it('is heard to have taken it after all', () => {
      expect(acknowledged(state, [idOf(2)])).toMatchObject({ refused: {}, unacknowledged: [1, 3].map(idOf) });
      expect(received(state, [entryOf(2)], 1, 0)).toMatchObject({ refused: {}, after: 1 });
    });

    it('tries once more with another store, which may be of a later version', () => {
      const other = met(met(state, 'first'), 'second');
      expect(toSend(other).map(({ id }) => id)).toEqual([1, 2, 3].map(idOf));
    });
  });

  it('survives being written down and read again', () => {
    const state = received(saying(5, 4), [entryOf(1)], 1, 0);
    expect(JSON.parse(JSON.stringify(state))).toEqual(state);
  });

  it('takes no entry of another trial', () => {
    const stranger = { ...entryOf(1), trial: 'moor' };
    expect(() => say(emptyOutbox('club'), stranger)).toThrow('does not belong to "club"');
    expect(() => received(emptyOutbox('club'), [stranger], 1, 0)).toThrow(RangeError);
  });
});
