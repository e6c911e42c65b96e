import { describe, expect, it } from 'vitest';
import { readMoment } from '../../src/journal/moment.ts';

describe('readMoment', () => {
  it.each([
    ['2026-11-25', Date.UTC(2026, 10, 25)],
    ['2026-11-25T14:30', Date.UTC(2026, 10, 25, 14, 30)],
    ['2026-11-25 14:30', Date.UTC(2026, 10, 25, 14, 30)],
    [' 2026-11-25T14:30:05Z ', Date.UTC(2026, 10, 25, 14, 30, 5)],
    ['2026-11-25T14:30:05.25Z', Date.UTC(2026, 10, 25, 14, 30, 5, 250)],
    ['2026-11-25T14:30:05.123456789Z', Date.UTC(2026, 10, 25, 14, 30, 5, 123)],
    ['2026-11-25T14:30+01:00', Date.UTC(2026, 10, 25, 13, 30)],
    ['2026-11-25T14:30-0530', Date.UTC(2026, 10, 25, 20, 0)],
    ['2024-02-29', Date.UTC(2024, 1, 29)],
  ])('reads %s', (text, wanted) => {
    expect(readMoment(text)).toEqual({ ok: true, value: wanted });
  });

  it.each([
    '',
    '2026',
    '25.11.2026',
    '11/25/2026',
    '2026-13-01',
    '2026-00-10',
    '2025-02-29',
    '2026-11-31',
    '0026-11-25',
    '2026-11-25T24:00',
    '2026-11-25T14:60',
    '2026-11-25T14:30:61',
    '2026-11-25T',
    'yesterday',
  ])('refuses "%s"', (text) => {
    expect(readMoment(text)).toMatchObject({ ok: false });
  });
});
