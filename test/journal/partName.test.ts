import { describe, expect, it } from 'vitest';
import { checkBody } from '../../src/journal/bodyCheck.ts';
import { isPartName, LONGEST_PART_NAME } from '../../src/journal/partName.ts';

describe('the name of a part', () => {
  it.each(['1', '2026-11.b', 'Inside again', 'Тест_2', 'दो', 'a'.repeat(LONGEST_PART_NAME)])('may be %j', (name) =>
    expect(isPartName(name)).toBe(true),
  );

  it.each(['', ' ', '\u200b', ' 1', '1 ', '../../x/<b>', '.', '..', '-1', '=1', 'a/b', 'a\nb', 'x'.repeat(41), '🔥'])(
    'may not be %j',
    (name) => expect(isPartName(name)).toBe(false),
  );

  it.each(['', ' ', '\t'])('%j is refused wherever an entry comes in', (part) => {
    const body = { part, places: 'inside', up_to: 'x', content: 'a', findings: 'b' };
    const entry = {
      id: '0192f3a4-5b6c-7d8e-8f90-a1b2c3d4e5f6',
      trial: 't',
      kind: 'seal',
      at: '2026-11-01T10:00:00Z',
      by: '',
      device: '',
    };
    expect(checkBody({ ...entry, body }, Date.parse('2026-12-01'))).toMatchObject({ column: 'part', found: 'nothing' });
    expect(checkBody({ ...entry, body: { ...body, part: '1' } }, Date.parse('2026-12-01'))).toBeNull();
  });
});
