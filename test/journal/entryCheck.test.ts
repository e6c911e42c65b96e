import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../src/journal/entryCheck.ts';
import { entry } from '../trial/entries.ts';

const GOOD = entry('cable', { cable: 'quill', claimed_size: '2 AWG' });

describe('checkEntry', () => {
  it('lets an entry through as it is', () => {
    expect(checkEntry(GOOD)).toEqual({ ok: true, value: GOOD });
  });

  it('lets kinds through that it does not know', () => {
    expect(checkEntry({ ...GOOD, kind: 'hologram' }).ok).toBe(true);
  });

  it.each([
    ['nothing', undefined, 'entry'],
    ['a text', 'cable', 'entry'],
    ['no id', { ...GOOD, id: undefined }, 'id'],
    ['another version of UUID', { ...GOOD, id: '3f2504e0-4f89-41d3-9a0c-0305e82c3301' }, 'id'],
    ['an id in capitals', { ...GOOD, id: GOOD.id.toUpperCase() }, 'id'],
    ['a blank trial', { ...GOOD, trial: '  ' }, 'trial'],
    ['a time that is none', { ...GOOD, at: 'today' }, 'at'],
    ['a time with an offset', { ...GOOD, at: '2026-10-03T10:00:00+01:00' }, 'at'],
    ['a number in the row', { ...GOOD, body: { cable: 5 } }, 'body.cable'],
    ['a row that is a list', { ...GOOD, body: ['quill'] }, 'body'],
    ['a column whose name no object keeps', { ...GOOD, body: JSON.parse('{"__proto__":"x"}') }, 'body.__proto__'],
    ['lists in lists without end', { ...GOOD, id: JSON.parse('['.repeat(50_000) + ']'.repeat(50_000)) }, 'id'],
    ['a NUL', { ...GOOD, body: { cable: 'a\0b' } }, 'body.cable'],
    ['half a character', { ...GOOD, body: { cable: '\ud83d' } }, 'body.cable'],
    ['a novel', { ...GOOD, body: { note: 'x'.repeat(10_001) } }, 'body.note'],
    ['a part that entries do not have', { ...GOOD, admin: true }, 'entry'],
  ])('refuses %s and says where', (_, thing, where) => {
    const outcome = checkEntry(thing);
    expect(outcome).toMatchObject({ ok: false, where });
    expect(JSON.stringify(outcome).length).toBeLessThan(400);
  });

  it('refuses a row of too many columns', () => {
    const body = Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`c${i}`, 'x']));
    expect(checkEntry({ ...GOOD, body })).toMatchObject({ ok: false, where: 'body' });
  });
});
