import { describe, expect, it } from 'vitest';
import { readTimecode } from '../../src/journal/timecode.ts';

describe('readTimecode', () => {
  it.each([
    ['12:31', 751],
    ['0:05', 5],
    ['75:00', 4500],
    ['1:02:31', 3751],
    ['01:02:31.5', 3751.5],
    ['01:02:31:12', 3751],
    [' 00:00:00 ', 0],
  ])('reads "%s" as %f s', (text, seconds) => {
    expect(readTimecode(text)).toEqual({ ok: true, value: seconds });
  });

  it.each(['', '12', '12:75', '1:75:00', '12.31', '-1:00', '1:2:3:4:5'])('does not read "%s"', (text) => {
    expect(readTimecode(text).ok).toBe(false);
  });
});
