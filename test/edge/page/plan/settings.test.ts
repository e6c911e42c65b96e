import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptSetting, type SettingKind, shownSetting } from '../../../../src/edge/page/store/plan/settings.ts';

describe('a setting as it is typed', () => {
  const kept: [SettingKind, string, string][] = [
    ['percent', '5 %', '0.05'],
    ['percent', '5', '0.05'],
    ['percent', '0.05', '0.05'],
    ['percent', '7,5 %', '0.075'],
    ['percent', '0.5 %', '0.005'],
    ['count', '3', '3'],
    ['some', '0', '0'],
    ['millimetres', '2', '2'],
    ['millimetres', '40 cm', '400'],
    ['millimetres', '1 ft', '304.8'],
    ['millimetres', '0', '0'],
    ['length', '10 ft', '10 ft'],
    ['money', '8,90', '8,90'],
    ['words', ' sleeve ', 'sleeve'],
    ['count', '  ', ''],
  ];
  it.each(kept)('%s: "%s" is kept as "%s"', (kind, typed, value) => {
    expect(keptSetting(kind, typed)).toEqual({ ok: true, value });
  });

  const refused: [SettingKind, string][] = [
    ['percent', 'little'],
    ['percent', '0'],
    ['percent', '95 %'],
    ['percent', '-5 %'],
    ['count', '0'],
    ['count', '2.5'],
    ['count', '101'],
    ['some', '-1'],
    ['millimetres', 'long'],
    ['millimetres', '3 g'],
    ['millimetres', '-3'],
    ['length', '10'],
    ['money', '0'],
    ['money', 'cheap'],
  ];
  it.each(refused)('%s: "%s" is refused with what was found and expected', (kind, typed) => {
    const outcome = keptSetting(kind, typed);
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.trouble.found).not.toBe('');
    expect(outcome.trouble.expected).not.toBe('');
  });

  it('shows what is kept so that typing it again keeps the same', () => {
    const percent = fc.integer({ min: 1, max: 900 }).map((n) => ['percent', String(n / 1000)] as const);
    const millimetres = fc.integer({ min: 0, max: 99_999 }).map((n) => ['millimetres', String(n / 10)] as const);
    const count = fc.integer({ min: 1, max: 100 }).map((n) => ['count', String(n)] as const);
    fc.assert(
      fc.property(fc.oneof(percent, millimetres, count), ([kind, value]) => {
        expect(keptSetting(kind, shownSetting(kind, value))).toEqual({ ok: true, value });
      }),
      { seed: 20261125 },
    );
  });
});
